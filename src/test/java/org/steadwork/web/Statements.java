package org.steadwork.web;

import io.quarkus.hibernate.orm.PersistenceUnitExtension;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Default;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicLong;
import org.hibernate.resource.jdbc.spi.StatementInspector;

/**
 * Counts the SQL statements that something takes, so that a page's count can be held fixed. The next numbers of a sequence are not
 * counted: they are fetched fifty at a time, so that one view in fifty takes a statement more for its line in the audit trail.
 */
@Default
@PersistenceUnitExtension
@ApplicationScoped
public class Statements implements StatementInspector {

    private final AtomicLong counted = new AtomicLong();

    @Override
    public String inspect(String sql) {
        String lower = sql.toLowerCase(Locale.ROOT);
        if (!lower.contains("nextval") && !lower.contains("next value for")) {
            counted.incrementAndGet();
        }
        return sql;
    }

    public long during(Runnable work) {
        long before = counted.get();
        work.run();
        long count = counted.get() - before;
        if (count == 0) {
            throw new AssertionError("No statement was counted: nothing was measured");
        }
        return count;
    }
}
