package org.steadwork.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;

/** The employers, sites and correspondents: found by name, made when a new name is given. */
@ApplicationScoped
public class Directory {

    @Inject
    EntityManager db;

    public Employer employer(String name) {
        return db.createQuery("from Employer where searchName = ?1 order by id", Employer.class).setParameter(1, SearchKey.of(name))
                .setMaxResults(1).getResultStream().findFirst().orElseGet(() -> keep(new Employer(name)));
    }

    public Site site(Employer employer, String name) {
        return db.createQuery("from Site where employer = ?1 and lower(name) = lower(?2) order by id", Site.class).setParameter(1, employer)
                .setParameter(2, name).setMaxResults(1).getResultStream().findFirst().orElseGet(() -> keep(new Site(employer, name)));
    }

    public Correspondent correspondent(Correspondent.Kind kind, String name) {
        return db.createQuery("from Correspondent where searchName = ?1 and kind = ?2 order by id", Correspondent.class)
                .setParameter(1, SearchKey.of(name)).setParameter(2, kind).setMaxResults(1).getResultStream().findFirst()
                .orElseGet(() -> keep(new Correspondent(kind, name)));
    }

    public List<String> employerNames() {
        return db.createQuery("select name from Employer where retiredOn is null order by name", String.class).setMaxResults(500).getResultList();
    }

    public List<String> doctorNames() {
        return db.createQuery("select name from Correspondent where kind = ?1 order by name", String.class)
                .setParameter(1, Correspondent.Kind.DOCTOR).setMaxResults(500).getResultList();
    }

    public List<Correspondent> correspondents() {
        return db.createQuery("from Correspondent order by kind, name", Correspondent.class).setMaxResults(500).getResultList();
    }

    private <T> T keep(T made) {
        db.persist(made);
        return made;
    }
}
