package org.steadwork.workplace.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.steadwork.workplace.TestTargets.TARGETS;

import java.util.EnumMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Laws that hold for any person at any work place, tried on invented ones. */
class FitPropertiesTest {

    private static final int STEP = 5;
    private final Random random = new Random(20_261_125);

    private double between(int low, int high) {
        return low + STEP * random.nextInt((high - low) / STEP + 1);
    }

    private Person person() {
        Map<BodyMeasure, Measurement> body = new EnumMap<>(BodyMeasure.class);
        put(body, BodyMeasure.POPLITEAL_HEIGHT, 350, 500);
        put(body, BodyMeasure.SHOE, 0, 45);
        put(body, BodyMeasure.ELBOW_REST_HEIGHT, 180, 300);
        put(body, BodyMeasure.EYE_HEIGHT_SITTING, 660, 860);
        put(body, BodyMeasure.BUTTOCK_POPLITEAL_LENGTH, 430, 560);
        put(body, BodyMeasure.THIGH_CLEARANCE, 120, 210);
        put(body, BodyMeasure.ARM_REACH, 500, 800);
        return Person.of(body, random.nextBoolean() ? Lenses.PROGRESSIVE : Lenses.SINGLE_OR_NONE);
    }

    private void put(Map<BodyMeasure, Measurement> body, BodyMeasure measure, int low, int high) {
        body.put(measure, Measurement.measured(between(low, high), 0));
    }

    private Travel travel(int low, int high, int longest) {
        double from = between(low, high);
        return new Travel(from, from + between(0, longest), STEP);
    }

    private Workstation station() {
        Map<Part, Travel> travels = new EnumMap<>(Part.class);
        travels.put(Part.SEAT, travel(380, 470, 60));
        travels.put(Part.DESK, random.nextInt(3) == 0 ? Travel.fixed(between(660, 760)) : travel(600, 740, 80));
        travels.put(Part.SCREEN_TOP, travel(350, 560, 60));
        travels.put(Part.SEAT_DEPTH, travel(380, 470, 30));
        travels.put(Part.ARMREST, travel(180, 260, 30));
        if (random.nextBoolean()) {
            travels.put(Part.FOOTREST, travel(20, 80, 60));
        }
        Settings present = random.nextBoolean() ? Settings.UNKNOWN
                : new Settings(between(380, 470), 0, between(400, 520), 0, between(650, 760), between(200, 260), between(1000, 1300), between(400, 900));
        return Workstation.of(travels, present, between(10, 40), between(15, 60));
    }

    /** Every setting of every part, one after the other, with no thought; a footrest counts only when the feet hang. */
    private static Settings byBruteForce(FitModel model) {
        Workstation station = model.station();
        Travel seat = station.travel(Part.SEAT).orElseThrow();
        Travel desk = station.travel(Part.DESK).orElseThrow();
        Travel screen = station.travel(Part.SCREEN_TOP).orElseThrow();
        Travel depth = station.travel(Part.SEAT_DEPTH).orElseThrow();
        Travel armrest = station.travel(Part.ARMREST).orElseThrow();
        Travel footrest = station.travel(Part.FOOTREST).orElse(null);
        Settings best = null;
        Objective least = null;
        for (int s = 0; s < seat.settings(); s++) {
            boolean hanging = seat.setting(s) - model.feetHeight() > TARGETS.allowances().footrestAbove();
            int rests = footrest == null || !hanging ? 0 : footrest.settings();
            for (int w = 0; w < desk.settings(); w++) {
                for (int f = -1; f < rests; f++) {
                    for (int t = 0; t < screen.settings(); t++) {
                        for (int p = 0; p < depth.settings(); p++) {
                            for (int a = 0; a < armrest.settings(); a++) {
                                Settings tried = new Settings(depth.setting(p), 0, seat.setting(s), f < 0 ? 0 : footrest.setting(f), desk.setting(w),
                                        armrest.setting(a), desk.setting(w) + screen.setting(t), model.wantedDistance());
                                Objective objective = Objective.of(model, tried);
                                if (least == null || objective.compareTo(least) < 0) {
                                    best = tried;
                                    least = objective;
                                }
                            }
                        }
                    }
                }
            }
        }
        return best;
    }

