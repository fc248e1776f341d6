package org.steadwork.exercise.dayplan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The plan of a working day against arithmetic done by hand and against trying every plan there is. */
class DayPlannerTest {

    private static final int EIGHT = 8 * 60;

    /**
     * Source: hand arithmetic of a 240-minute stretch, after HSE L26: 50 minutes of work and 10 of break give 200 and 40,
     * 60 and 5 give 225 and 15.
     */
    @ParameterizedTest(name = "{0} min of sitting, {1} min of break")
    @CsvSource({"50, 10, 4, 200", "60, 5, 3, 225"})
    void fourHoursComeOutAsByHand(int spell, int pause, int breaks, int work) {
        PlannedDay day = DayPlanner.plan(new DayFrame(EIGHT, EIGHT + 240, List.of(), spell, pause, 5), List.of());
        assertEquals(breaks, day.interruptions());
        assertEquals(work, day.spells().stream().mapToInt(PlannedDay.Spell::minutes).sum());
    }

    @Test
    void lunchIsABreakThatInterruptsNothing() {
        FixedBlock lunch = new FixedBlock(EIGHT + 55, EIGHT + 85, FixedBlock.Kind.REST, "Lunch");
        PlannedDay day = DayPlanner.plan(new DayFrame(EIGHT, EIGHT + 145, List.of(lunch), 60, 5, 5), List.of(new DeskExercise("neck", 60, 60)));
        assertEquals(0, day.interruptions());
        assertEquals(List.of("neck"), day.stops().get(0).exercises());
        assertTrue(day.tooLate().isEmpty());
    }

    @Test
    void onTheFeetSittingEndsButNothingIsLaid() {
        FixedBlock round = new FixedBlock(EIGHT + 50, EIGHT + 70, FixedBlock.Kind.ON_FEET, "Round of the store");
        PlannedDay day = DayPlanner.plan(new DayFrame(EIGHT, EIGHT + 120, List.of(round), 60, 5, 5), List.of());
        assertEquals(0, day.interruptions());
        assertEquals(List.of(50, 50), day.spells().stream().map(PlannedDay.Spell::minutes).toList());
    }

    @Test
    void aMeetingLongerThanTheSpellIsSaidToBeTooLong() {
        FixedBlock meeting = new FixedBlock(EIGHT + 30, EIGHT + 150, FixedBlock.Kind.MEETING, "Planning");
        PlannedDay day = DayPlanner.plan(new DayFrame(EIGHT, EIGHT + 240, List.of(meeting), 60, 5, 5), List.of(new DeskExercise("neck", 60, 60)));
        assertEquals(120, day.longestSpell());
        assertTrue(day.spells().stream().anyMatch(PlannedDay.Spell::tooLong));
        assertEquals(List.of("neck"), day.tooLate().stream().map(PlannedDay.Late::exercise).toList());
        day.stops().forEach(stop -> assertFalse(meeting.touches(stop.from(), stop.to()), "no break in a meeting: " + stop));
    }

    @Test
    void anExerciseRidesOnEveryBreakThatKeepsItInTimeAndOnNoMore() {
        DayFrame frame = new DayFrame(9 * 60, 17 * 60, List.of(new FixedBlock(12 * 60 + 30, 13 * 60, FixedBlock.Kind.REST, "Lunch")), 60, 5, 5);
        PlannedDay day = DayPlanner.plan(frame, List.of(new DeskExercise("stretch", 120, 90), new DeskExercise("nod", 240, 60)));
        assertEquals(7, day.stops().size(), "450 minutes of work at 60 a spell");
        assertEquals(3, day.sessions("stretch"), "every 2 h in 7.5 h: three sessions leave no stretch longer");
        assertEquals(1, day.sessions("nod"));
    }

    @Test
    void exercisesAreSpreadWhereTheyNeedNotFallTogether() {
        PlannedDay day = DayPlanner.plan(new DayFrame(EIGHT, EIGHT + 240, List.of(), 60, 5, 5),
                List.of(new DeskExercise("one", 200, 60), new DeskExercise("other", 200, 60), new DeskExercise("third", 200, 60)));
        assertEquals(List.of(1, 1, 1), day.stops().stream().map(s -> s.exercises().size()).toList());
    }

    @Test
    void breaksGrowWhenTheExercisesNeedIt() {
        PlannedDay day = DayPlanner.plan(new DayFrame(EIGHT, EIGHT + 240, List.of(), 60, 5, 5), List.of(new DeskExercise("long", 60, 500)));
        day.stops().forEach(stop -> assertEquals(9, stop.to() - stop.from(), "500 s need 9 minutes"));
        assertTrue(day.longestSpell() <= 60);
    }

