package org.steadwork.exchange.csv;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.arc.Arc;
import io.quarkus.arc.ManagedContext;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.security.identity.CurrentIdentityAssociation;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.runtime.QuarkusSecurityIdentity;
import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import org.jboss.logging.Logger;
import org.steadwork.account.AuditTrail;

/** Checks and stores files beside the pages, one after the other, so that a long one keeps nobody waiting for an answer. */
@ApplicationScoped
class ImportRun {

    static final int MOST_ROWS = 200_000;
    /** So many problems and doubles are kept and shown; who has more will not read them all, and the file comes back anyway. */
    static final int MOST_KEPT = 500;
    private static final int TOLD_EVERY = 5000;
    private static final long SHORT_FILE_MILLIS = 1500;
    private static final int LONGEST_STORE_SECONDS = 1800;
    private static final Logger LOG = Logger.getLogger(ImportRun.class);

    @Inject
    ImportJobs jobs;

    @Inject
    EntityManager db;

    @Inject
    AuditTrail audit;

    @Inject
    SecurityIdentity identity;

    @Inject
    CurrentIdentityAssociation association;

    @Inject
    Clock clock;

    @Inject
    ObjectMapper json;

    private final ExecutorService worker = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "import");
        thread.setDaemon(true);
        return thread;
    });

    @PreDestroy
    void stop() {
        worker.shutdown();
    }

    /** Begins the check; a short file is through when this returns. */
    void check(long jobId) {
        start(jobId, () -> checkNow(jobId));
    }

    /** Begins storing a job that is in that state. */
    void store(long jobId) {
        start(jobId, () -> storeNow(jobId));
    }

    /** Runs beside the request, in the name of who asked. */
    private void start(long jobId, Runnable work) {
        // the identity of a request ends with it; what is stored later still bears the name
        SecurityIdentity kept = QuarkusSecurityIdentity.builder().setPrincipal(identity.getPrincipal()).addRoles(identity.getRoles())
                .addAttributes(identity.getAttributes()).build();
        Future<?> running = worker.submit(() -> {
            ManagedContext context = Arc.container().requestContext();
            context.activate();
            try {
                association.setIdentity(kept);
                work.run();
            } catch (RuntimeException | Error e) {
                fail(jobId, e);
            } finally {
                context.terminate();
            }
        });
        try {
            running.get(SHORT_FILE_MILLIS, TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            // a long one: the page of the job shows how far it is
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        }
    }

    private void checkNow(long jobId) {
        ImportJob job = read(jobId);
        ImportKind kind = jobs.kind(job.kind()).orElseThrow();
        ImportKind.Checked checked;
        List<ImportKind.Row> rows;
        try {
            rows = rows(kind, job.content());
            checked = QuarkusTransaction.requiringNew().timeout(LONGEST_STORE_SECONDS).call(() -> kind.check(rows, LocalDate.now(clock), progress(jobId, rows.size())));
        } catch (CsvText.NoTable e) {
            QuarkusTransaction.requiringNew().run(() -> find(jobId).checked(0, 1, written(List.of(new ImportKind.Problem(1, null, e.getMessage()))), 0, "[]", Instant.now(clock)));
            return;
        }
        QuarkusTransaction.requiringNew().run(() -> find(jobId).checked(rows.size(), checked.problems().size(), written(some(checked.problems())), checked.doubles().size(),
                written(some(checked.doubles())), Instant.now(clock)));
    }

    /** Checks again, since others worked meanwhile, and stores in the same transaction: all of it or nothing. */
    private void storeNow(long jobId) {
        ImportJob job = read(jobId);
        ImportKind kind = jobs.kind(job.kind()).orElseThrow();
        List<ImportKind.Row> rows = rows(kind, job.content());
        QuarkusTransaction.requiringNew().timeout(LONGEST_STORE_SECONDS).run(() -> {
            ImportKind.Checked checked = kind.check(rows, LocalDate.now(clock), done -> { });
            if (!checked.problems().isEmpty()) {
                throw new CsvText.NoTable("Something changed since the file was checked: row " + checked.problems().get(0).row() + ", "
                        + checked.problems().get(0).message() + " Nothing was stored: upload the file again.");
            }
            if (checked.doubles().size() > job.doubleCount()) {
                throw new CsvText.NoTable("Since the file was checked, somebody in it was registered: " + checked.doubles().size() + " likely doubles instead of "
                        + job.doubleCount() + ". Nothing was stored: upload the file again.");
            }
            int stored = checked.store(job.withDoubles(), progress(jobId, rows.size()));
            audit.record("took in a file", null, null, kind.label().toLowerCase(Locale.ROOT) + ", " + stored + " of " + rows.size() + " rows");
            db.find(ImportJob.class, jobId).stored(stored, Instant.now(clock));
        });
    }

    /** Reads the text into rows; a row with too many cells refuses the whole, since its cells may have slipped. */
    static List<ImportKind.Row> rows(ImportKind kind, String content) {
        Set<String> known = kind.columns().stream().map(ImportKind.Column::name).collect(Collectors.toCollection(LinkedHashSet::new));
        Set<String> required = kind.columns().stream().filter(ImportKind.Column::required).map(ImportKind.Column::name).collect(Collectors.toCollection(LinkedHashSet::new));
        return CsvText.read(content, known, required, MOST_ROWS).stream().map(row -> {
            if (row.surplus()) {
                throw new CsvText.NoTable("Row " + row.number() + " has more cells than the header. A comma in a text needs quotation marks around it.");
            }
            return new ImportKind.Row(row.number(), row.cells());
        }).toList();
    }

    /** Notes the progress in transactions of their own, so that it shows while the import is not stored yet. */
    private IntConsumer progress(long jobId, int total) {
        return done -> {
            if (done % TOLD_EVERY == 0) {
                QuarkusTransaction.suspendingExisting().run(() -> QuarkusTransaction.requiringNew().run(() -> db.createQuery(
                        "update ImportJob j set j.rowsDone = ?1, j.rowsTotal = ?2, j.touchedAt = ?3 where j.id = ?4").setParameter(1, done).setParameter(2, total)
                        .setParameter(3, Instant.now(clock)).setParameter(4, jobId).executeUpdate()));
            }
        };
    }

    private void fail(long jobId, Throwable e) {
        boolean said = e instanceof CsvText.NoTable;
        if (!said) {
            LOG.errorf(e, "Import %d failed", jobId);
        }
        String why = said ? e.getMessage() : "Something broke while the file was taken in. Nothing was stored. Try again; if it happens again, the log names import " + jobId + ".";
        QuarkusTransaction.requiringNew().run(() -> find(jobId).fail(why, Instant.now(clock)));
    }

    private ImportJob read(long jobId) {
        return QuarkusTransaction.requiringNew().call(() -> find(jobId));
    }

    private ImportJob find(long jobId) {
        return db.find(ImportJob.class, jobId);
    }

    private static <T> List<T> some(List<T> all) {
        return all.subList(0, Math.min(MOST_KEPT, all.size()));
    }

    private String written(List<?> rows) {
        try {
            return json.writeValueAsString(rows);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("Rows of texts and numbers can be written as JSON", e);
        }
    }

    List<ImportKind.Problem> problems(ImportJob job) {
        return rows(job.problems(), new TypeReference<>() { });
    }

    List<ImportKind.LikelyDouble> doubles(ImportJob job) {
        return rows(job.doubles(), new TypeReference<>() { });
    }

    private <T> List<T> rows(String written, TypeReference<List<T>> type) {
        try {
            return written == null ? List.of() : json.readValue(written, type);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("What was written here can be read here", e);
        }
    }
}
