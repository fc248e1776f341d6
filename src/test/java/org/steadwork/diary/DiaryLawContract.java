package org.steadwork.diary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Account;
import org.steadwork.account.Role;
import org.steadwork.casefile.Attendance;
import org.steadwork.web.Dates;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

/** The law of the diary, on every database: nobody and no room is booked twice, and of those who book one time at one moment one gets it. */
abstract class DiaryLawContract {

    private static final long SEED = 20301217;
    private static final int AT_ONCE = 8;

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    /** Everybody works the usual hours again, whatever another test set. */
    @BeforeEach
    void usualHours() {
        QuarkusTransaction.requiringNew().run(() -> db.createQuery("delete from WorkingWeek").executeUpdate());
    }

    private record Known(long caseId, long patientId, String name) {
    }

    /** A Monday of its own for each test, so that what others booked is not in the way. */
    private LocalDate monday(int weeks) {
        return LocalDate.now(clock).plusWeeks(weeks).with(TemporalAdjusters.next(DayOfWeek.MONDAY));
    }

    @Test
    void ofEightWhoBookOneTimeAtOneMomentOneGetsItAndTheOthersKeepWhatTheyTyped() throws Exception {
        LocalDate day = monday(3);
        Account clinician = accounts.of(Role.CLINICIAN);
        List<Known> known = known("Race", AT_ONCE);
        for (String start : List.of("9:00", "10:00", "11:00")) {
            List<Visitor> visitors = known.stream().map(one -> accounts.visitor(Role.ASSISTANT)).toList();
            for (int i = 0; i < AT_ONCE; i++) {
                visitors.get(i).open("/diary/book?patient=" + known.get(i).patientId());
            }
            CyclicBarrier barrier = new CyclicBarrier(AT_ONCE);
            ExecutorService pool = Executors.newFixedThreadPool(AT_ONCE);
            List<Callable<Integer>> work = new ArrayList<>();
            for (Visitor visitor : visitors) {
                work.add(() -> {
                    barrier.await();
                    visitor.submit("/diary/book", Map.of("clinician", clinician.id().toString(), "day", Dates.shown(day), "start", start, "minutes", "35", "kind", "follow_up",
                            "room", "none"));
                    return visitor.status();
                });
            }
            List<Integer> answers = new ArrayList<>();
            for (Future<Integer> one : pool.invokeAll(work)) {
                answers.add(one.get());
            }
            pool.shutdown();
            assertEquals(1, answers.stream().filter(status -> status == 200).count(), answers.toString());
            assertEquals(AT_ONCE - 1, answers.stream().filter(status -> status == 409).count(), answers.toString());
            for (int i = 0; i < AT_ONCE; i++) {
                if (answers.get(i) == 409) {
                    assertEquals(start, visitors.get(i).page().select("input[name=start]").val());
                    assertEquals("35", visitors.get(i).page().select("input[name=minutes]").val());
                    assertTrue(visitors.get(i).page().select(".proposals button[name=take]").size() >= 3, visitors.get(i).page().text());
                }
            }
        }
        assertEquals(3, count("select count(a) from Appointment a where a.live = true and a.day = ?1", day));
        assertEquals(3, count("select count(v) from Visit v where v.visitedOn = ?1 and v.caseFile.id in ?2", day, known.stream().map(Known::caseId).toList()),
                "whoever was refused has no visit either");
        assertNoOverlap();
    }

    @Test
    void aPressOnOneOfTheProposalsBooksIt() {
        Known one = known("Press", 1).get(0);
        Visitor visitor = accounts.visitor(Role.ASSISTANT);
        visitor.open("/diary/book?patient=" + one.patientId() + "&day=" + monday(5));
        String offered = visitor.page().select("button[name=take]").first().val();
        visitor.submit("/diary/book", Map.of("take", offered));
        assertEquals(200, visitor.status(), visitor.page().text());
        assertTrue(visitor.page().select(".diary__block--booked").text().contains(one.name()), visitor.page().text());
        assertNoOverlap();
    }

