package org.steadwork.diary.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Sets of spans against a plain set of minutes (java.util.BitSet), seeded; and the search for free times against brute force. */
class SpansTest {

    private static final long SEED = 20301216;
    private static final int ROUNDS = 2000;

    private final Random random = new Random(SEED);

    @Test
    void aSpanLiesWithinADay() {
        for (int[] wrong : new int[][] {{-1, 5}, {5, 5}, {6, 5}, {0, 1441}}) {
            assertThrows(IllegalArgumentException.class, () -> new Span(wrong[0], wrong[1]));
        }
        assertEquals(1440, new Span(0, 1440).minutes());
    }

    @Test
    void joiningCuttingAndCommonTimeAgreeWithMinutesCountedOneByOne() {
        for (int round = 0; round < ROUNDS; round++) {
            List<Span> a = spans();
            List<Span> b = spans();
            BitSet inA = minutes(a);
            BitSet inB = minutes(b);
            String input = a + " and " + b;
            assertEquals(inA, minutes(Spans.joined(a)), input);
            BitSet left = (BitSet) inA.clone();
            left.andNot(inB);
            assertEquals(left, minutes(Spans.without(a, b)), input);
            BitSet both = (BitSet) inA.clone();
            both.and(inB);
            assertEquals(both, minutes(Spans.common(a, b)), input);
            Span wanted = span();
            BitSet asked = minutes(List.of(wanted));
            asked.andNot(inA);
            assertEquals(asked.isEmpty(), Spans.hold(a, wanted), input + " " + wanted);
        }
    }

    @Test
    void freeTimeIsOfferedAtFullHalfHours() {
        assertEquals(List.of(new Span(610, 630), new Span(630, 660), new Span(660, 675)), Spans.pieces(new Span(610, 675), 30));
        assertEquals(List.of(new Span(600, 630)), Spans.pieces(new Span(600, 630), 30));
    }

    @Test
    void theNearestFreeTimesAreFoundAndAllOfThemFit() {
        LocalDate day = LocalDate.of(2030, 12, 16);
        for (int round = 0; round < 300; round++) {
            Map<LocalDate, List<Span>> free = Map.of(day, Spans.joined(spans()), day.plusDays(1), Spans.joined(spans()), day.minusDays(1), Spans.joined(spans()));
            int wanted = random.nextInt(288) * 5;
            List<SlotSearch.Slot> found = SlotSearch.nearest(free, 30, 15, day, wanted, 6, 2);
            for (SlotSearch.Slot slot : found) {
                assertEquals(true, Spans.hold(free.get(slot.day()), new Span(slot.start(), slot.start() + 30)), slot + " in " + free);
            }
            int best = SlotSearch.starts(free.get(day), 30, 15).stream().mapToInt(start -> Math.abs(start - wanted)).min().orElse(-1);
            if (best >= 0) {
                assertEquals(day, found.get(0).day());
                assertEquals(best, Math.abs(found.get(0).start() - wanted), "wanted " + wanted + " in " + free.get(day));
            }
        }
    }

    private List<Span> spans() {
        List<Span> spans = new ArrayList<>();
        int count = random.nextInt(6);
        for (int i = 0; i < count; i++) {
            spans.add(span());
        }
        return spans;
    }

    private Span span() {
        int from = random.nextInt(287) * 5;
        return new Span(from, Math.min(1440, from + 5 + random.nextInt(40) * 5));
    }

    private static BitSet minutes(List<Span> spans) {
        BitSet minutes = new BitSet(1440);
        spans.forEach(span -> minutes.set(span.from(), span.to()));
        return minutes;
    }
}
