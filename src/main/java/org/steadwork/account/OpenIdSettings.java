package org.steadwork.account;

import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.microprofile.config.Config;
import org.steadwork.account.openid.ClaimPath;
import org.steadwork.account.openid.RoleMapping;
import org.steadwork.account.openid.RoleMapping.Meaning;
import org.steadwork.kernel.RefusedStartException;

/**
 * What the clinic has set for signing in through its OpenID Connect provider ({@code steadwork.openid.*}).
 *
 * @param provider the address of the issuer, below which its description is found
 * @param name what the sign-in page calls the provider
 * @param nameClaim the claim that is compared with the user name at the first sign-in
 * @param roles which values mean which role; null where the role of the account counts
 * @param createAccounts whether somebody unknown who has a role gets an account
 * @param prompt what the provider is asked to do, such as {@code login}; null for what it does by itself
 */
public record OpenIdSettings(String provider, String clientId, String secret, String name, String nameClaim, RoleMapping<Role> roles,
        boolean createAccounts, List<String> scopes, String prompt) {

    private static final String ALL = "steadwork.openid.";
    private static final int SHORTEST_SECRET = 16;
    private static final int LONGEST_NAME = 40;
    /** The role that may do most first. */
    private static final List<Role> RANKED = List.of(Role.LEAD, Role.CLINICIAN, Role.ASSISTANT);
    private static final Set<String> LOOPBACK = Set.of("localhost", "127.0.0.1", "[::1]");

    /**
     * Reads the settings; none where no provider is set.
     *
     * @throws RefusedStartException when they are incomplete or contradict one another
     */
    public static Optional<OpenIdSettings> read(Config config) {
        Optional<String> provider = text(config, "provider");
        if (provider.isEmpty()) {
            return Optional.empty();
        }
        String secret = needed(config, "secret");
        refuseIf(secret.length() < SHORTEST_SECRET, "secret has fewer than " + SHORTEST_SECRET + " characters");
        String name = text(config, "name").orElse("OpenID Connect");
        refuseIf(name.length() > LONGEST_NAME, "name has more than " + LONGEST_NAME + " characters");
        RoleMapping<Role> roles = roles(config);
        boolean createAccounts = text(config, "create-accounts").map(OpenIdSettings::yes).orElse(false);
        refuseIf(createAccounts && roles == null, "create-accounts needs roles-claim, since nobody else says what somebody unknown may do");
        List<String> scopes = text(config, "scopes").map(OpenIdSettings::words).orElse(List.of("profile"));
        return Optional.of(new OpenIdSettings(encrypted(provider.get()), needed(config, "client-id"), secret, name,
                text(config, "name-claim").orElse("preferred_username"), roles, createAccounts,
                scopes.stream().filter(scope -> !scope.equals("openid")).toList(), text(config, "prompt").orElse(null)));
    }

    private static RoleMapping<Role> roles(Config config) {
        List<Meaning<Role>> meanings = new ArrayList<>();
        for (Role role : RANKED) {
            text(config, "roles." + role.name().toLowerCase(Locale.ROOT)).ifPresent(values -> meanings.add(new Meaning<>(role, Set.copyOf(listed(values)))));
        }
        Optional<String> claim = text(config, "roles-claim");
        refuseIf(claim.isPresent() && meanings.isEmpty(), "roles-claim is set, but no value of it means a role (roles.lead, roles.clinician, roles.assistant)");
        refuseIf(claim.isEmpty() && !meanings.isEmpty(), "values that mean roles are set, but not the claim they stand in (roles-claim)");
        List<String> twice = meanings.stream().flatMap(meaning -> meaning.values().stream()).collect(Collectors.groupingBy(value -> value, Collectors.counting()))
                .entrySet().stream().filter(value -> value.getValue() > 1).map(value -> value.getKey()).toList();
        refuseIf(!twice.isEmpty(), "the same value means two roles: " + String.join(", ", twice));
        try {
            return claim.map(path -> new RoleMapping<>(ClaimPath.of(path), List.copyOf(meanings))).orElse(null);
        } catch (IllegalArgumentException e) {
            throw refused("roles-claim: " + e.getMessage());
        }
    }

    /** Who can read the way to the provider can sign in as anybody: in the clear it is taken on this machine alone. */
    private static String encrypted(String provider) {
        URI address;
        try {
            address = URI.create(provider);
        } catch (IllegalArgumentException e) {
            throw refused("provider is no address: " + provider);
        }
        boolean here = "http".equals(address.getScheme()) && address.getHost() != null && LOOPBACK.contains(address.getHost());
        refuseIf(address.getHost() == null || !here && !"https".equals(address.getScheme()), "provider must be an address that begins with https://");
        return provider;
    }

    private static boolean yes(String word) {
        refuseIf(!Set.of("true", "false").contains(word), "create-accounts is true or false");
        return word.equals("true");
    }

    private static String needed(Config config, String name) {
        return text(config, name).orElseThrow(() -> refused("provider is set, but not " + ALL + name));
    }

    private static Optional<String> text(Config config, String name) {
        return config.getOptionalValue(ALL + name, String.class).map(String::strip).filter(value -> !value.isEmpty());
    }

    private static List<String> words(String text) {
        return Stream.of(text.split("[\\s,]+")).filter(word -> !word.isEmpty()).toList();
    }

    private static List<String> listed(String text) {
        return Stream.of(text.split(",")).map(String::strip).filter(value -> !value.isEmpty()).distinct().toList();
    }

    private static void refuseIf(boolean wrong, String why) {
        if (wrong) {
            throw refused(why);
        }
    }

    private static RefusedStartException refused(String why) {
        return new RefusedStartException("Signing in through OpenID Connect is not set up rightly (" + ALL + "*): " + why + ". docs/openid-connect.md says what is needed.");
    }
}
