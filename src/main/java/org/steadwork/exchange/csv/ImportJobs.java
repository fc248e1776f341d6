package org.steadwork.exchange.csv;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.steadwork.account.CurrentAccount;

/** The imports that were begun, and the kinds of files there are. */
@ApplicationScoped
class ImportJobs {

    /** A run shows itself far more often; without a sign for so long, the program was stopped in the middle. */
    private static final Duration PATIENCE = Duration.ofMinutes(3);
    private static final int SHOWN = 20;

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    @Inject
    CurrentAccount account;

    @Inject
    WaitingFiles waiting;

    @Inject
    @Any
    Instance<ImportKind> kinds;

    List<ImportKind> kinds() {
        return kinds.stream().sorted(Comparator.comparing(ImportKind::label)).toList();
    }

    Optional<ImportKind> kind(String key) {
        return kinds.stream().filter(kind -> kind.key().equals(key)).findFirst();
    }

    @Transactional
    long begin(ImportKind kind, String fileName, String content) {
        waiting.forgetOld();
        ImportJob job = new ImportJob(kind.key(), fileName, content, account.displayName(), Instant.now(clock));
        db.persist(job);
        return job.id();
    }

    /** Returns the job; one whose run was cut off is told so, since nothing of it was stored. */
    @Transactional
    Optional<ImportJob> find(long id) {
        Optional<ImportJob> found = Optional.ofNullable(db.find(ImportJob.class, id));
        found.filter(job -> job.stalled(Instant.now(clock), PATIENCE))
                .ifPresent(job -> job.fail("The program was stopped in the middle. Nothing was stored: upload the file again.", Instant.now(clock)));
        return found;
    }

    /** A job as the list shows it, without its file. */
    public record Listed(Long id, String kind, String fileName, ImportJob.State state, int rows, int stored, String madeBy, Instant madeAt) {
    }

    List<Listed> latest() {
        return db.createQuery("select new org.steadwork.exchange.csv.ImportJobs$Listed(j.id, j.kind, j.fileName, j.state, j.rowsTotal, j.storedCount, j.madeBy, j.madeAt)"
                + " from ImportJob j order by j.id desc", Listed.class).setMaxResults(SHOWN).getResultList();
    }
}
