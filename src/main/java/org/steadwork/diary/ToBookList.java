package org.steadwork.diary;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.steadwork.account.Account;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.VisitKind;

/** Finds what has to be booked, so that no planned visit and no review day is lost, and offers times around its day with its clinician. */
@ApplicationScoped
class ToBookList {

    private static final int MID_MORNING = 600;
    private static final int PROPOSED = 4;
    private static final int PROPOSED_A_DAY = 1;
    /** Enough calendar days for the working days around a day, over holidays. */
    private static final int REACH = 10;
    private static final int FURTHEST_DAYS = 120;

    @Inject
    EntityManager db;

    @Inject
    Availability availability;

    @Inject
    Proposals proposals;

    @Inject
    DiaryContent content;

    @Inject
    Clock clock;

    /** All that is to be booked, the earliest day first. */
    List<ToBook> all() {
        LocalDate today = LocalDate.now(clock);
        List<ToBook> found = new ArrayList<>();
        List<Visit> planned = db.createQuery("from Visit v join fetch v.caseFile c join fetch c.patient join fetch c.clinician where v.attendance = ?1"
                + " and c.closedOn is null and not exists (select 1 from Appointment a where a.visit = v and a.live = true) order by v.visitedOn, v.id", Visit.class)
                .setParameter(1, Attendance.PLANNED).getResultList();
        planned.forEach(visit -> found.add(new ToBook(visit.caseFile(), visit, visit.visitedOn(), List.of())));
        Set<Long> named = planned.stream().map(visit -> visit.caseFile().id()).collect(Collectors.toSet());
        db.createQuery("from CaseFile c join fetch c.patient join fetch c.clinician where c.closedOn is null and c.nextReviewOn is not null"
                        + " and not exists (select 1 from Visit v where v.caseFile = c and v.attendance = ?1 and v.visitedOn >= ?2)"
                        + " and not exists (select 1 from Visit s where s.caseFile = c and s.attendance = ?3 and s.visitedOn >= c.nextReviewOn) order by c.nextReviewOn",
                CaseFile.class).setParameter(1, Attendance.PLANNED).setParameter(2, today).setParameter(3, Attendance.ATTENDED).getResultStream()
                .filter(file -> !named.contains(file.id())).forEach(file -> found.add(new ToBook(file, null, file.nextReviewOn(), List.of())));
        found.sort(Comparator.comparing(ToBook::on).thenComparing(one -> one.caseFile().id()));
        return withProposals(found, today);
    }

    private List<ToBook> withProposals(List<ToBook> found, LocalDate today) {
        if (found.isEmpty()) {
            return found;
        }
        LocalDate last = found.stream().map(ToBook::on).filter(day -> day.isBefore(today.plusDays(FURTHEST_DAYS))).max(LocalDate::compareTo).orElse(today);
        Openings openings = availability.between(today, (last.isBefore(today) ? today : last).plusDays(REACH));
        return found.stream().map(one -> new ToBook(one.caseFile(), one.visit(), one.on(), offered(openings, one, today))).toList();
    }

    /** Times on the days around: so many working days before and after; of a day in the past, from today on. */
    private List<Proposal> offered(Openings openings, ToBook one, LocalDate today) {
        Account clinician = one.caseFile().clinician();
        LocalDate near = one.on().isBefore(today) ? today : one.on();
        if (near.isAfter(today.plusDays(FURTHEST_DAYS)) || openings.clinicians().stream().noneMatch(who -> who.id().equals(clinician.id()))) {
            return List.of();
        }
        VisitKind kind = one.kind();
        return proposals.of(openings, List.of(clinician), openings.workingDaysAround(near, content.reviewDaysAround()),
                new Proposals.Search(one.caseFile().patient().id(), content.length(kind), near, MID_MORNING, PROPOSED, PROPOSED_A_DAY));
    }
}
