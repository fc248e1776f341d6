package org.steadwork.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.agroal.api.AgroalDataSource;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.Test;

/** What the database says of a value that it refuses does not reach the log. */
@QuarkusTest
class QuietTraceTest {

    @Inject
    EntityManager db;

    @Test
    void kindsCodesAndPlacesStayAndWordsGo() {
        Exception failure = new IllegalStateException("case of Hortensia", new SQLException("Key (name)=(Hortensia) already exists", "23505", 7));
        StringWriter written = new StringWriter();
        QuietTrace.of(failure).printStackTrace(new PrintWriter(written, true));
        assertFalse(written.toString().contains("Hortensia"), written.toString());
        assertTrue(written.toString().contains("java.lang.IllegalStateException") && written.toString().contains("java.sql.SQLException, state 23505, code 7")
                && written.toString().contains("QuietTraceTest.kindsCodesAndPlacesStayAndWordsGo"), written.toString());
    }

    @Test
    void aValueThatIsRefusedIsNotLogged() throws Exception {
        List<String> lines = new ArrayList<>();
        Handler keep = new Handler() {
            @Override
            public void publish(LogRecord line) {
                StringWriter trace = new StringWriter();
                if (line.getThrown() != null) {
                    line.getThrown().printStackTrace(new PrintWriter(trace, true));
                }
                lines.add(line.getMessage() + trace);
            }

            @Override
            public void flush() {
            }

            @Override
            public void close() {
            }
        };
        Logger.getLogger("").addHandler(keep);
        try {
            Exception refused = null;
            try {
                QuarkusTransaction.requiringNew().run(() -> db.createNativeQuery("insert into patient_word (patient_id, beginning, word) values (1, 'Hortensia is too long', 'hortensia')").executeUpdate());
            } catch (RuntimeException e) {
                refused = e;
            }
            assertTrue(String.valueOf(refused).contains("Hortensia") || String.valueOf(refused.getCause()).contains("Hortensia"), "the database names no value, so this shows nothing");
            assertEquals(500, new ErrorPages().broken(refused).getStatus());
            assertTrue(lines.stream().anyMatch(line -> line.contains("Unexpected failure")), lines.toString());
            assertFalse(lines.toString().contains("Hortensia"), lines.toString());
        } finally {
            Logger.getLogger("").removeHandler(keep);
        }
    }
}
