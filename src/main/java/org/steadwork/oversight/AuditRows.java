package org.steadwork.oversight;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.TypedQuery;
import java.util.List;

/** Finds entries of the audit trail with the names of patients, in a fixed number of queries. */
@ApplicationScoped
class AuditRows {

    private static final String FROM = " from AuditEvent e left join Patient p on p.id = e.patientId";
    private static final String ROW = "select e.id, s.sequence, e.happenedAt, e.accountId, e.actor, e.action, e.patientId, p.fileNumber, p.givenName, p.familyName,"
            + " e.caseFileId, e.detail, e.address, s.hash" + FROM + " left join AuditSeal s on s.eventId = e.id";

    @Inject
    EntityManager db;

    long count(AuditFilter filter) {
        return set(db.createQuery("select count(e)" + FROM + filter.condition(), Long.class), filter).getSingleResult();
    }

    /** Returns entries, the latest first. */
    List<AuditRow> latest(AuditFilter filter, int skip, int most) {
        return set(db.createQuery(ROW + filter.condition() + " order by e.id desc", AuditRow.class), filter).setFirstResult(skip).setMaxResults(most)
                .getResultList();
    }

    /** Returns entries in the order of the chain, those not sealed yet last. */
    List<AuditRow> inOrder(AuditFilter filter, int most) {
        return set(db.createQuery(ROW + filter.condition() + " order by s.sequence nulls last, e.id", AuditRow.class), filter).setMaxResults(most)
                .getResultList();
    }

    private static <T> TypedQuery<T> set(TypedQuery<T> query, AuditFilter filter) {
        filter.values().forEach(query::setParameter);
        return query;
    }
}
