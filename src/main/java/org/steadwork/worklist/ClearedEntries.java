package org.steadwork.worklist;

import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;

/**
 * Removes what left Today long ago: why it stood there follows from the case file. What was ever put off stays with its case, since it says
 * who judged that it could wait, and why.
 */
@ApplicationScoped
class ClearedEntries {

    private static final Logger LOG = Logger.getLogger(ClearedEntries.class);
    /** How many go in one transaction. */
    private static final int PART = 1000;

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    @ConfigProperty(name = "steadwork.today.keep-cleared-days")
    int keepDays;

    @Scheduled(identity = "today-cleared", every = "{steadwork.today.remove-cleared-every}", delayed = "10m", concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
    void remove() {
        remove(LocalDate.now(clock));
    }

    /** Removes those that left more than the days of the setting before a day, and returns how many. */
    int remove(LocalDate today) {
        int removed = 0;
        int part;
        do {
            part = removeSome(today.minusDays(keepDays));
            removed += part;
        } while (part == PART);
        if (removed > 0) {
            LOG.infof("%d entries that had left Today before %s were removed", removed, today.minusDays(keepDays));
        }
        return removed;
    }

    @Transactional
    int removeSome(LocalDate before) {
        List<Long> ids = db.createQuery("select e.id from WorklistEntry e where e.clearedOn < ?1"
                + " and not exists (select 1 from Snooze s where s.entry = e) order by e.clearedOn, e.id", Long.class).setParameter(1, before)
                .setMaxResults(PART).getResultList();
        if (ids.isEmpty()) {
            return 0;
        }
        // one that came back meanwhile stands on the list and stays
        return db.createQuery("delete from WorklistEntry e where e.id in ?1 and e.clearedOn < ?2").setParameter(1, ids).setParameter(2, before).executeUpdate();
    }
}
