package org.steadwork.worklist;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import java.util.stream.Collectors;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.steadwork.casefile.CaseScope;

/**
 * Brings the stored list up to date with the rules before it is shown. A clinic of usual size has all its open cases looked at each time.
 * A large one has those looked at in which something was done since, by the audit trail, and all of them when the day is a new one and
 * every so often, step by step in the background, so that nothing depends on the trail for long.
 */
@ApplicationScoped
class Refresh {

    private static final Logger LOG = Logger.getLogger(Refresh.class);
    /** Lines of the trail looked at once more, since one with a lower number may be stored a moment later. */
    private static final int OVERLAP = 100;
    /** From so many changed cases on, looking at all of them is the simpler question. */
    private static final int MANY = 500;
    private static final int TRIES = 2;
    private static final Duration OLDEST = Duration.ofHours(1);
    private static final Duration MINUTE = Duration.ofMinutes(1);
    private static final int LONGEST_SECONDS = 300;

    @Inject
    EntityManager db;

    @Inject
    Asking asking;

    @Inject
    EntryChanges changes;

    @Inject
    Clock clock;

    @ConfigProperty(name = "steadwork.today.whole-up-to")
    int wholeUpTo;

    /** So many open cases are looked at in one step of the background, while those who open Today wait. */
    int casesAStep = 250;

    /** Fair, so that a page comes between two steps of the background. */
    private final ReentrantLock oneAtATime = new ReentrantLock(true);
    /** The latest look that told everything, guarded by the lock. */
    private LocalDate latestDay;
    private long latestBegan;
    /** Lines of the trail whose cases were looked at since, so that looking back finds only those stored late; guarded by the lock. */
    private Set<Long> lookedAt = Set.of();

    private record Line(long id, long caseId) {
    }

    /** One step through a large clinic: the number of the first case of the next, and whether everything was told. */
    private record Step(long next, boolean whole) {
    }

    /** How much a look is to do. */
    private enum Reach { WHAT_IS_DUE, ALL, WHAT_A_PAGE_CAN_WAIT_FOR }

    /** What became of a look: the list is up to date, something may be missing, or all cases of a large clinic are due and none was looked at. */
    enum Result { UP_TO_DATE, IN_PART, ALL_ARE_DUE }

    /** What one look gave, and the lines of the trail it went by. */
    private record Look(Result result, Set<Long> lines) {
    }

    /** Brings the list up to date for a day; returns false when a feature could not tell, so that something may be missing. */
    boolean run(LocalDate today) {
        return run(today, Reach.WHAT_IS_DUE, System.nanoTime()) == Result.UP_TO_DATE;
    }

