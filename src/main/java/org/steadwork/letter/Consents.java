package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.steadwork.casefile.CaseFile;

/** The consents to disclose of the cases. For one reader the one given last counts, and no other. */
@ApplicationScoped
class Consents {

    @Inject
    EntityManager db;

    /** Returns the consents of a case, the one given last first. */
    List<Consent> ofCase(long caseId) {
        return db.createQuery("from Consent c left join fetch c.correspondent left join fetch c.employer where c.caseFile.id = ?1"
                + " order by c.givenOn desc, c.id desc", Consent.class).setParameter(1, caseId).getResultList();
    }

    /** Returns the consents of several cases, the one given last first. */
    List<Consent> ofCases(Collection<Long> caseIds) {
        return db.createQuery("from Consent c left join fetch c.correspondent left join fetch c.employer where c.caseFile.id in ?1"
                + " order by c.givenOn desc, c.id desc", Consent.class).setParameter(1, caseIds).getResultList();
    }

    /** Returns the consent that counts for a reader, in force or not. */
    Optional<Consent> latest(CaseFile file, LetterReader reader) {
        return ofCase(file.id()).stream().filter(consent -> consent.isFor(reader)).findFirst();
    }

    Optional<Consent> find(long caseId, long id) {
        return db.createQuery("from Consent c where c.caseFile.id = ?1 and c.id = ?2", Consent.class).setParameter(1, caseId)
                .setParameter(2, id).getResultStream().findFirst();
    }

    void add(Consent consent) {
        db.persist(consent);
    }
}
