package org.steadwork.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.IntConsumer;
import org.steadwork.web.Form;

/** Takes in many employers with their sites and contacts. Names find what is there already; nothing that is stored is changed. */
@ApplicationScoped
public class EmployerIntake {

    /** One row: an employer, and with it perhaps a site and a contact; null for what is empty. */
    public record Read(String employer, String lettersTo, String address, String phone, String email, String site, String siteAddress, String contact, String contactRole,
            String contactPhone, String contactEmail) {
    }

    @Inject
    EntityManager db;

    /** Reads a row; what is wrong is noted in the form at its field. */
    public static Read read(Form row) {
        String employer = row.requiredText("employer", "Employer", 120);
        if (employer != null && SearchKey.of(employer).isEmpty()) {
            row.error("employer", "A name has at least one letter or digit. You entered \u201c" + employer + "\u201d.");
        }
        Read read = new Read(employer, row.text("letters_to", 120), row.text("address", 400), row.text("phone", 40), email(row, "email"), row.text("site", 120),
                row.text("site_address", 400), row.text("contact", 120), row.text("contact_role", 120), row.text("contact_phone", 40), email(row, "contact_email"));
        if (read.siteAddress() != null && read.site() == null) {
            row.error("site", "An address of a site needs the site.");
        }
        if ((read.contactRole() != null || read.contactPhone() != null || read.contactEmail() != null) && read.contact() == null) {
            row.error("contact", "A role, telephone or e-mail of a contact needs the contact\u2019s name.");
        }
        return read;
    }

    private static String email(Form row, String field) {
        String email = row.text(field, 120);
        if (email != null && !email.matches("[^@\\s]+@[^@\\s]+")) {
            row.error(field, "An e-mail address has one @ and no spaces. You entered \u201c" + email + "\u201d.");
        }
        return email;
    }

    /** Stores what is new in the running transaction; returns how many rows brought something new. */
    public int store(List<Read> rows, IntConsumer stored) {
        Map<String, Employer> employers = new HashMap<>();
        db.createQuery("from Employer", Employer.class).getResultStream().forEach(one -> employers.putIfAbsent(SearchKey.of(one.name()), one));
        Set<String> there = new HashSet<>();
        db.createQuery("select s.employer.id, s.name from Site s", Object[].class).getResultStream().forEach(row -> there.add(key("site", (Long) row[0], (String) row[1])));
        db.createQuery("select c.employer.id, c.name from EmployerContact c", Object[].class).getResultStream()
                .forEach(row -> there.add(key("contact", (Long) row[0], (String) row[1])));
        int fresh = 0;
        for (int i = 0; i < rows.size(); i++) {
            fresh += store(rows.get(i), employers, there) ? 1 : 0;
            stored.accept(i + 1);
        }
        return fresh;
    }

    private boolean store(Read row, Map<String, Employer> employers, Set<String> there) {
        Employer known = employers.get(SearchKey.of(row.employer()));
        Employer employer = known == null ? new Employer(row.employer()) : known;
        if (known == null) {
            employer.contactAt(row.lettersTo(), row.address(), row.phone(), row.email());
            db.persist(employer);
            employers.put(SearchKey.of(row.employer()), employer);
        }
        boolean fresh = known == null;
        if (row.site() != null && there.add(key("site", employer.id(), row.site()))) {
            Site site = new Site(employer, row.site());
            site.standsAt(row.site(), row.siteAddress());
            db.persist(site);
            fresh = true;
        }
        if (row.contact() != null && there.add(key("contact", employer.id(), row.contact()))) {
            EmployerContact contact = new EmployerContact(employer);
            contact.is(row.contact(), row.contactRole(), row.contactPhone(), row.contactEmail());
            db.persist(contact);
            fresh = true;
        }
        return fresh;
    }

    private static String key(String what, long employerId, String name) {
        return what + " " + employerId + " " + name.toLowerCase(Locale.ROOT);
    }
}
