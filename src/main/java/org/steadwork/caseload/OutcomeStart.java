package org.steadwork.caseload;

import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.List;
import org.jboss.logging.Logger;

/** Sums up at the start what is not summed up yet, as after an update or a change of the content; the rest is kept as it changes. */
@ApplicationScoped
class OutcomeStart {

    private static final Logger LOG = Logger.getLogger("steadwork");

    @Inject
    CaseOutcomes outcomes;

    @ActivateRequestContext
    void start(@Observes @Priority(50) StartupEvent event) {
        int cases = outcomes.complete() ? 0 : sumUp(false);
        if (cases > 0) {
            LOG.infof("%d cases were summed up for the caseload", (Object) cases);
        }
    }

    /** Sums up every case anew and returns how many there are; for what was stored past Hibernate. */
    @ActivateRequestContext
    int rebuild() {
        return sumUp(true);
    }

    private int sumUp(boolean all) {
        int done = 0;
        long beyond = Long.MIN_VALUE;
        for (List<Long> next = outcomes.outdated(beyond, all); !next.isEmpty(); next = outcomes.outdated(beyond, all)) {
            outcomes.sumUp(next);
            done += next.size();
            beyond = next.get(next.size() - 1);
        }
        return done;
    }
}
