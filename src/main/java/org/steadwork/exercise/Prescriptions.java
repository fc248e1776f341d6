package org.steadwork.exercise;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.steadwork.web.ReadOnce;

/** The exercises given in the cases. */
@ApplicationScoped
public class Prescriptions implements PanacheRepository<Prescription> {

    /** All exercises ever given in a case, in the order they were given. */
    @ReadOnce
    public List<Prescription> of(long caseId) {
        return list("caseFile.id = ?1 order by id", caseId);
    }

    /** The keys of the exercises given now. */
    Set<String> given(long caseId) {
        return getEntityManager().createQuery("select p.exerciseKey from Prescription p where p.caseFile.id = ?1 and p.endedOn is null", String.class)
                .setParameter(1, caseId).getResultStream().collect(Collectors.toSet());
    }

    public Optional<Prescription> inCase(long caseId, long id) {
        return find("caseFile.id = ?1 and id = ?2", caseId, id).firstResultOptional();
    }
}
