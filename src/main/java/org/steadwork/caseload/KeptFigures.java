package org.steadwork.caseload;

import com.github.benmanes.caffeine.cache.AsyncCache;
import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.Expiry;
import com.github.benmanes.caffeine.cache.Ticker;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * Figures of many cases are shown again for {@value #TIMES_THE_COUNTING} times as long as it took to count them, with the moment of their
 * counting beside them; those of fewer than {@value #FEWEST_CASES} cases are counted each time they are asked for. Who asks for what
 * somebody else is counting at the moment waits for that.
 */
@ApplicationScoped
class KeptFigures {

    static final int FEWEST_CASES = 20_000;
    static final int TIMES_THE_COUNTING = 100;
    private static final int MOST = 40;

    /** What was asked for. {@code groups} are the two that are compared, if any. */
    record Asked(CaseloadTab tab, Selection selection, List<String> groups, LocalDate today) {
    }

    /** What was counted. */
    record Counted(int cases, List<Section> sections, Instant at) {

        Counted {
            sections = List.copyOf(sections);
        }

        boolean many() {
            return cases >= FEWEST_CASES;
        }
    }

    /** @param nanos how long counting took */
    private record Kept(Counted counted, long nanos) {

        long keepFor() {
            return counted.many() ? TIMES_THE_COUNTING * nanos : 0;
        }
    }

    private final LongSupplier nanoTime;
    private final AsyncCache<Asked, Kept> kept;

    KeptFigures() {
        this(System::nanoTime);
    }

    KeptFigures(LongSupplier nanoTime) {
        this.nanoTime = nanoTime;
        Ticker ticker = nanoTime::getAsLong;
        kept = Caffeine.newBuilder().maximumSize(MOST).ticker(ticker).executor(Runnable::run)
                .expireAfter(Expiry.<Asked, Kept>creating((asked, one) -> Duration.ofNanos(one.keepFor()))).buildAsync();
    }

    /** Returns what was counted lately, or counts. Fails as counting fails, and keeps nothing then. */
    Counted of(Asked asked, Supplier<Counted> counting) {
        CompletableFuture<Kept> mine = new CompletableFuture<>();
        CompletableFuture<Kept> others = kept.asMap().putIfAbsent(asked, mine);
        if (others != null) {
            return await(others);
        }
        try {
            long begun = nanoTime.getAsLong();
            Counted counted = counting.get();
            mine.complete(new Kept(counted, nanoTime.getAsLong() - begun));
            return counted;
        } catch (RuntimeException | Error e) {
            mine.completeExceptionally(e);
            throw e;
        }
    }

    private static Counted await(CompletableFuture<Kept> counting) {
        try {
            return counting.join().counted();
        } catch (CompletionException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : e;
        }
    }
}
