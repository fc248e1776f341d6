package org.steadwork.worklist;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hibernate.FlushMode;
import org.hibernate.Session;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.CaseScope;

/** Asks every feature what in the cases of a scope needs somebody. */
@ApplicationScoped
class Asking {

    @Inject
    @Any
    Instance<Attention> beans;

    @Inject
    EntityManager db;

    /** Within a transaction in which nothing waits to be written: what is read is let go of after each bean, so that memory holds one at a time. */
    List<Attention.Entry> entries(LocalDate today, CaseScope scope) {
        Session session = db.unwrap(Session.class);
        FlushMode before = session.getHibernateFlushMode();
        session.setHibernateFlushMode(FlushMode.MANUAL);
        session.setDefaultReadOnly(true);
        List<Attention.Entry> entries = new ArrayList<>();
        try {
            for (Attention bean : beans) {
                entries.addAll(bean.entries(today, scope));
                session.clear();
            }
        } finally {
            session.setDefaultReadOnly(false);
            session.setHibernateFlushMode(before);
        }
        return entries;
    }
}
