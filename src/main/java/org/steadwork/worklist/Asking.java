package org.steadwork.worklist;

import io.quarkus.arc.ClientProxy;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hibernate.FlushMode;
import org.hibernate.Session;
import org.jboss.logging.Logger;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.CaseScope;

/** Asks every feature what in the cases of a scope needs somebody. */
@ApplicationScoped
class Asking {

    private static final Logger LOG = Logger.getLogger(Asking.class);
    private static final int LONGEST_SECONDS = 300;

    /**
     * What was told.
     *
     * @param silent rules whose feature failed: of them nothing is known, and what stood by them still stands
     */
    record Told(List<Attention.Entry> entries, Set<String> silent, boolean whole) {
    }

    @Inject
    @Any
    Instance<Attention> beans;

    @Inject
    EntityManager db;

    /** Asks each in a transaction of its own, so that one that fails takes nothing from the others and memory holds what one has read. */
    Told entries(LocalDate today, CaseScope scope) {
        List<Attention.Entry> entries = new ArrayList<>();
        Set<String> silent = new HashSet<>();
        boolean whole = true;
        for (Attention bean : beans) {
            try {
                entries.addAll(QuarkusTransaction.requiringNew().timeout(LONGEST_SECONDS).call(() -> reading(bean, today, scope)));
            } catch (RuntimeException e) {
                LOG.errorf(e, "%s could not tell what needs somebody", ClientProxy.unwrap(bean).getClass().getSimpleName());
                silent.addAll(bean.rules());
                whole = false;
            }
        }
        return new Told(entries, silent, whole);
    }

    private List<Attention.Entry> reading(Attention bean, LocalDate today, CaseScope scope) {
        Session session = db.unwrap(Session.class);
        session.setHibernateFlushMode(FlushMode.MANUAL);
        session.setDefaultReadOnly(true);
        return bean.entries(today, scope);
    }
}
