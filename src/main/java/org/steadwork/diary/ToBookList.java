package org.steadwork.diary;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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

    private static final int PAGE = 30;
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

    /** One page of the list. */
    record Part(List<ToBook> rows, int count, int page) {

        public int pages() {
            return Math.max(1, (count + PAGE - 1) / PAGE);
        }

        public int first() {
            return (page - 1) * PAGE + 1;
        }

        public int last() {
            return first() + rows.size() - 1;
        }

        public String earlier() {
            return page > 1 ? "/diary/to-book?page=" + (page - 1) : null;
        }

        public String later() {
            return page < pages() ? "/diary/to-book?page=" + (page + 1) : null;
        }
    }

    /** What is to be booked, as its key: a planned visit, or without one the review of a case. */
    private record Key(LocalDate on, Long caseId, Long visitId) {
    }

    /** Returns so many of what is to be booked, the earliest day first; of a page past the end the last. */
    Part part(int asked) {
        LocalDate today = LocalDate.now(clock);
        List<Key> keys = keys(today);
        int page = Math.max(1, Math.min(asked, (keys.size() + PAGE - 1) / PAGE));
        List<Key> shown = keys.subList((page - 1) * PAGE, Math.min(page * PAGE, keys.size()));
        return new Part(withProposals(read(shown), today), keys.size(), page);
    }

    private List<Key> keys(LocalDate today) {
        List<Key> keys = new ArrayList<>(db.createQuery("select v.visitedOn, c.id, v.id from Visit v join v.caseFile c where v.attendance = ?1"
                + " and c.closedOn is null and not exists (select 1 from Appointment a where a.visit = v and a.live = true)", Key.class)
                .setParameter(1, Attendance.PLANNED).getResultList());
        Set<Long> named = keys.stream().map(Key::caseId).collect(Collectors.toSet());
        db.createQuery("select c.nextReviewOn, c.id, cast(null as Long) from CaseFile c where c.closedOn is null and c.nextReviewOn is not null"
                        + " and not exists (select 1 from Visit v where v.caseFile = c and v.attendance = ?1 and v.visitedOn >= ?2)"
                        + " and not exists (select 1 from Visit s where s.caseFile = c and s.attendance = ?3 and s.visitedOn >= c.nextReviewOn)",
                Key.class).setParameter(1, Attendance.PLANNED).setParameter(2, today).setParameter(3, Attendance.ATTENDED).getResultStream()
                .filter(key -> !named.contains(key.caseId())).forEach(keys::add);
        keys.sort(Comparator.comparing(Key::on).thenComparing(Key::caseId).thenComparing(Key::visitId, Comparator.nullsLast(Comparator.naturalOrder())));
        return keys;
    }

    private List<ToBook> read(List<Key> shown) {
        Map<Long, Visit> visits = db.createQuery("from Visit v join fetch v.caseFile c join fetch c.patient join fetch c.clinician where v.id in ?1", Visit.class)
                .setParameter(1, shown.stream().map(Key::visitId).filter(Objects::nonNull).toList()).getResultStream().collect(Collectors.toMap(Visit::id, visit -> visit));
        Map<Long, CaseFile> files = db.createQuery("from CaseFile c join fetch c.patient join fetch c.clinician where c.id in ?1", CaseFile.class)
                .setParameter(1, shown.stream().map(Key::caseId).toList()).getResultStream().collect(Collectors.toMap(CaseFile::id, file -> file));
        return shown.stream().map(key -> new ToBook(files.get(key.caseId()), visits.get(key.visitId()), key.on(), List.of())).toList();
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
