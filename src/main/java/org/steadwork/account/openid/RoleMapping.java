package org.steadwork.account.openid;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Which values of a claim stand for which role.
 *
 * @param claim where the values stand
 * @param meanings the roles with the values that mean them, the role that may do most first: it counts where somebody has several
 */
public record RoleMapping<R>(ClaimPath claim, List<Meaning<R>> meanings) {

    /** @param values exactly as the provider writes them: upper and lower case differ */
    public record Meaning<R>(R role, Set<String> values) {
    }

    /** Returns the role of somebody of whom these claims were made, none where no value means one. */
    public Optional<R> roleOf(Claims claims) {
        List<String> given = claims.values(claim);
        return meanings.stream().filter(meaning -> given.stream().anyMatch(meaning.values()::contains)).map(Meaning::role).findFirst();
    }
}
