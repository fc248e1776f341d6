package org.steadwork.backup;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What is recorded of backups. */
@ApplicationScoped
class BackupRuns {

    private static final int SHOWN = 20;

    @Inject
    EntityManager db;

    @Transactional(Transactional.TxType.REQUIRES_NEW)
    public long begin(Instant now, String askedBy) {
        BackupRun run = new BackupRun(now, askedBy);
        db.persist(run);
        return run.id();
    }

    @Transactional(Transactional.TxType.REQUIRES_NEW)
    public void made(long id, Instant at, String file, long bytes, long rows) {
        db.find(BackupRun.class, id).made(at, file, bytes, rows);
    }

    @Transactional(Transactional.TxType.REQUIRES_NEW)
    public void failed(long id, Instant at, String why) {
        db.find(BackupRun.class, id).failed(at, why);
    }

    @Transactional
    public List<BackupRun> latest() {
        return db.createQuery("from BackupRun order by beganAt desc, id desc", BackupRun.class).setMaxResults(SHOWN).getResultList();
    }

    @Transactional
    public Optional<BackupRun> lastEnded() {
        return db.createQuery("from BackupRun where endedAt is not null order by beganAt desc, id desc", BackupRun.class).setMaxResults(1)
                .getResultStream().findFirst();
    }

    @Transactional
    public Optional<Instant> lastKept() {
        return Optional.ofNullable(db.createQuery("select max(beganAt) from BackupRun where rowsKept is not null", Instant.class).getSingleResult());
    }
}
