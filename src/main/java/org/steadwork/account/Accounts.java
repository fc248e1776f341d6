package org.steadwork.account;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The accounts of the clinic. */
@ApplicationScoped
public class Accounts implements PanacheRepository<Account> {

    public Optional<Account> named(String userName) {
        if (userName.chars().anyMatch(Character::isISOControl)) {
            return Optional.empty(); // no name has them, and PostgreSQL takes no text with a zero in it
        }
        return find("userName", userName.strip().toLowerCase(Locale.ROOT)).firstResultOptional();
    }

    /** Returns the account of the person whom this OpenID Connect issuer knows by this subject. */
    Optional<Account> linkedTo(String issuer, String subject) {
        return find("openIdIssuer = ?1 and openIdSubject = ?2", issuer, subject).firstResultOptional();
    }

    public List<Account> clinicians() {
        return list("active = true and role in ?1 order by displayName", List.of(Role.CLINICIAN, Role.LEAD));
    }

    public List<Account> all() {
        return list("order by active desc, displayName");
    }

    /** Returns the leads who may sign in. */
    public List<Account> leads() {
        return list("active = true and role = ?1 order by userName", Role.LEAD);
    }

    public boolean none() {
        return count() == 0;
    }
}
