package org.steadwork.exchange.csv;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;

/** Files that were uploaded and wait to be stored or discarded hold people's names; they are not kept for longer than they are needed. */
@ApplicationScoped
public class WaitingFiles {

    /** A proposal: who has not stored a checked file by then uploads it again. */
    private static final int DAYS_KEPT = 7;

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    /** Forgets all that wait, since any may name somebody who is removed; what is being checked or stored at this moment ends by itself. */
    @Transactional
    public int forgetAll() {
        return forget(Instant.now(clock).plus(1, ChronoUnit.DAYS));
    }

    /** Forgets those nobody has touched for a week. */
    @Transactional
    int forgetOld() {
        return forget(Instant.now(clock).minus(DAYS_KEPT, ChronoUnit.DAYS));
    }

    private int forget(Instant untouchedSince) {
        return db.createQuery("update versioned ImportJob j set j.content = null, j.problems = null, j.doubles = null, j.state = ?1 where j.state in ?2 and j.touchedAt < ?3")
                .setParameter(1, ImportJob.State.DISCARDED).setParameter(2, List.of(ImportJob.State.CHECKED, ImportJob.State.FAILED)).setParameter(3, untouchedSince)
                .executeUpdate();
    }
}
