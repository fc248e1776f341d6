package org.steadwork.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What holds of turns on every database: two runners, each as a node of its own would be, compete for one piece of work. */
abstract class WorkTurnsContract {

    private static final String WORK = "trial";
    private static final int ROUNDS = 40;

    @Inject
    DataSource source;

    private WorkTurns one;
    private WorkTurns other;

    @BeforeEach
    void begin() throws SQLException {
        sql("delete from work_turn where work = '" + WORK + "'");
        one = node(120);
        other = node(120);
    }

    @AfterEach
    void end() {
        one.stop();
        other.stop();
    }

    private WorkTurns node(int seconds) {
        WorkTurns turns = new WorkTurns();
        turns.source = source;
        turns.seconds = seconds;
        return turns;
    }

    /** Never two at once, and of those that start together one alone, also where no row is there yet. */
    @Test
    void twoNeverWorkAtOnce() throws Exception {
        AtomicInteger at = new AtomicInteger();
        AtomicInteger most = new AtomicInteger();
        AtomicInteger worked = new AtomicInteger();
        CyclicBarrier together = new CyclicBarrier(2);
        CountDownLatch[] refused = new CountDownLatch[ROUNDS];
        for (int i = 0; i < ROUNDS; i++) {
            refused[i] = new CountDownLatch(1);
        }
        together(turns -> {
            for (int i = 0; i < ROUNDS; i++) {
                int round = i;
                together.await();
                boolean mine = turns.take(WORK, Duration.ZERO, () -> {
                    most.accumulateAndGet(at.incrementAndGet(), Math::max);
                    await(refused[round]);
                    worked.incrementAndGet();
                    at.decrementAndGet();
                });
                if (!mine) {
                    refused[round].countDown();
                }
                together.await();
            }
            return null;
        });
        assertEquals(1, most.get());
        assertEquals(ROUNDS, worked.get());
    }

    @Test
    void whatWasDoneLatelyIsNotDoneAgain() throws SQLException {
        assertTrue(one.take(WORK, Duration.ofMinutes(5), () -> { }));
        assertFalse(other.take(WORK, Duration.ofMinutes(5), () -> { }), "it was done a moment ago");
        assertFalse(one.take(WORK, Duration.ofMinutes(5), () -> { }), "by whichever node");
        assertTrue(other.take(WORK, Duration.ZERO, () -> { }), "who asks for it at any time gets it");
        sql("update work_turn set last_done_at = last_done_at - interval '6' minute where work = '" + WORK + "'");
        assertTrue(other.take(WORK, Duration.ofMinutes(5), () -> { }));
    }

    @Test
    void workThatFailsMayBeTriedAgainAtOnce() {
        assertThrows(IllegalStateException.class, () -> one.take(WORK, Duration.ofMinutes(5), () -> {
            throw new IllegalStateException("on purpose");
        }));
        assertTrue(other.take(WORK, Duration.ofMinutes(5), () -> { }));
    }

    /** A node that died leaves its row as it was. */
    @Test
    void aTurnLeftByADeadNodeEndsByItself() throws Exception {
        WorkTurns dying = node(2);
        dying.stop(); // nothing prolongs its turns, as nothing does when the process is gone
        Thread dead = new Thread(() -> assertThrows(RuntimeException.class, () -> dying.take(WORK, Duration.ZERO, () -> { })));
        dead.start();
        dead.join();
        assertTrue(one.heldSince(WORK).isPresent());
        assertFalse(one.take(WORK, Duration.ZERO, () -> { }), "it may still be alive");
        TimeUnit.MILLISECONDS.sleep(2300);
        assertEquals(false, one.heldSince(WORK).isPresent());
        assertTrue(one.take(WORK, Duration.ofMinutes(5), () -> { }), "work that was not done to its end is done");
    }

    @Test
    void workThatLastsLongerThanATurnKeepsIt() {
        WorkTurns quick = node(1);
        Instant began = Instant.now();
        assertTrue(quick.take(WORK, Duration.ZERO, () -> {
            pause(2600);
            assertFalse(other.take(WORK, Duration.ZERO, () -> { }), "the turn was prolonged");
            assertFalse(other.heldSince(WORK).orElseThrow().isAfter(began.plusSeconds(2)));
        }));
        quick.stop();
        assertEquals(false, other.heldSince(WORK).isPresent());
    }

    private interface Runner {
        Object with(WorkTurns turns) throws Exception;
    }

    private void together(Runner runner) throws Exception {
        ExecutorService both = Executors.newFixedThreadPool(2);
        try {
            List<Callable<Object>> nodes = new ArrayList<>();
            for (WorkTurns turns : List.of(one, other)) {
                nodes.add(() -> runner.with(turns));
            }
            for (Future<Object> result : both.invokeAll(nodes, 60, TimeUnit.SECONDS)) {
                result.get();
            }
        } finally {
            both.shutdownNow();
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            assertTrue(latch.await(30, TimeUnit.SECONDS), "nobody was refused");
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void pause(int millis) {
        try {
            TimeUnit.MILLISECONDS.sleep(millis);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private void sql(String statement) throws SQLException {
        try (Connection db = source.getConnection(); Statement sql = db.createStatement()) {
            sql.execute(statement);
        }
    }

    /** The numbers of records say which was first, so no node keeps a block of them for later; patients' numbers order nothing. */
    @Test
    void numbersAreGivenOneByOne() throws SQLException {
        try (Connection db = source.getConnection(); Statement sql = db.createStatement();
                ResultSet rows = sql.executeQuery(db.getMetaData().getDatabaseProductName().equals("H2")
                        ? "select sequence_name from information_schema.sequences where sequence_schema = current_schema and increment <> 1"
                        : "select sequencename from pg_sequences where schemaname = current_schema and increment_by <> 1")) {
            List<String> blocks = new ArrayList<>();
            while (rows.next()) {
                blocks.add(rows.getString(1));
            }
            assertEquals(List.of("patient_seq"), blocks, "give these an increment of 1 in their migration, and allocationSize = 1 at their entity");
        }
    }
}