    @Test
    void theScanFindsWhatTryingEverySettingFinds() {
        for (int i = 0; i < 150; i++) {
            FitModel model = new FitModel(person(), station(), TARGETS);
            Settings scanned = new Scan(model).best();
            Settings tried = byBruteForce(model);
            String failing = "run " + i + ": scanned " + scanned + ", tried " + tried;
            assertEquals(tried.seat(), scanned.seat(), 1e-9, failing);
            assertEquals(tried.desk(), scanned.desk(), 1e-9, failing);
            assertEquals(tried.footrest(), scanned.footrest(), 1e-9, failing);
            assertEquals(tried.screenTop(), scanned.screenTop(), 1e-9, failing);
            assertEquals(tried.seatDepth(), scanned.seatDepth(), 1e-9, failing);
            assertEquals(tried.armrest(), scanned.armrest(), 1e-9, failing);
        }
    }

    @Test
    void noSettingLiesOutsideItsRange() {
        for (int i = 0; i < 500; i++) {
            Workstation station = station();
            Settings best = new Scan(new FitModel(person(), station, TARGETS)).best();
            for (Part part : new Part[] {Part.SEAT, Part.DESK, Part.SEAT_DEPTH, Part.ARMREST}) {
                assertTrue(station.travel(part).orElseThrow().offers(best.value(part)), "run " + i + ": " + part + " in " + best);
            }
            assertTrue(station.travel(Part.SCREEN_TOP).orElseThrow().offers(best.screenTop() - best.desk()), "run " + i);
            boolean footrest = best.footrest() == 0 || station.travel(Part.FOOTREST).orElseThrow().offers(best.footrest());
            assertTrue(footrest, "run " + i);
        }
    }

    @Test
    void clearanceIsElbowPlusRoomAtAnySetting() {
        for (int i = 0; i < 1000; i++) {
            FitModel model = new FitModel(person(), station(), TARGETS);
            Settings any = new Settings(400, 0, between(300, 600), 0, between(500, 1200), 220, 1200, 600);
            assertEquals(model.deviation(Deviation.CLEARANCE, any), model.deviation(Deviation.ELBOW, any) + model.roomBetweenElbowAndThigh(), 1e-9);
        }
    }

