package org.steadwork.account;

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
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** The sessions kept on the server: begun at sign-in, looked up at every request, ended at sign-out. */
@ApplicationScoped
public class Sessions {

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    @ConfigProperty(name = "steadwork.session.idle-minutes")
    int idleMinutes;

    @ConfigProperty(name = "steadwork.session.longest-hours")
    int longestHours;

    private final SecureRandom random = new SecureRandom();

    /** Begins a session and returns its token, 256 random bits, which is not stored. */
    @Transactional
    public String begin(Account account) {
        byte[] bits = new byte[32];
        random.nextBytes(bits);
        String token = Base64.getUrlEncoder().withoutPadding().encodeToString(bits);
        db.persist(new SignInSession(hash(token), db.getReference(Account.class, account.id()), Instant.now(clock)));
        return token;
    }

    /** Returns who the token stands for, if its session is alive. */
    @Transactional
    public Optional<QuarkusSecurityIdentity> identity(String token) {
        SignInSession session = db.createQuery("select s from SignInSession s join fetch s.account where s.tokenHash = ?1",
                SignInSession.class).setParameter(1, hash(token)).getResultStream().findFirst().orElse(null);
        Instant now = Instant.now(clock);
        if (session == null || !session.aliveAt(now, Duration.ofMinutes(idleMinutes), Duration.ofHours(longestHours))) {
            return Optional.empty();
        }
        session.seen(now);
        Account account = session.account();
        return Optional.of(QuarkusSecurityIdentity.builder().setPrincipal(new QuarkusPrincipal(account.userName()))
                .addRoles(account.role().grants()).addAttribute("account-id", account.id())
                .addAttribute("display-name", account.displayName()).build());
    }

    @Transactional
    public void end(String token) {
        db.createQuery("delete from SignInSession s where s.tokenHash = ?1").setParameter(1, hash(token)).executeUpdate();
    }

    static String hash(String token) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }
}
