package org.steadwork.storage;

import io.agroal.api.AgroalDataSource;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import io.quarkus.runtime.StartupEvent;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.steadwork.kernel.RefusedStartException;

/**
 * Closes an H2 file once after it was migrated, and opens it again. H2 (2.4.240) ties a check that lists values to the connection that made it,
 * and when the pool gives that connection up, minutes later, every row such a check looks at is refused. A database that is opened finds its
 * checks on record and ties them to itself.
 */
@ApplicationScoped
class FreshlyMigrated {

    private static final int FIRST = 1;
    private static final int TRIES = 50;
    private static final long BETWEEN_MS = 100;

    @Inject
    AgroalDataSource source;

    @ConfigProperty(name = "quarkus.datasource.jdbc.url")
    String url;

    void reopen(@Observes @Priority(FIRST) StartupEvent start) {
        if (!MigratedNow.happened() || !url.startsWith("jdbc:h2:file:")) {
            return;
        }
        try (Connection connection = source.getConnection(); Statement statement = connection.createStatement()) {
            statement.execute("SHUTDOWN");
        } catch (SQLException e) {
            throw new RefusedStartException("The database could not be closed after its migration: " + e.getMessage());
        }
        source.flush(AgroalDataSource.FlushMode.ALL);
        awaitOpen();
    }

    /** The pool lets go of the dead connections in a thread of its own. */
    private void awaitOpen() {
        for (int i = 0; i < TRIES; i++) {
            try (Connection connection = source.getConnection()) {
                if (connection.isValid(1)) {
                    return;
                }
            } catch (SQLException dead) {
                // the next may be a new one
            }
            try {
                Thread.sleep(BETWEEN_MS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                break;
            }
        }
        throw new RefusedStartException("The database did not open again after its migration. Start once more.");
    }
}
