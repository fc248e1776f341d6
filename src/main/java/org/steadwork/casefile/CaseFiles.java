package org.steadwork.casefile;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;

/** The cases of the clinic. */
@ApplicationScoped
public class CaseFiles implements PanacheRepository<CaseFile> {

    /** A case with its patient, the patient's employer and doctor, and its clinician, in one query. */
    public Optional<CaseFile> withPeople(long id) {
        return find("from CaseFile c join fetch c.patient p left join fetch p.employer left join fetch p.site left join fetch p.doctor"
                + " join fetch c.clinician where c.id = ?1", id).firstResultOptional();
    }

    /** The open cases of a scope with their patients. */
    public List<CaseFile> openWithPatients(CaseScope scope) {
        return scope.bind(getEntityManager().createQuery("from CaseFile c join fetch c.patient where " + scope.open("c") + " order by c.id", CaseFile.class)).getResultList();
    }

    public List<CaseFile> ofPatient(long patientId) {
        return list("from CaseFile c join fetch c.clinician where c.patient.id = ?1 order by c.openedOn desc, c.id desc", patientId);
    }
}
