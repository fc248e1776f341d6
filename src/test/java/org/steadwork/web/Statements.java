package org.steadwork.web;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManagerFactory;
import org.hibernate.SessionFactory;

/** Counts the SQL statements that something takes, so that a page's count can be held fixed. */
@ApplicationScoped
public class Statements {

    @Inject
    EntityManagerFactory factory;

    public long during(Runnable work) {
        var statistics = factory.unwrap(SessionFactory.class).getStatistics();
        statistics.setStatisticsEnabled(true);
        long before = statistics.getPrepareStatementCount();
        work.run();
        long count = statistics.getPrepareStatementCount() - before;
        if (count == 0) {
            throw new AssertionError("No statement was counted: nothing was measured");
        }
        return count;
    }
}
