package org.steadwork.casefile;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The notes of the visits, with their addenda. */
@ApplicationScoped
public class VisitNotes implements PanacheRepository<VisitNote> {

    public Optional<VisitNote> of(Visit visit) {
        return find("visit.id", visit.id()).firstResultOptional();
    }

    /** The notes of a case by the number of their visit, in one query. */
    public Map<Integer, VisitNote> ofCase(long caseId) {
        return list("from VisitNote n join fetch n.visit v where v.caseFile.id = ?1", caseId).stream()
                .collect(Collectors.toMap(note -> note.visit().number(), note -> note));
    }

    /** The addenda of a case, the earliest first, in one query. */
    public List<Addendum> addendaOfCase(long caseId) {
        return getEntityManager().createQuery("from Addendum a where a.note.visit.caseFile.id = ?1 order by a.writtenAt, a.id", Addendum.class)
                .setParameter(1, caseId).getResultList();
    }

    public List<Addendum> addenda(VisitNote note) {
        return getEntityManager().createQuery("from Addendum a where a.note.id = ?1 order by a.writtenAt, a.id", Addendum.class)
                .setParameter(1, note.id()).getResultList();
    }

    public void add(Addendum addendum) {
        getEntityManager().persist(addendum);
    }
}