    @Test
    void moreRangeIsNeverWorse() {
        for (int i = 0; i < 300; i++) {
            FitModel model = new FitModel(person(), station(), TARGETS);
            Objective before = Objective.of(model, new Scan(model).best());
            for (Part part : new Part[] {Part.SEAT, Part.DESK, Part.SCREEN_TOP, Part.SEAT_DEPTH, Part.ARMREST}) {
                Travel travel = model.station().travel(part).orElseThrow();
                Travel wider = new Travel(travel.low() - 2 * STEP, travel.high() + 3 * STEP, STEP);
                FitModel more = new FitModel(model.person(), model.station().with(part, wider), TARGETS);
                Objective after = Objective.of(more, new Scan(more).best());
                assertTrue(after.compareTo(before) <= 0, "run " + i + ": more " + part + " gives " + after + " after " + before);
            }
        }
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Measurement.measured(Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> Measurement.measured(400, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Measurement.measured(400, -1));
        assertThrows(IllegalArgumentException.class, () -> Measurement.measured(Double.POSITIVE_INFINITY, 1));
        assertThrows(IllegalArgumentException.class, () -> Travel.of(Double.NaN, 500));
        assertThrows(IllegalArgumentException.class, () -> Travel.of(500, 400));
        assertThrows(IllegalArgumentException.class, () -> new Travel(400, 500, 0));
        assertThrows(IllegalArgumentException.class, () -> new Band(Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> new Band(0, 1).outside(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new Target(50, new Band(0, 10), new Band(-5, 20), 1));
        assertThrows(IllegalArgumentException.class, () -> new Target(5, new Band(0, 10), new Band(2, 20), 1));
        assertThrows(IllegalArgumentException.class, () -> Settings.UNKNOWN.with(Part.FOOTREST, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Settings.UNKNOWN.with(Part.SEAT, Double.POSITIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> Workstation.of(Map.of(), Settings.UNKNOWN, Double.NaN, 30));
        assertThrows(IllegalArgumentException.class, () -> Workstation.of(Map.of(), Settings.UNKNOWN, 30, -1));
        assertThrows(IllegalArgumentException.class, () -> new Workstation.Laptop(Double.NaN, 20));
        assertThrows(IllegalArgumentException.class, () -> CombinedError.ofSum(1, 1, 1.1));
        assertThrows(IllegalArgumentException.class,
                () -> Person.of(Map.of(BodyMeasure.POPLITEAL_HEIGHT, Measurement.measured(-4, 0)), Lenses.SINGLE_OR_NONE));
    }

    @Test
    void withoutLegOrElbowNothingIsWorkedOut() {
        Workstation station = station();
        Person without = person().with(BodyMeasure.ELBOW_REST_HEIGHT, Measurement.notLookedAt());
        assertEquals(java.util.Set.of(BodyMeasure.ELBOW_REST_HEIGHT), FitSolver.missing(without, station).measures());
        assertThrows(IllegalArgumentException.class, () -> FitSolver.solve(without, station, TARGETS));
        Workstation bare = Workstation.of(Map.of(), Settings.UNKNOWN, 30, 30);
        assertEquals(java.util.Set.of(Part.SEAT, Part.DESK), FitSolver.missing(person(), bare).parts());
    }

    @Test
    void aThighThatWasNotLookedAtIsToBeMeasuredFirst() {
        Person without = person().with(BodyMeasure.THIGH_CLEARANCE, Measurement.notLookedAt());
        Workstation station = station();
        FitResult result = FitSolver.solve(without, station, TARGETS);
        assertTrue(Double.isNaN(result.proposed().get(Deviation.CLEARANCE)));
        assertEquals(BodyMeasure.THIGH_CLEARANCE, sureness(without, station).settling().orElseThrow().measure());
        assertTrue(result.room().isEmpty());
    }

    @Test
    void theEstimateThatCouldBeFurthestOffIsToBeMeasuredNext() {
        Map<BodyMeasure, Measurement> body = new EnumMap<>(BodyMeasure.class);
        body.put(BodyMeasure.POPLITEAL_HEIGHT, Measurement.measured(400, 2));
        body.put(BodyMeasure.ELBOW_REST_HEIGHT, Measurement.estimated(235, 26));
        body.put(BodyMeasure.EYE_HEIGHT_SITTING, Measurement.estimated(710, 4));
        body.put(BodyMeasure.THIGH_CLEARANCE, Measurement.measured(140, 3));
        Workstation station = Workstation.of(Map.of(Part.SEAT, Travel.of(400, 520), Part.DESK, Travel.of(650, 850)), Settings.UNKNOWN, 30, 30);
        Settling settling = sureness(Person.of(body, Lenses.SINGLE_OR_NONE), station).settling().orElseThrow();
        assertEquals(BodyMeasure.ELBOW_REST_HEIGHT, settling.measure());
        assertEquals(26 * Measurement.NORMAL_975, settling.giveOrTake(), 1e-9);
        assertTrue(settling.whenHigh().orElseThrow().desk() > settling.whenLow().orElseThrow().desk());
    }

    @Test
    void aThighThatDecidesWhetherBothCanBeHadIsToBeMeasured() {
        Map<BodyMeasure, Measurement> body = new EnumMap<>(BodyMeasure.class);
        body.put(BodyMeasure.POPLITEAL_HEIGHT, Measurement.measured(400, 2));
        body.put(BodyMeasure.ELBOW_REST_HEIGHT, Measurement.measured(215, 4));
        // K = 215 − 30 − 30 − 163 = −8, below the 10 that is needed; within give or take it may be enough
        body.put(BodyMeasure.THIGH_CLEARANCE, Measurement.estimated(163, 13));
        Settings today = new Settings(Double.NaN, 0, 420, 0, 740, Double.NaN, Double.NaN, Double.NaN);
        Workstation station = Workstation.of(Map.of(Part.SEAT, Travel.of(400, 520), Part.DESK, Travel.fixed(740)), today, 30, 30);
        FitResult result = FitSolver.solve(Person.of(body, Lenses.SINGLE_OR_NONE), station, TARGETS);
        assertEquals(-8, result.room().orElseThrow().room(), 1e-9);
        Settling settling = sureness(Person.of(body, Lenses.SINGLE_OR_NONE), station).settling().orElseThrow();
        assertEquals(BodyMeasure.THIGH_CLEARANCE, settling.measure());
        assertTrue(settling.open().contains(Deviation.CLEARANCE));
        Person surely = Person.of(body, Lenses.SINGLE_OR_NONE).with(BodyMeasure.THIGH_CLEARANCE, Measurement.estimated(163, 2));
        assertTrue(sureness(surely, station).settling().isEmpty());
    }

    private static Sureness sureness(Person person, Workstation station) {
        return Sureness.of(person, station, TARGETS, FitSolver.solve(person, station, TARGETS), ErrorCorrelations.NONE, Sureness.DRAWS, Sureness.SEED);
    }

    @Test
    void itIsFastEnoughToRunWithThePage() {
        Person person = person();
        Workstation station = station();
        for (int i = 0; i < 30; i++) {
            FitSolver.solve(person, station, TARGETS);
        }
        long start = System.nanoTime();
        int runs = 20;
        for (int i = 0; i < runs; i++) {
            FitSolver.solve(person(), station(), TARGETS);
        }
        double millis = (System.nanoTime() - start) / 1e6 / runs;
        assertTrue(millis < 500, "A fit took " + millis + " ms");
    }
}
