package org.steadwork.web;

import io.quarkus.hibernate.orm.PersistenceUnitExtension;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Default;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import org.hibernate.resource.jdbc.spi.StatementInspector;

/**
 * Counts the SQL statements that something takes, so that a page's count can be held fixed. Not counted: the next number of a sequence,
 * as for a line in the audit trail; and the note that a session is in use, written once a minute.
 */
@Default
@PersistenceUnitExtension
@ApplicationScoped
public class Statements implements StatementInspector {

    private final AtomicLong counted = new AtomicLong();
    private volatile Set<String> texts;

    @Override
    public String inspect(String sql) {
        String lower = sql.toLowerCase(Locale.ROOT);
        if (!lower.contains("nextval") && !lower.contains("next value for") && !lower.startsWith("update sign_in_session")) {
            counted.incrementAndGet();
            Set<String> wanted = texts;
            if (wanted != null) {
                wanted.add(sql);
            }
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

    /** The different statements that something takes, as they are sent to the database. */
    public List<String> textsDuring(Runnable work) {
        Set<String> wanted = Collections.synchronizedSet(new LinkedHashSet<>());
        texts = wanted;
        try {
            during(work);
        } finally {
            texts = null;
        }
        return List.copyOf(wanted);
    }
}
