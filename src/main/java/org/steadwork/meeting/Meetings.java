package org.steadwork.meeting;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.NotFoundException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The review meetings. */
@ApplicationScoped
class Meetings implements PanacheRepository<ReviewMeeting> {

    private static final String WHOLE = "select distinct m from ReviewMeeting m join fetch m.chair join fetch m.notes left join fetch m.people p"
            + " left join fetch p.account left join fetch p.employer left join fetch p.correspondent";
    private static final LocalDate LONG_AGO = LocalDate.of(1900, 1, 1);
    private static final String OPEN = "m.calledOffAt is null and not exists (select 1 from Minutes x where x.meetingId = m.id)";

    /** Returns a meeting with everybody who takes part, or answers 404. */
    ReviewMeeting whole(long id) {
        return list(WHOLE + " where m.id = ?1", id).stream().findFirst().orElseThrow(NotFoundException::new);
    }

    /** Returns the meetings still to be held, the next first. */
    List<ReviewMeeting> coming() {
        return list(WHOLE + " where " + OPEN + " order by m.heldOn, m.startsAt, m.id");
    }

    /** Returns the meetings that were closed or called off, the latest first. */
    List<ReviewMeeting> past() {
        return list(WHOLE + " where not (" + OPEN + ") order by m.heldOn desc, m.startsAt desc, m.id desc");
    }

    /** Returns the number of the meeting that fills its agenda itself: the next one that is still open. */
    Optional<Long> next() {
        return getEntityManager().createQuery("select m.id from ReviewMeeting m where " + OPEN + " order by m.heldOn, m.startsAt, m.id", Long.class)
                .setMaxResults(1).getResultStream().findFirst();
    }

    /** Returns the day of the last closed meeting before one: what was due for another look by then was before it. Long ago when there was none. */
    LocalDate heldBefore(ReviewMeeting meeting) {
        LocalDate day = getEntityManager().createQuery("select max(m.heldOn) from ReviewMeeting m, Minutes x where x.meetingId = m.id and m.id <> ?1"
                + " and m.heldOn < ?2", LocalDate.class).setParameter(1, meeting.id()).setParameter(2, meeting.heldOn()).getSingleResult();
        return day == null ? LONG_AGO : day;
    }

    Optional<Minutes> minutes(long meetingId) {
        return getEntityManager().createQuery("from Minutes x join fetch x.closedBy where x.meetingId = ?1", Minutes.class).setParameter(1, meetingId)
                .getResultStream().findFirst();
    }

    /** Returns the minutes of all closed meetings, with who closed them. */
    List<Minutes> closed() {
        return getEntityManager().createQuery("from Minutes x join fetch x.closedBy", Minutes.class).getResultList();
    }

    List<MinutesAddendum> addenda(long meetingId) {
        return getEntityManager().createQuery("from MinutesAddendum a where a.meetingId = ?1 order by a.writtenAt, a.id", MinutesAddendum.class)
                .setParameter(1, meetingId).getResultList();
    }

    /** Returns the cases somebody touched on an agenda, those taken off as well, in their order. */
    List<AgendaCase> cases(long meetingId) {
        return getEntityManager().createQuery("from AgendaCase a join fetch a.caseFile c join fetch c.patient join fetch c.clinician where a.meeting.id = ?1"
                + " order by a.place, a.id", AgendaCase.class).setParameter(1, meetingId).getResultList();
    }

    Optional<AgendaCase> caseOf(long meetingId, long caseId) {
        return getEntityManager().createQuery("from AgendaCase a where a.meeting.id = ?1 and a.caseFile.id = ?2", AgendaCase.class)
                .setParameter(1, meetingId).setParameter(2, caseId).getResultStream().findFirst();
    }

    void add(Object record) {
        getEntityManager().persist(record);
    }

    void remove(Object record) {
        getEntityManager().remove(record);
    }
}