    @Test
    void impossibleDaysAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new DayFrame(EIGHT, EIGHT, List.of(), 60, 5, 5));
        assertThrows(IllegalArgumentException.class, () -> new DayFrame(EIGHT, EIGHT + 60, List.of(), 19, 5, 5));
        assertThrows(IllegalArgumentException.class, () -> new DayFrame(EIGHT, EIGHT + 60, List.of(), 60, 4, 5));
        assertThrows(IllegalArgumentException.class, () -> new DayFrame(EIGHT, EIGHT + 60, List.of(new FixedBlock(EIGHT - 10, EIGHT + 10, FixedBlock.Kind.MEETING, "Early")), 60, 5, 5));
        assertThrows(IllegalArgumentException.class, () -> new DayFrame(EIGHT, EIGHT + 60, List.of(new FixedBlock(EIGHT, EIGHT + 20, FixedBlock.Kind.MEETING, "One"),
                new FixedBlock(EIGHT + 10, EIGHT + 30, FixedBlock.Kind.MEETING, "Two")), 60, 5, 5));
    }

    /** Every plan of small days is tried; none beats the one chosen. */
    @Test
    void noPlanOfASmallDayIsBetter() {
        Random random = new Random(20301216);
        for (int round = 0; round < 150; round++) {
            DayFrame frame = anyDay(random);
            int every = 30 + 15 * random.nextInt(8);
            List<DeskExercise> exercises = random.nextBoolean() ? List.of() : List.of(new DeskExercise("any", every, 30));
            PlannedDay day = DayPlanner.plan(frame, exercises);
            List<int[]> breaks = day.stops().stream().filter(s -> !s.fixed()).map(s -> new int[] {s.from(), s.to()}).toList();
            long[] cost = cost(frame, breaks, exercises.isEmpty() ? Integer.MAX_VALUE : every);
            long[] least = leastOfAll(frame, exercises.isEmpty() ? Integer.MAX_VALUE : every);
            assertEquals(Arrays.toString(least), Arrays.toString(cost), () -> frame + " " + exercises);
        }
    }

    private static DayFrame anyDay(Random random) {
        int to = EIGHT + 120 + 15 * random.nextInt(5);
        List<FixedBlock> blocks = new ArrayList<>();
        int at = EIGHT + 15 * random.nextInt(5);
        while (at + 30 < to && blocks.size() < 2 && random.nextInt(3) > 0) {
            int until = Math.min(to, at + 15 * (1 + random.nextInt(6)));
            blocks.add(new FixedBlock(at, until, FixedBlock.Kind.values()[random.nextInt(3)], "Block " + blocks.size()));
            at = until + 15 * random.nextInt(4);
        }
        return new DayFrame(EIGHT, to, blocks, 30 + 15 * random.nextInt(4), 5, 15);
    }

    private static long[] leastOfAll(DayFrame frame, int every) {
        List<int[]> places = new ArrayList<>();
        for (int from = frame.from() + frame.grid(); from + frame.breakMinutes() < frame.to(); from += frame.grid()) {
            int start = from;
            if (frame.blocks().stream().noneMatch(b -> start < b.to() && start + frame.breakMinutes() > b.from())) {
                places.add(new int[] {from, from + frame.breakMinutes()});
            }
        }
        long[] least = null;
        for (int chosen = 0; chosen < 1 << places.size(); chosen++) {
            List<int[]> breaks = new ArrayList<>();
            for (int i = 0; i < places.size(); i++) {
                if ((chosen >> i & 1) == 1) {
                    breaks.add(places.get(i));
                }
            }
            long[] cost = cost(frame, breaks, every);
            if (least == null || Arrays.compare(cost, least) < 0) {
                least = cost;
            }
        }
        return least;
    }

    /** Minute by minute, without the planner's arithmetic: sat too long, late for the exercise, breaks, squares of the stretches. */
    private static long[] cost(DayFrame frame, List<int[]> breaks, int every) {
        long beyond = 0;
        long late = 0;
        long squares = 0;
        int sat = 0;
        int sinceSession = 0;
        int stretch = 0;
        for (int now = frame.from(); now < frame.to(); now++) {
            boolean onBreak = false;
            boolean breakBegins = false;
            for (int[] pause : breaks) {
                onBreak |= now >= pause[0] && now < pause[1];
                breakBegins |= now == pause[0];
            }
            FixedBlock block = null;
            for (FixedBlock any : frame.blocks()) {
                block = now >= any.from() && now < any.to() ? any : block;
            }
            boolean rest = block != null && block.kind() == FixedBlock.Kind.REST;
            boolean onFeet = block != null && block.kind() == FixedBlock.Kind.ON_FEET;
            if (breakBegins || rest && block.from() == now) {
                late += Math.max(0, sinceSession - every);
                sinceSession = 0;
                squares += (long) stretch * stretch;
                stretch = 0;
            }
            sat = onBreak || rest || onFeet ? 0 : sat + 1;
            beyond += sat > frame.longestSpell() ? 1 : 0;
            sinceSession += rest ? 0 : 1;
            stretch += onBreak || rest ? 0 : 1;
        }
        late += Math.max(0, sinceSession - every);
        return new long[] {beyond, late, breaks.size(), squares + (long) stretch * stretch};
    }
}
