package org.steadwork.account;

import io.quarkus.security.runtime.QuarkusPrincipal;
import io.quarkus.security.runtime.QuarkusSecurityIdentity;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.steadwork.account.SignInSession.Awaiting;
import org.steadwork.account.SignInSession.FirstStep;

/** The sessions kept on the server: begun at sign-in, looked up at every request, ended at sign-out and whenever the account changes. */
@ApplicationScoped
public class Sessions {

    private static final int MOST_WRONG_CODES = 5;

    @Inject
    EntityManager db;

    @Inject
    RequestOrigin origin;

    @Inject
    Clock clock;

    @ConfigProperty(name = "steadwork.session.idle-minutes")
    int idleMinutes;

    @ConfigProperty(name = "steadwork.session.longest-hours")
    int longestHours;

    /** Begins a session and returns its token, 256 random bits, which is not stored. */
    @Transactional
    public String begin(Account account) {
        return begin(account, FirstStep.PASSWORD, null);
    }

    /** Begins a session that opens no page before what it awaits was given. */
    @Transactional
    String begin(Account account, FirstStep firstStep, Awaiting awaiting) {
        Instant now = Instant.now(clock);
        db.createQuery("delete from SignInSession s where s.beganAt < ?1").setParameter(1, now.minus(longest())).executeUpdate();
        String token = OpaqueToken.fresh();
        long id = ((Number) db.createNativeQuery("select nextval('sign_in_session_seq')").getSingleResult()).longValue();
        db.persist(new SignInSession(OpaqueToken.hash(token), id, db.getReference(Account.class, account.id()), firstStep, awaiting, now,
                origin.address(), origin.browser()));
        return token;
    }

    /** Returns who the token stands for, if its session is alive. */
    @Transactional
    public Optional<QuarkusSecurityIdentity> identity(String token) {
        SignInSession session = find(token);
        Instant now = Instant.now(clock);
        if (session == null || !session.aliveAt(now, idle(), longest())) {
            return Optional.empty();
        }
        session.seen(now);
        Account account = session.account();
        return Optional.of(QuarkusSecurityIdentity.builder().setPrincipal(new QuarkusPrincipal(account.userName()))
                .addRoles(account.role().grants()).addAttribute("account-id", account.id()).addAttribute("session-id", session.id())
                .addAttribute("display-name", account.displayName()).build());
    }

    /** Returns the half-open session of a token, while the second factor may still be given. */
    Optional<SignInSession> waiting(String token, Awaiting awaiting) {
        return token == null || token.isBlank() ? Optional.empty()
                : Optional.ofNullable(find(token)).filter(session -> session.awaiting() == awaiting && session.waitingAt(Instant.now(clock)));
    }

    /** Counts a wrong code; after five the password is asked for again. Returns false then. */
    boolean anotherTry(SignInSession session) {
        if (session.wrongCode() < MOST_WRONG_CODES) {
            return true;
        }
        db.remove(session);
        return false;
    }

    /** Returns the sessions of an account that are alive, the latest used first. */
    List<SignInSession> of(long accountId) {
        Instant now = Instant.now(clock);
        return db.createQuery("select s from SignInSession s join fetch s.account where s.account.id = ?1 order by s.seenAt desc, s.id desc",
                SignInSession.class).setParameter(1, accountId).getResultStream().filter(session -> session.aliveAt(now, idle(), longest())).toList();
    }

    @Transactional
    public void end(String token) {
        db.createQuery("delete from SignInSession s where s.tokenHash = ?1").setParameter(1, OpaqueToken.hash(token)).executeUpdate();
    }

    /** Ends one session of an account; returns false when it has none of this number. */
    boolean end(long accountId, long sessionId) {
        return db.createQuery("delete from SignInSession s where s.account.id = ?1 and s.id = ?2").setParameter(1, accountId)
                .setParameter(2, sessionId).executeUpdate() > 0;
    }

    /** Ends all sessions of an account but one; {@code kept} may be null. Returns how many were ended. */
    int endAll(long accountId, Long kept) {
        return db.createQuery("delete from SignInSession s where s.account.id = ?1 and s.id <> ?2").setParameter(1, accountId)
                .setParameter(2, kept == null ? -1L : kept).executeUpdate();
    }

    private SignInSession find(String token) {
        return db.createQuery("select s from SignInSession s join fetch s.account where s.tokenHash = ?1", SignInSession.class)
                .setParameter(1, OpaqueToken.hash(token)).getResultStream().findFirst().orElse(null);
    }

    private Duration idle() {
        return Duration.ofMinutes(idleMinutes);
    }

    private Duration longest() {
        return Duration.ofHours(longestHours);
    }
}
