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
        long before = statistics.getPrepareStatementCount();
        work.run();
        return statistics.getPrepareStatementCount() - before;
    }
}
