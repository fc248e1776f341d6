package org.steadwork.account;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;

/** The one-time links for setting a password. */
@ApplicationScoped
class SignInLinks {

    /** @param token what the link ends with; shown once and not stored */
    record Made(String token, Instant until) {
    }

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    /** Makes a link; those made before for the account open no more. */
    Made make(Account account, String madeBy) {
        revoke(account);
        String token = OpaqueToken.fresh();
        SignInLink link = new SignInLink(OpaqueToken.hash(token), account, Instant.now(clock), madeBy);
        db.persist(link);
        return new Made(token, link.expiresAt());
    }

    void revoke(Account account) {
        db.createQuery("delete from SignInLink l where l.account = ?1 and l.usedAt is null").setParameter(1, account).executeUpdate();
    }

    Optional<SignInLink> opening(String token) {
        return find(token, LockModeType.NONE);
    }

    /** Returns the link for using it up; of two who use it at one moment the second finds it used. */
    Optional<SignInLink> forUse(String token) {
        return find(token, LockModeType.PESSIMISTIC_WRITE);
    }

    private Optional<SignInLink> find(String token, LockModeType lock) {
        return db.createQuery("select l from SignInLink l where l.tokenHash = ?1", SignInLink.class).setParameter(1, OpaqueToken.hash(token))
                .setLockMode(lock).getResultStream().findFirst().filter(link -> link.opensAt(Instant.now(clock)));
    }
}
