package org.steadwork.caseload;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import javax.sql.DataSource;
import org.steadwork.measure.InventedClinic;

/** Invented cases, stored once for all tests of one clinic. */
@ApplicationScoped
class SeededClinic {

    static final int CASES = 400;
    static final long FIRST = 1_000_000;
    static final long LAST = FIRST + CASES - 1;
    private static final long SEED = 20261130;

    @Inject
    DataSource dataSource;

    @Inject
    OutcomeStart start;

    @Inject
    Clock clock;

    private boolean filled;

    synchronized void fill() throws SQLException {
        if (!filled) {
            try (Connection db = dataSource.getConnection()) {
                new InventedClinic(db, SEED, LocalDate.now(clock)).fill(CASES);
            }
            start.rebuild();
            filled = true;
        }
    }
}
