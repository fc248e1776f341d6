package org.steadwork.caseload;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

/** Which figures are counted anew and which are shown again. */
class KeptFiguresTest {

    private static final LocalDate TODAY = LocalDate.of(2030, 12, 16);
    private static final int MANY = KeptFigures.FEWEST_CASES;
    private static final long SECOND = TimeUnit.SECONDS.toNanos(1);

    private final AtomicLong nanos = new AtomicLong();
    private final AtomicInteger countings = new AtomicInteger();
    private final KeptFigures kept = new KeptFigures(nanos::get);

    @Test
    void figuresOfFewCasesAreCountedEachTime() {
        ask(TODAY, MANY - 1);
        ask(TODAY, MANY - 1);
        assertEquals(2, countings.get());
    }

    @Test
    void figuresOfManyAreShownAgainAHundredTimesAsLongAsCountingTook() {
        KeptFigures.Counted first = ask(TODAY, MANY);
        nanos.addAndGet(99 * SECOND);
        assertSame(first, ask(TODAY, MANY));
        nanos.addAndGet(2 * SECOND);
        ask(TODAY, MANY);
        assertEquals(2, countings.get());
    }

    @Test
    void anotherChoiceOrDayIsCountedForItself() {
        ask(TODAY, MANY);
        ask(TODAY.plusDays(1), MANY);
        kept.of(new KeptFigures.Asked(CaseloadTab.TIME, chosen(), List.of(), TODAY), () -> counting(MANY));
        kept.of(new KeptFigures.Asked(CaseloadTab.TIME, chosen(), List.of("looked_at-yes", "looked_at-no"), TODAY), () -> counting(MANY));
        assertEquals(4, countings.get());
    }

    @Test
    void aCountingThatFailsIsNotKept() {
        assertThrows(IllegalArgumentException.class, () -> kept.of(asked(TODAY), () -> {
            throw new IllegalArgumentException("no rows");
        }));
        assertEquals(MANY, ask(TODAY, MANY).cases());
    }

    @Test
    void twoWhoAskAtOnceWaitForOneCounting() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch goOn = new CountDownLatch(1);
        CompletableFuture<KeptFigures.Counted> first = CompletableFuture.supplyAsync(() -> kept.of(asked(TODAY), () -> {
            begun.countDown();
            await(goOn);
            return counting(MANY);
        }));
        await(begun);
        CompletableFuture<KeptFigures.Counted> second = CompletableFuture.supplyAsync(() -> ask(TODAY, MANY));
        goOn.countDown();
        assertSame(first.get(20, TimeUnit.SECONDS), second.get(20, TimeUnit.SECONDS));
        assertEquals(1, countings.get());
    }

    @Test
    void whoWaitsForACountingThatFailsIsToldWhy() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch goOn = new CountDownLatch(1);
        CompletableFuture<KeptFigures.Counted> first = CompletableFuture.supplyAsync(() -> kept.of(asked(TODAY), () -> {
            begun.countDown();
            await(goOn);
            throw new IllegalArgumentException("no rows");
        }));
        await(begun);
        CompletableFuture<KeptFigures.Counted> second = CompletableFuture.supplyAsync(() -> kept.of(asked(TODAY), () -> {
            throw new IllegalArgumentException("no rows");
        }));
        goOn.countDown();
        for (CompletableFuture<KeptFigures.Counted> one : List.of(first, second)) {
            ExecutionException failed = assertThrows(ExecutionException.class, () -> one.get(20, TimeUnit.SECONDS));
            assertEquals("no rows", failed.getCause().getMessage());
        }
    }

    private KeptFigures.Counted ask(LocalDate today, int cases) {
        return kept.of(asked(today), () -> counting(cases));
    }

    /** Counting takes a second. */
    private KeptFigures.Counted counting(int cases) {
        countings.incrementAndGet();
        nanos.addAndGet(SECOND);
        return new KeptFigures.Counted(cases, List.of(), Instant.EPOCH);
    }

    private static KeptFigures.Asked asked(LocalDate today) {
        return new KeptFigures.Asked(CaseloadTab.OUTCOMES, chosen(), List.of(), today);
    }

    private static Selection chosen() {
        return new Selection(TODAY.minusYears(1), TODAY, null, null, Set.of(), false, null);
    }

    private static void await(CountDownLatch latch) {
        try {
            assertEquals(true, latch.await(20, TimeUnit.SECONDS));
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
