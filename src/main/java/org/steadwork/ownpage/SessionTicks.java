package org.steadwork.ownpage;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import org.steadwork.casefile.CaseScope;

/** What patients ticked. */
@ApplicationScoped
public class SessionTicks implements PanacheRepository<SessionTick> {

    private static final String OF_CASE = "from SessionTick t join fetch t.prescription p where p.caseFile.id = ?1";

    /** Every tick of a case on a day, those taken back too. */
    List<SessionTick> on(long caseId, LocalDate day) {
        return list(OF_CASE + " and t.doneOn = ?2", caseId, day);
    }

    /** The ticks of a case from a day on that stand, the earliest first. */
    List<SessionTick> since(long caseId, LocalDate from) {
        return list(OF_CASE + " and t.takenBack = false and t.meanwhile is null and t.doneOn >= ?2 order by t.doneOn, t.slot", caseId, from);
    }

    /** Sessions told of exercises that were suspended or ended by their day, from a day on. */
    List<SessionTick> meanwhile(long caseId, LocalDate from) {
        return list(OF_CASE + " and t.meanwhile is not null and t.takenBack = false and t.doneOn >= ?2 order by t.doneOn, t.slot", caseId, from);
    }

    /** Ticks of a case that call for a look and had none. */
    List<SessionTick> alarms(long caseId) {
        return list(OF_CASE + " and t.alarm = true and t.seenAt is null order by t.doneOn", caseId);
    }

    /** The same of the open cases of a scope. */
    List<SessionTick> alarms(CaseScope scope) {
        return scope.bind(getEntityManager().createQuery("from SessionTick t join fetch t.prescription p join fetch p.caseFile c join fetch c.patient"
                + " where t.alarm = true and t.seenAt is null and " + scope.open("c", "p.caseFile") + " order by t.doneOn", SessionTick.class)).getResultList();
    }
}
