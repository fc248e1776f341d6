package org.steadwork.exchange.report;

import io.quarkus.security.runtime.QuarkusPrincipal;
import io.quarkus.security.runtime.QuarkusSecurityIdentity;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Base64;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.steadwork.account.CurrentAccount;

/** The tokens of this clinic: made once and shown once, looked up by their fingerprint. */
@ApplicationScoped
class ReportTokens {

    /** Begins every token, so that one found in a file or a log is known for what it is. */
    static final String PREFIX = "swr_";
    static final String TOKEN_ID = "report-token-id";
    static final String PSEUDONYM_KEY = "pseudonym-key";

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    @Inject
    CurrentAccount account;

    private final SecureRandom random = new SecureRandom();

    /** Makes a token and returns it; from then on only its fingerprint is known. */
    String make(String name, Collection<Scope> scopes, LocalDate expiresOn) {
        String token = PREFIX + randomText();
        db.persist(new ReportToken(name, fingerprint(token), scopes, HexFormat.of().formatHex(randomBits()), expiresOn, account.displayName(), Instant.now(clock)));
        return token;
    }

    private String randomText() {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(randomBits());
    }

    private byte[] randomBits() {
        byte[] bits = new byte[32];
        random.nextBytes(bits);
        return bits;
    }

    List<ReportToken> all() {
        return db.createQuery("from ReportToken order by id desc", ReportToken.class).getResultList();
    }

    Optional<ReportToken> find(long id) {
        return Optional.ofNullable(db.find(ReportToken.class, id));
    }

    /** Returns who the bearer is, if the token holds today: a program with the roles of its scopes and no other. */
    @Transactional
    Optional<QuarkusSecurityIdentity> identity(String token) {
        Optional<ReportToken> found = db.createQuery("from ReportToken where tokenHash = ?1", ReportToken.class).setParameter(1, fingerprint(token)).getResultStream()
                .findFirst().filter(one -> one.holdsOn(LocalDate.now(clock)));
        Instant now = Instant.now(clock);
        // by a statement of its own: two requests at one moment must not refuse each other over the version
        found.filter(one -> one.noteworthy(now)).ifPresent(one -> db.createQuery("update ReportToken t set t.lastUsedAt = ?1 where t.id = ?2").setParameter(1, now)
                .setParameter(2, one.id()).executeUpdate());
        return found.map(one -> {
            QuarkusSecurityIdentity.Builder identity = QuarkusSecurityIdentity.builder().setPrincipal(new QuarkusPrincipal("token " + one.id()))
                    .addAttribute("display-name", "Token " + one.name()).addAttribute(TOKEN_ID, one.id()).addAttribute(PSEUDONYM_KEY, one.pseudonymKey());
            one.scopes().forEach(scope -> identity.addRole(scope.role()));
            return identity.build();
        });
    }

    /** A token has 256 random bits, so a plain SHA-256 of it cannot be guessed back. */
    static String fingerprint(String token) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }
}
