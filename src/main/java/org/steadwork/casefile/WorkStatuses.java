package org.steadwork.casefile;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.steadwork.web.ReadOnce;

/** The work statuses of the cases. */
@ApplicationScoped
public class WorkStatuses implements PanacheRepository<WorkStatus> {

    /** All spells of a case, the earliest first. */
    @ReadOnce
    public WorkHistory of(long caseId) {
        return new WorkHistory(list("caseFile.id = ?1 order by from", caseId));
    }

    /** The spell that begins on a day, if there is one. */
    public Optional<WorkStatus> beginning(long caseId, LocalDate from) {
        return find("caseFile.id = ?1 and from = ?2", caseId, from).firstResultOptional();
    }
}
