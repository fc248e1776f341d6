package org.steadwork.meeting;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.steadwork.web.ReadOnce;

/** What came of the meetings for the cases: decisions with the treating clinician's answer, and actions. */
@ApplicationScoped
class CaseOutcomes {

    private static final String DECIDED = "select d, a from Decision d join fetch d.meeting m join fetch d.who left join DecisionAnswer a on a.decisionId = d.id"
            + " left join fetch a.answeredBy join d.caseFile c";
    private static final String ACTIONS = "select distinct x from MeetingAction x join fetch x.meeting join fetch x.who join fetch x.caseFile c join fetch c.patient"
            + " left join fetch x.steps";

    /** A decision with the answer of the treating clinician, which may be null. */
    public record Decided(Decision decision, DecisionAnswer answer) {
    }

    @Inject
    EntityManager db;

    /** Returns the decisions of a case, the latest first. */
    @ReadOnce
    List<Decided> decisions(long caseId) {
        return db.createQuery(DECIDED + " where c.id = ?1 order by m.heldOn desc, d.id desc", Decided.class).setParameter(1, caseId).getResultList();
    }

    /** Returns the decisions of a meeting in the order they were recorded. */
    List<Decided> decisionsOf(long meetingId) {
        return db.createQuery(DECIDED + " where m.id = ?1 order by d.id", Decided.class).setParameter(1, meetingId).getResultList();
    }

    /** Returns the decisions in open cases that the treating clinician has not answered. */
    List<Decision> unanswered() {
        return db.createQuery("from Decision d join fetch d.meeting m join fetch d.caseFile c join fetch c.patient where c.closedOn is null"
                + " and not exists (select 1 from DecisionAnswer a where a.decisionId = d.id) order by d.id", Decision.class).getResultList();
    }

    /** Returns the decisions of other meetings in open cases that are to be looked at again by a day. */
    List<Decision> lookAgain(long meetingId, LocalDate from, LocalDate to) {
        return db.createQuery("from Decision d join fetch d.meeting m join fetch d.who join fetch d.caseFile c where c.closedOn is null and m.id <> ?1"
                + " and d.reviewOn > ?2 and d.reviewOn <= ?3 order by d.reviewOn, d.id", Decision.class).setParameter(1, meetingId)
                .setParameter(2, from).setParameter(3, to).getResultList();
    }

    Optional<Decision> decision(long caseId, long id) {
        return db.createQuery("from Decision d join fetch d.who join fetch d.meeting where d.id = ?1 and d.caseFile.id = ?2", Decision.class)
                .setParameter(1, id).setParameter(2, caseId).getResultStream().findFirst();
    }

    boolean answered(Decision decision) {
        return db.find(DecisionAnswer.class, decision.id()) != null;
    }

    /** Returns the actions of a case, open ones first, then the latest. */
    List<MeetingAction> actions(long caseId) {
        return db.createQuery(ACTIONS + " where c.id = ?1 order by x.dueOn, x.id", MeetingAction.class).setParameter(1, caseId).getResultList().stream()
                .sorted((one, other) -> Boolean.compare(other.open(), one.open())).toList();
    }

    List<MeetingAction> actionsOf(long meetingId) {
        return db.createQuery(ACTIONS + " where x.meeting.id = ?1 order by x.id", MeetingAction.class).setParameter(1, meetingId).getResultList();
    }

    /** Returns the open actions of all open cases, the earliest due first. */
    List<MeetingAction> openActions() {
        return db.createQuery(ACTIONS + " where c.closedOn is null order by x.dueOn, x.id", MeetingAction.class).getResultList().stream()
                .filter(MeetingAction::open).toList();
    }

    Optional<MeetingAction> action(long caseId, long id) {
        return db.createQuery(ACTIONS + " where x.id = ?1 and c.id = ?2", MeetingAction.class).setParameter(1, id).setParameter(2, caseId)
                .getResultStream().findFirst();
    }

    /** Returns what was asked for a case, the open ones first. */
    List<CaseAsk> asks(long caseId) {
        return db.createQuery("from CaseAsk a where a.caseFile.id = ?1 order by case when a.settledAt is null then 0 else 1 end, a.id desc", CaseAsk.class)
                .setParameter(1, caseId).getResultList();
    }

    /** Returns what is asked for in all cases. */
    List<CaseAsk> openAsks() {
        return db.createQuery("from CaseAsk a join fetch a.caseFile where a.settledAt is null order by a.id", CaseAsk.class).getResultList();
    }

    Optional<PlannedVisits> planned(long caseId) {
        return Optional.ofNullable(db.find(PlannedVisits.class, caseId));
    }
}
