package org.steadwork.web;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Instant;
import org.steadwork.account.Account;
import org.steadwork.account.Accounts;
import org.steadwork.account.OpaqueToken;
import org.steadwork.account.Role;
import org.steadwork.account.Sessions;

/** Invented accounts for tests, one a role, made when first asked for. */
@ApplicationScoped
public class TestAccounts {

    public static final String PASSWORD = "a long test password";

    @Inject
    Accounts accounts;

    @Inject
    Sessions sessions;

    @Transactional
    public Account of(Role role) {
        String name = "test-" + role.name().toLowerCase();
        return accounts.named(name).orElseGet(() -> {
            Account made = new Account(name, "Test " + role.label(), "T. " + role.label(), role, Instant.EPOCH);
            made.describeProfession("Physiotherapist", "TEST-" + role.ordinal());
            made.usePassword(PASSWORD, 4);
            accounts.persist(made);
            return made;
        });
    }

    /** A new account that no other test knows, with {@link #PASSWORD}. */
    @Transactional
    public Account fresh(Role role) {
        String name = "fresh-" + OpaqueToken.fresh().substring(0, 12).toLowerCase();
        Account made = new Account(name, "Fresh " + role.label(), "F. " + role.label(), role, Instant.EPOCH);
        made.usePassword(PASSWORD, 4);
        accounts.persist(made);
        return made;
    }

    /** A browser signed in with this account. */
    public Visitor visitor(Account account) {
        return new Visitor(sessions.begin(account));
    }

    /** A browser that holds this token of a session. */
    public static Visitor visitorOf(String sessionToken) {
        return new Visitor(sessionToken);
    }

    /** Gives the accounts their role and use back, whatever a test has made of them, and signs this browser in again. */
    @Transactional
    void back(Visitor visitor, Role role) {
        accounts.getEntityManager().createQuery("update Account a set a.active = true, a.role = ?1 where a.userName = ?2")
                .setParameter(1, role).setParameter(2, of(role).userName()).executeUpdate();
        visitor.goOnIn(sessions.begin(of(role)));
    }

    /** A browser signed in with this role. */
    public Visitor visitor(Role role) {
        return new Visitor(sessions.begin(of(role)));
    }
}
