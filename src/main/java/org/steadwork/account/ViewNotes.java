package org.steadwork.account;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * Notes that a record was looked at beside the queries of the page that shows it: most of a note is waiting for the disk. The page waits
 * for its note before it is sent, so that nothing is shown that was not noted.
 */
@ApplicationScoped
public class ViewNotes {

    private static final int AT_ONCE = 4;

    /** A note that is being stored. */
    public static final class Note {

        private final CompletableFuture<Void> stored;

        private Note(CompletableFuture<Void> stored) {
            this.stored = stored;
        }

        /** One that is stored already. */
        public static Note done() {
            return new Note(CompletableFuture.completedFuture(null));
        }

        /** Waits until it is stored; fails as storing failed. */
        public void await() {
            try {
                stored.join();
            } catch (CompletionException e) {
                if (e.getCause() instanceof RuntimeException cause) {
                    throw cause;
                }
                throw e;
            }
        }
    }

    @Inject
    AuditTrail audit;

    private final ExecutorService storing = Executors.newFixedThreadPool(AT_ONCE, work -> {
        Thread thread = new Thread(work, "audit-note");
        thread.setDaemon(true);
        return thread;
    });

    /**
     * Begins to note that a case was looked at. Within a transaction the note is part of it, and is stored at once.
     *
     * @param action what was done, as for {@link AuditTrail#record}
     */
    public Note begin(String action, long patientId, long caseFileId) {
        if (QuarkusTransaction.isActive()) {
            audit.record(action, patientId, caseFileId, null);
            return Note.done();
        }
        AuditEvent event = audit.prepared(action, patientId, caseFileId, null);
        return new Note(CompletableFuture.runAsync(() -> audit.store(event), storing));
    }

    @PreDestroy
    void end() {
        storing.shutdown();
    }
}
