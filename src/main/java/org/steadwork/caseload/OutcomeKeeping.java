package org.steadwork.caseload;

import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManagerFactory;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collections;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.WeakHashMap;
import org.hibernate.Session;
import org.hibernate.engine.spi.SessionFactoryImplementor;
import org.hibernate.engine.spi.SharedSessionContractImplementor;
import org.hibernate.engine.spi.TransactionCompletionCallbacks.AfterCompletionCallback;
import org.hibernate.engine.spi.TransactionCompletionCallbacks.BeforeCompletionCallback;
import org.hibernate.event.service.spi.EventListenerRegistry;
import org.hibernate.event.spi.AbstractEvent;
import org.hibernate.event.spi.EventType;
import org.hibernate.event.spi.PostDeleteEvent;
import org.hibernate.event.spi.PostDeleteEventListener;
import org.hibernate.event.spi.PostInsertEvent;
import org.hibernate.event.spi.PostInsertEventListener;
import org.hibernate.event.spi.PostUpdateEvent;
import org.hibernate.event.spi.PostUpdateEventListener;
import org.hibernate.persister.entity.EntityPersister;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.Link;
import org.steadwork.casefile.SymptomReport;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.WorkStatus;
import org.steadwork.outcome.Score;
import org.steadwork.people.Patient;
import org.steadwork.redflag.RedFlagScreen;
import org.steadwork.workplace.Finding;
import org.steadwork.workplace.WorkplaceAssessment;

/**
 * Sums up a case whenever anything it is summed up from is stored, whoever stores it, just before the same transaction ends: a row is never
 * older than its case, and a change that is rolled back leaves none behind. What goes past Hibernate, as a bulk load does, calls
 * {@link OutcomeStart#rebuild} afterwards.
 */
@ApplicationScoped
class OutcomeKeeping implements PostInsertEventListener, PostUpdateEventListener, PostDeleteEventListener {

    private static final Set<Class<?>> OF_A_CASE = Set.of(SymptomReport.class, Score.class, Visit.class, WorkStatus.class, Finding.class, Link.class,
            RedFlagScreen.class, WorkplaceAssessment.class);

    @Inject
    EntityManagerFactory factory;

    @Inject
    CaseOutcomes outcomes;

    // weak, so that a session that ends in no ordinary way leaves nothing behind
    private final Map<SharedSessionContractImplementor, Touched> touched = Collections.synchronizedMap(new WeakHashMap<>());

    /** What one transaction has changed so far. */
    private static final class Touched {
        private final Set<Long> cases = new HashSet<>();
        private final Set<Long> patients = new HashSet<>();
    }

    /** Begins before anything else stores a case. */
    void listen(@Observes @Priority(1) StartupEvent event) {
        EventListenerRegistry listeners = factory.unwrap(SessionFactoryImplementor.class).getServiceRegistry().requireService(EventListenerRegistry.class);
        listeners.appendListeners(EventType.POST_INSERT, this);
        listeners.appendListeners(EventType.POST_UPDATE, this);
        listeners.appendListeners(EventType.POST_DELETE, this);
    }

    @Override
    public void onPostInsert(PostInsertEvent event) {
        note(event, event.getPersister(), event.getEntity(), event.getId());
    }

    @Override
    public void onPostUpdate(PostUpdateEvent event) {
        note(event, event.getPersister(), event.getEntity(), event.getId());
    }

    @Override
    public void onPostDelete(PostDeleteEvent event) {
        note(event, event.getPersister(), event.getEntity(), event.getId());
    }

    @Override
    public boolean requiresPostCommitHandling(EntityPersister persister) {
        return false;
    }

    private void note(AbstractEvent event, EntityPersister persister, Object entity, Object id) {
        if (entity instanceof CaseFile) {
            of(event.getSession()).cases.add((Long) id);
        } else if (entity instanceof Patient) {
            of(event.getSession()).patients.add((Long) id);
        } else if (OF_A_CASE.contains(entity.getClass())) {
            Object file = persister.getPropertyValue(entity, "caseFile");
            of(event.getSession()).cases.add((Long) factory.getPersistenceUnitUtil().getIdentifier(file));
        }
    }

    private Touched of(SharedSessionContractImplementor session) {
        return touched.computeIfAbsent(session, first -> {
            session.getTransactionCompletionCallbacks().registerCallback((BeforeCompletionCallback) this::sumUp);
            session.getTransactionCompletionCallbacks().registerCallback((AfterCompletionCallback)
                    (done, ended) -> touched.remove(ended));
            return new Touched();
        });
    }

    private void sumUp(SharedSessionContractImplementor session) {
        Touched changed = touched.remove(session);
        if (changed != null) {
            ((Session) session).doWork(connection -> {
                for (long patient : changed.patients) {
                    addCasesOf(connection, patient, changed.cases);
                }
                outcomes.refresh(connection, changed.cases);
            });
        }
    }

    private static void addCasesOf(Connection connection, long patient, Set<Long> cases) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement("select id from case_file where patient_id = ?")) {
            statement.setLong(1, patient);
            try (ResultSet row = statement.executeQuery()) {
                while (row.next()) {
                    cases.add(row.getLong(1));
                }
            }
        }
    }
}