    /**
     * As {@link #run(LocalDate)} for a page: waits so long for somebody else's look, tries twice, since somebody may put an entry off at the same
     * moment, and leaves the look at all cases of a large clinic to {@link #runWhole}.
     */
    Result forPage(LocalDate today, Duration patience) {
        long asked = System.nanoTime();
        try {
            if (!oneAtATime.tryLock(patience.toMillis(), TimeUnit.MILLISECONDS)) {
                return Result.IN_PART;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Result.IN_PART;
        }
        try {
            for (int left = TRIES; left > 0; left--) {
                try {
                    return run(today, Reach.WHAT_A_PAGE_CAN_WAIT_FOR, asked);
                } catch (RuntimeException e) {
                    LOG.errorf(e, "Today was not brought up to date, tries left: %d", left - 1);
                }
            }
            return Result.IN_PART;
        } finally {
            oneAtATime.unlock();
        }
    }

    /** Does so after a look at all cases, whatever their number; in a large clinic in steps, so that nobody waits for more than one of them. */
    boolean runWhole(LocalDate today) {
        return QuarkusTransaction.requiringNew().call(this::openCases) > wholeUpTo ? runInSteps(today)
                : run(today, Reach.ALL, System.nanoTime()) == Result.UP_TO_DATE;
    }

    private boolean runInSteps(LocalDate today) {
        Instant began = Instant.now(clock);
        long last = QuarkusTransaction.requiringNew().call(this::lastEvent);
        boolean whole = true;
        Step step = new Step(0, true);
        while (step.next() < Long.MAX_VALUE) {
            long first = step.next();
            step = held(() -> step(first, today));
            whole &= step.whole();
        }
        return whole && held(() -> {
            WorklistState state = state();
            state.brought(today, today.equals(state.shownOn()) ? Math.max(last, state.lastEventId()) : last);
            state.lookedAtAll(began);
            return true;
        });
    }

    private <T> T held(Callable<T> work) {
        oneAtATime.lock();
        try {
            return QuarkusTransaction.requiringNew().timeout(LONGEST_SECONDS).call(work);
        } finally {
            oneAtATime.unlock();
        }
    }

    private Step step(long first, LocalDate today) {
        WorklistState state = state(); // before asking which are open, so that nobody notes meanwhile what stands in one reopened
        List<Long> open = db.createQuery("select c.id from CaseFile c where c.id >= :first and c.closedOn is null order by c.id", Long.class)
                .setParameter("first", first).setMaxResults(casesAStep).getResultList();
        long next = open.size() < casesAStep ? Long.MAX_VALUE : open.get(open.size() - 1) + 1;
        CaseScope scope = CaseScope.between(first, next - 1, open);
        Asking.Told told = asking.entries(today, scope);
        changes.apply(told, scope, today, Instant.now(clock), state.lastEventId());
        return new Step(next, told.whole());
    }

    /** Whether the list holds what the rules say of a case on a day: looked at today and not long ago, and nothing done in the case since. */
    boolean knows(long caseId, LocalDate today) {
        WorklistState state = db.find(WorklistState.class, WorklistState.ONLY);
        return state != null && today.equals(state.shownOn()) && !old(state, Instant.now(clock))
                && db.createQuery("select count(e) from AuditEvent e where e.caseFileId = :case and e.id > :event and e.action not like 'viewed%'", Long.class)
                        .setParameter("case", caseId).setParameter("event", state.lastEventId() - OVERLAP).getSingleResult() == 0;
    }

    private Result run(LocalDate today, Reach reach, long asked) {
        oneAtATime.lock();
        try {
            // somebody else brought it up to date while this one waited: what was stored before it was asked for is in it
            if (reach != Reach.ALL && today.equals(latestDay) && latestBegan - asked > 0) {
                return Result.UP_TO_DATE;
            }
            long began = System.nanoTime();
            Look look = QuarkusTransaction.requiringNew().timeout(LONGEST_SECONDS).call(() -> refresh(today, reach));
            if (look.result() == Result.UP_TO_DATE) {
                latestDay = today;
                latestBegan = began;
                lookedAt = look.lines();
            }
            return look.result();
        } finally {
            oneAtATime.unlock();
        }
    }

    private Look refresh(LocalDate today, Reach reach) {
        Instant now = Instant.now(clock);
        WorklistState state = state();
        long seen = state.lastEventId();
        long last = lastEvent();
        boolean large = openCases() > wholeUpTo;
        boolean whole = reach == Reach.ALL || !large || !today.equals(state.shownOn()) || old(state, now);
        List<Line> lines = whole ? List.of() : linesSince(seen - OVERLAP);
        Set<Long> changed = lines.stream().filter(line -> !lookedAt.contains(line.id())).map(Line::caseId).collect(Collectors.toSet());
        whole |= changed.size() > MANY;
        if (whole && large && reach == Reach.WHAT_A_PAGE_CAN_WAIT_FOR) {
            return new Look(Result.ALL_ARE_DUE, Set.of());
        }
        if (whole || !changed.isEmpty()) {
            CaseScope scope = whole ? CaseScope.all() : CaseScope.of(changed);
            Asking.Told told = asking.entries(today, scope);
            changes.apply(told, scope, today, now, seen);
            if (!told.whole()) {
                return new Look(Result.IN_PART, Set.of()); // nothing is noted, so that the same cases are asked about again next time
            }
        }
        note(state, today, last, whole ? now : null);
        return new Look(Result.UP_TO_DATE, lines.stream().map(Line::id).collect(Collectors.toSet()));
    }

    /** Held to the end of the transaction, so that two processes on one database do not write the same entry twice. */
    private WorklistState state() {
        return db.find(WorklistState.class, WorklistState.ONLY, LockModeType.PESSIMISTIC_WRITE);
    }

    private long lastEvent() {
        return db.createQuery("select coalesce(max(e.id), 0) from AuditEvent e", Long.class).getSingleResult();
    }

    /** The clock of a demo may begin anew, so a look in the future is an old one too. */
    private static boolean old(WorklistState state, Instant now) {
        return state.wholeAt() == null || state.wholeAt().isAfter(now) || Duration.between(state.wholeAt(), now).compareTo(OLDEST) > 0;
    }

    private long openCases() {
        return db.createQuery("select count(c) from CaseFile c where c.closedOn is null", Long.class).getSingleResult();
    }

    private List<Line> linesSince(long event) {
        return db.createQuery("select e.id, e.caseFileId from AuditEvent e where e.id > :event and e.caseFileId is not null"
                + " and e.action not like 'viewed%'", Line.class).setParameter("event", event).getResultList();
    }

    /** A look that found nothing new is not worth a write each time. */
    private static void note(WorklistState state, LocalDate today, long last, Instant whole) {
        if (!today.equals(state.shownOn()) || last != state.lastEventId()) {
            state.brought(today, last);
        }
        if (whole != null && (state.wholeAt() == null || Duration.between(state.wholeAt(), whole).abs().compareTo(MINUTE) > 0)) {
            state.lookedAtAll(whole);
        }
    }
}
