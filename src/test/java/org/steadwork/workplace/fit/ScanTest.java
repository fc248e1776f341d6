package org.steadwork.workplace.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.steadwork.workplace.TestTargets.TARGETS;

import java.util.EnumMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The scan against every setting there is, with steps of any width, bodies of any size and measures that are missing. */
class ScanTest {

    private static final int RUNS = 1500;
    private static final int[] STEPS = {1, 2, 5, 7, 10, 25, 60, 130};
    private final Random random = new Random(31);

    private Travel travel(double low, double high, int most) {
        int step = STEPS[random.nextInt(STEPS.length)];
        double from = low + random.nextDouble() * (high - low);
        return new Travel(from, from + step * random.nextInt(most), step);
    }

    private void put(Map<BodyMeasure, Measurement> body, BodyMeasure measure, double mean, double spread, double missing) {
        if (random.nextDouble() >= missing) {
            double value = mean + spread * random.nextGaussian();
            body.put(measure, Measurement.measured(random.nextBoolean() ? Math.rint(value) : value, 0));
        }
    }

    private FitModel model() {
        Map<BodyMeasure, Measurement> body = new EnumMap<>(BodyMeasure.class);
        put(body, BodyMeasure.POPLITEAL_HEIGHT, 410, 40, 0);
        put(body, BodyMeasure.ELBOW_REST_HEIGHT, 240, 30, 0);
        put(body, BodyMeasure.EYE_HEIGHT_SITTING, 760, 40, 0.15);
        put(body, BodyMeasure.THIGH_CLEARANCE, 160, 20, 0.15);
        Map<Part, Travel> travels = new EnumMap<>(Part.class);
        travels.put(Part.SEAT, travel(370, 500, 14));
        travels.put(Part.DESK, travel(580, 780, 14));
        if (random.nextInt(4) > 0) {
            travels.put(Part.SCREEN_TOP, travel(350, 560, 9));
        }
        if (random.nextInt(3) > 0) {
            travels.put(Part.FOOTREST, travel(20, 120, 8));
        }
        Settings present = random.nextBoolean() ? Settings.UNKNOWN
                : Settings.UNKNOWN.with(Part.SEAT, 380 + random.nextInt(140)).with(Part.DESK, 600 + random.nextInt(200))
                        .with(Part.SCREEN_TOP, 1000 + random.nextInt(300));
        Person person = Person.of(body, random.nextBoolean() ? Lenses.PROGRESSIVE : Lenses.SINGLE_OR_NONE);
        return new FitModel(person, Workstation.of(travels, present, 10 + random.nextInt(30), 15 + random.nextInt(40)), TARGETS);
    }

    private static Objective byBruteForce(FitModel model) {
        Travel seat = model.station().travel(Part.SEAT).orElseThrow();
        Travel desk = model.station().travel(Part.DESK).orElseThrow();
        Travel footrest = model.station().travel(Part.FOOTREST).orElse(null);
        Travel screen = model.station().travel(Part.SCREEN_TOP).orElse(null);
        Settings beside = new Scan(model).best();
        Objective least = null;
        for (int s = 0; s < seat.settings(); s++) {
            boolean hanging = seat.setting(s) - model.feetHeight() > TARGETS.allowances().footrestAbove();
            int rests = footrest == null || !hanging ? 0 : footrest.settings();
            for (int w = 0; w < desk.settings(); w++) {
                for (int f = -1; f < rests; f++) {
                    int tops = screen == null || Double.isNaN(model.eye()) ? 1 : screen.settings();
                    for (int t = 0; t < tops; t++) {
                        double freely = Double.isNaN(model.eye()) ? model.station().present().screenTop()
                                : seat.setting(s) + model.eye() - model.target(Deviation.SCREEN_DROP).aim();
                        double top = tops == 1 && (screen == null || Double.isNaN(model.eye())) ? freely : desk.setting(w) + screen.setting(t);
                        Settings tried = new Settings(beside.seatDepth(), 0, seat.setting(s), f < 0 ? 0 : footrest.setting(f), desk.setting(w),
                                beside.armrest(), top, beside.distance());
                        Objective objective = Objective.of(model, tried);
                        least = least == null || objective.compareTo(least) < 0 ? objective : least;
                    }
                }
            }
        }
        return least;
    }

    @Test
    void nothingIsBetterThanWhatTheScanFinds() {
        for (int i = 0; i < RUNS; i++) {
            FitModel model = model();
            Objective scanned = Objective.of(model, new Scan(model).best());
            Objective tried = byBruteForce(model);
            assertEquals(0, scanned.compareTo(tried), "run " + i + ": scanned " + scanned + ", tried " + tried);
        }
    }

    @Test
    void aSettingFoundByCostAloneCostsAsLittle() {
        for (int i = 0; i < RUNS; i++) {
            FitModel model = model();
            double best = model.cost(new Scan(model).best());
            assertEquals(best, model.cost(new Scan(model).bestByCost(model.body())), 1e-6, "run " + i);
        }
    }

    @Test
    void oneScanServesManyBodies() {
        FitModel model = model();
        Scan scan = new Scan(model);
        for (int i = 0; i < 200; i++) {
            Body body = new Body(350 + random.nextInt(150), 25, 190 + random.nextInt(100), 680 + random.nextInt(150), 480, 120 + random.nextInt(80), 650);
            assertEquals(new Scan(model.with(body)).best(), scan.best(body), "run " + i);
        }
    }

    @Test
    void whatIsSetLiesWithinWhatThereIs() {
        for (int i = 0; i < RUNS; i++) {
            FitModel model = model();
            Settings best = new Scan(model).best();
            assertTrue(model.station().travel(Part.SEAT).orElseThrow().offers(best.seat()), "run " + i + ": " + best);
            assertTrue(model.station().travel(Part.DESK).orElseThrow().offers(best.desk()), "run " + i + ": " + best);
            assertTrue(best.footrest() == 0 || model.station().travel(Part.FOOTREST).orElseThrow().offers(best.footrest()), "run " + i + ": " + best);
        }
    }
}
