package org.steadwork.account;

import io.quarkus.security.identity.SecurityIdentity;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;

/** Who is asking. */
@RequestScoped
public class CurrentAccount {

    @Inject
    SecurityIdentity identity;

    @Inject
    EntityManager db;

    public long id() {
        return identity.<Long>getAttribute("account-id");
    }

    /** The number of the session that asks. */
    long sessionId() {
        return identity.<Long>getAttribute("session-id");
    }

    public boolean lead() {
        return identity.hasRole("lead");
    }

    public String displayName() {
        return identity.getAttribute("display-name");
    }

    public boolean clinician() {
        return identity.hasRole("clinician");
    }

    /** Returns the account as an entity of the running transaction. */
    public Account get() {
        return db.find(Account.class, id());
    }
}
