package org.steadwork.people;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Optional;

/** The employers with their contacts and sites. */
@ApplicationScoped
public class Employers implements PanacheRepository<Employer> {

    private static final int MOST = 300;

    @Inject
    EntityManager db;

    /** Finds employers by a part of a word of their name or of the name of who receives letters; nothing typed finds all. One query. */
    List<EmployerRow> search(String typed) {
        String key = SearchKey.of(typed == null ? "" : typed);
        return db.createQuery("select new org.steadwork.people.EmployerRow(e.id, e.name, e.contactName, e.phone, e.retiredOn,"
                + " (select count(s) from Site s where s.employer = e and s.retiredOn is null), (select count(p) from Patient p where p.employer = e))"
                + " from Employer e where e.searchName like ?1 or e.searchName like ?2 or lower(e.contactName) like ?2"
                + " order by case when e.retiredOn is null then 0 else 1 end, e.searchName", EmployerRow.class)
                .setParameter(1, key + "%").setParameter(2, "% " + key + "%").setMaxResults(MOST).getResultList();
    }

    Optional<Employer> named(String name) {
        return find("searchName", SearchKey.of(name)).firstResultOptional();
    }

    /** Returns the sites, those in use first. */
    List<SiteRow> sites(long employerId) {
        return db.createQuery("select new org.steadwork.people.SiteRow(s.id, s.name, s.address, s.retiredOn,"
                + " (select count(p) from Patient p where p.site = s)) from Site s where s.employer.id = ?1"
                + " order by case when s.retiredOn is null then 0 else 1 end, s.name", SiteRow.class)
                .setParameter(1, employerId).setMaxResults(MOST).getResultList();
    }

    List<EmployerContact> contacts(long employerId) {
        return db.createQuery("from EmployerContact where employer.id = ?1 order by case when retiredOn is null then 0 else 1 end, name, id",
                EmployerContact.class).setParameter(1, employerId).setMaxResults(MOST).getResultList();
    }

    Optional<EmployerContact> contact(long employerId, long contactId) {
        return db.createQuery("from EmployerContact where id = ?1 and employer.id = ?2", EmployerContact.class).setParameter(1, contactId)
                .setParameter(2, employerId).getResultStream().findFirst();
    }

    /** Returns a site with its employer. */
    public Optional<Site> site(long siteId) {
        return db.createQuery("from Site s join fetch s.employer where s.id = ?1", Site.class).setParameter(1, siteId).getResultStream().findFirst();
    }

    boolean siteNameTaken(Employer employer, String name, Long except) {
        return db.createQuery("select count(s) from Site s where s.employer = ?1 and lower(s.name) = lower(?2) and s.id <> ?3", Long.class)
                .setParameter(1, employer).setParameter(2, name).setParameter(3, except == null ? -1L : except).getSingleResult() > 0;
    }

    /** Stores a new employer, contact or site. */
    public void keep(Object made) {
        db.persist(made);
    }
}
