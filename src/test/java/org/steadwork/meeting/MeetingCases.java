package org.steadwork.meeting;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.steadwork.account.Account;
import org.steadwork.account.Role;
import org.steadwork.people.Employer;
import org.steadwork.web.TestAccounts;

/** Meetings for tests, each before all that were made earlier, so that it is the next one and fills itself. */
@ApplicationScoped
class MeetingCases {

    private static final AtomicInteger COUNT = new AtomicInteger();
    private static final LocalDate FIRST = LocalDate.of(2026, 11, 1);

    @Inject
    EntityManager db;

    @Inject
    TestAccounts accounts;

    /** @param guest name of somebody from outside, or null; {@code employer} whom they stand for, or null */
    @Transactional
    public long plan(String guest, Long employer) {
        Account clinician = accounts.of(Role.CLINICIAN);
        ReviewMeeting meeting = new ReviewMeeting("T. Clinician", Instant.EPOCH);
        meeting.plan(FIRST.minusDays(COUNT.incrementAndGet()), LocalTime.of(12, 30), clinician, accounts.of(Role.LEAD));
        List<MeetingPerson> people = new ArrayList<>(List.of(MeetingPerson.of(meeting, clinician)));
        if (guest != null) {
            people.add(MeetingPerson.guest(meeting, guest, "manager", employer == null ? null : db.find(Employer.class, employer), null));
        }
        meeting.attend(people);
        db.persist(meeting);
        return meeting.id();
    }

    /** A meeting that is not the next one, so that it has only the cases put on by hand. */
    @Transactional
    public long planLate(String guest, Long employer) {
        plan(null, null);
        long id = plan(guest, employer);
        ReviewMeeting meeting = db.find(ReviewMeeting.class, id);
        meeting.plan(LocalDate.of(2097, 1, 1), LocalTime.of(12, 30), meeting.chair(), meeting.notes());
        return id;
    }

    @Transactional
    public long employer(String name) {
        Employer employer = new Employer(name);
        db.persist(employer);
        return employer.id();
    }

    @Transactional
    public String fileNumber(long caseId) {
        return db.createQuery("select c.patient.fileNumber from CaseFile c where c.id = ?1", String.class).setParameter(1, caseId).getSingleResult();
    }

    @Transactional
    public long patient(long caseId) {
        return db.createQuery("select c.patient.id from CaseFile c where c.id = ?1", Long.class).setParameter(1, caseId).getSingleResult();
    }

    @Transactional
    public long clinician() {
        return accounts.of(Role.CLINICIAN).id();
    }

    /** Tries to change a row behind the pages' back. */
    @Transactional
    public int force(String sql, long id) {
        return db.createNativeQuery(sql).setParameter(1, id).executeUpdate();
    }
}
