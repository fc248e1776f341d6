package org.steadwork.storage;

import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.concurrent.atomic.AtomicReference;

/** Keeps the H2 file open between the check of the start and the server's own connections: H2 closes it with the last, and opening it is dear. */
@ApplicationScoped
class OpenedFile {

    private static final AtomicReference<Connection> KEPT = new AtomicReference<>();

    static void keep(Connection db) {
        KEPT.set(db);
    }

    void letGo(@Observes StartupEvent started) throws SQLException {
        Connection kept = KEPT.getAndSet(null);
        if (kept != null) {
            kept.close();
        }
    }
}