    /** Several book, move, cancel and undo at random at one time; whatever is answered, the law holds and no planned visit is lost. */
    @Test
    void randomBookingsMovesAndCancellationsNeverOverlap() throws Exception {
        List<Known> known = known("Random", 6);
        QuarkusTransaction.requiringNew().run(() -> List.of("Law one", "Law two").forEach(name -> {
            if (db.createQuery("select count(r) from ClinicRoom r where r.name = ?1", Long.class).setParameter(1, name).getSingleResult() == 0) {
                db.persist(new ClinicRoom(name));
            }
        }));
        LocalDate day = monday(7);
        List<Long> clinicians = List.of(accounts.of(Role.CLINICIAN).id(), accounts.of(Role.LEAD).id());
        int threads = 3;
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        List<Callable<Map<Integer, Integer>>> work = new ArrayList<>();
        for (int t = 0; t < threads; t++) {
            Random random = new Random(SEED + t);
            Visitor visitor = accounts.visitor(Role.ASSISTANT);
            work.add(() -> {
                Map<Integer, Integer> statuses = new LinkedHashMap<>();
                for (int i = 0; i < 40; i++) {
                    act(random, visitor, known, clinicians, day);
                    statuses.merge(visitor.status(), 1, Integer::sum);
                }
                return statuses;
            });
        }
        Map<Integer, Integer> all = new LinkedHashMap<>();
        for (Future<Map<Integer, Integer>> one : pool.invokeAll(work)) {
            one.get().forEach((status, count) -> all.merge(status, count, Integer::sum));
        }
        pool.shutdown();
        assertTrue(List.of(200, 409, 422).containsAll(all.keySet()), "seed " + SEED + ": " + all);
        assertTrue(all.getOrDefault(200, 0) > 30 && all.getOrDefault(409, 0) > 5, "seed " + SEED + " hardly met: " + all);
        assertNoOverlap();
        assertEquals(0, count("select count(a) from Appointment a where a.live = true and a.visit is not null and a.visit.visitedOn <> a.day"), "day of visit and appointment");
        assertEquals(0, count("select count(a) from Appointment a where a.live = true and a.visit is not null and a.visit.attendance in ?1",
                List.of(Attendance.CANCELLED, Attendance.LATE_CANCELLED)));
        assertEquals(0, count("select count(v) from Visit v where v.attendance = ?1 and v.caseFile.id in (" + known.stream().map(one -> String.valueOf(one.caseId()))
                .reduce((a, b) -> a + "," + b).orElseThrow() + ") and not exists (select 1 from Appointment a where a.visit = v and a.live = true)", Attendance.PLANNED));
    }

    private void act(Random random, Visitor visitor, List<Known> known, List<Long> clinicians, LocalDate monday) {
        LocalDate day = monday.plusDays(random.nextInt(2));
        Map<String, String> when = new LinkedHashMap<>(Map.of("clinician", clinicians.get(random.nextInt(2)).toString(), "day", Dates.shown(day), "start",
                "%d:%02d".formatted(9 + random.nextInt(3), random.nextInt(12) * 5), "minutes", String.valueOf(5 + random.nextInt(12) * 5)));
        List<Long> booked = QuarkusTransaction.requiringNew().call(() -> db.createQuery("select a.id from Appointment a where a.live = true and a.day between ?1 and ?2 and a.visit.attendance = ?3",
                Long.class).setParameter(1, monday).setParameter(2, monday.plusDays(1)).setParameter(3, Attendance.PLANNED).getResultList());
        int what = random.nextInt(10);
        if (what < 5 || booked.isEmpty()) {
            visitor.open("/diary/book?patient=" + known.get(random.nextInt(known.size())).patientId());
            when.put("kind", "follow_up");
            when.put("room", random.nextBoolean() ? "any" : "none");
            visitor.submit("/diary/book", when);
            return;
        }
        String page = "/diary/appointments/" + booked.get(random.nextInt(booked.size()));
        visitor.open(page);
        String form = what < 8 ? page + "/move" : what == 8 ? page + "/cancel" : page;
        if (visitor.page().select("form[action=" + form + "]").isEmpty()) {
            return; // somebody was quicker
        }
        if (what < 8) {
            visitor.submit(form, when);
        } else if (what == 8) {
            visitor.submit(form, Map.of("by", random.nextBoolean() ? "patient" : "clinic"));
        } else {
            visitor.submit(form, Map.of("do", "undo"));
        }
    }

    private List<Known> known(String family, int count) {
        List<Known> known = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String name = family + "-" + System.nanoTime();
            long id = cases.open("Ottilie", name);
            long patient = QuarkusTransaction.requiringNew().call(() -> db.createQuery("select c.patient.id from CaseFile c where c.id = ?1", Long.class).setParameter(1, id)
                    .getSingleResult());
            known.add(new Known(id, patient, name));
        }
        return known;
    }

    /** Counted in plain minutes from the appointments themselves, not from the table that guards them. */
    private void assertNoOverlap() {
        List<Object[]> live = QuarkusTransaction.requiringNew().call(() -> db.createQuery("select a.day, a.start, a.minutes, a.clinician.id, a.patient.id, r.id, a.id from Appointment a"
                + " left join a.room r where a.live = true", Object[].class).getResultList());
        for (Object[] one : live) {
            for (Object[] other : live) {
                boolean sameTime = !one[6].equals(other[6]) && one[0].equals(other[0]) && (int) one[1] < (int) other[1] + (int) other[2]
                        && (int) other[1] < (int) one[1] + (int) one[2];
                assertFalse(sameTime && (one[3].equals(other[3]) || one[4].equals(other[4]) || one[5] != null && one[5].equals(other[5])),
                        () -> "appointments " + one[6] + " and " + other[6] + " overlap");
            }
        }
        long cells = live.stream().mapToLong(one -> (int) one[2] / 5 * (one[5] == null ? 2 : 3)).sum();
        assertEquals(cells, QuarkusTransaction.requiringNew().call(() -> ((Number) db.createNativeQuery("select count(*) from taken_slot").getSingleResult()).longValue()),
                "every live appointment holds its time, and nothing else does");
    }

    private long count(String query, Object... parameters) {
        return QuarkusTransaction.requiringNew().call(() -> {
            var asked = db.createQuery(query, Long.class);
            for (int i = 0; i < parameters.length; i++) {
                asked.setParameter(i + 1, parameters[i]);
            }
            return asked.getSingleResult();
        });
    }
}
