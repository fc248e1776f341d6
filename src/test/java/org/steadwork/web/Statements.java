package org.steadwork.web;

import io.quarkus.hibernate.orm.PersistenceUnitExtension;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Default;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hibernate.resource.jdbc.spi.StatementInspector;

/**
 * Notes the SQL statements that something takes, so that a page's count can be held fixed. Not noted: the next number of a sequence,
 * as for a line in the audit trail; the note that a session is in use, written once a minute; and what threads of our own do meanwhile.
 */
@Default
@PersistenceUnitExtension
@ApplicationScoped
public class Statements implements StatementInspector {

    private static final Set<String> BEHIND = Set.of("audit-sealer", "backup", "import", "work-turns");

    private final List<String> sent = Collections.synchronizedList(new ArrayList<>());
    private volatile boolean noting;

    @Override
    public String inspect(String sql) {
        String lower = sql.toLowerCase(Locale.ROOT);
        if (noting && !lower.contains("nextval") && !lower.contains("next value for") && !lower.startsWith("update sign_in_session")
                && !BEHIND.contains(Thread.currentThread().getName())) {
            sent.add(sql);
        }
        return sql;
    }

    /** How many statements something takes. */
    public long during(Runnable work) {
        return sentDuring(work).size();
    }

    /** How often something sends each statement. */
    public Map<String, Long> countsDuring(Runnable work) {
        return sentDuring(work).stream().collect(Collectors.groupingBy(Function.identity(), TreeMap::new, Collectors.counting()));
    }

    /** The different statements that something takes, as they are sent to the database. */
    public List<String> textsDuring(Runnable work) {
        return sentDuring(work).stream().distinct().toList();
    }

    private List<String> sentDuring(Runnable work) {
        sent.clear();
        noting = true;
        try {
            work.run();
        } finally {
            noting = false;
        }
        if (sent.isEmpty()) {
            throw new AssertionError("No statement was counted: nothing was measured");
        }
        return List.copyOf(sent);
    }
}
