package org.steadwork.account;

import io.quarkus.arc.Arc;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * Notes that a record was looked at beside the making of the page that shows it: most of a note is waiting for the disk. The page waits
 * for its notes before it is sent, see {@link NotedBeforeSent}, so that nothing is shown that was not noted.
 */
@ApplicationScoped
public class ViewNotes {

    private static final int AT_ONCE = 4;

    @Inject
    AuditTrail audit;

    @Inject
    AwaitedNotes awaited;

    private final ExecutorService storing = Executors.newFixedThreadPool(AT_ONCE, work -> {
        Thread thread = new Thread(work, "audit-note");
        thread.setDaemon(true);
        return thread;
    });

    /**
     * Begins to note that a case was looked at; the answer to the running request is not sent before the note is stored. Within a
     * transaction the note is part of it, and outside a request nobody would wait: there it is stored at once.
     *
     * @param action what was done, as for {@link AuditTrail#record}
     */
    public void begin(String action, long patientId, long caseFileId) {
        if (QuarkusTransaction.isActive() || !Arc.container().requestContext().isActive()) {
            audit.record(action, patientId, caseFileId, null);
            return;
        }
        AuditEvent event = audit.prepared(action, patientId, caseFileId, null);
        awaited.add(CompletableFuture.runAsync(() -> audit.store(event), storing));
    }

    @PreDestroy
    void end() {
        storing.shutdown();
    }
}
