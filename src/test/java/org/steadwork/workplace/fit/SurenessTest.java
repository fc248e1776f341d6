package org.steadwork.workplace.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.steadwork.workplace.TestTargets.CORRELATIONS;
import static org.steadwork.workplace.TestTargets.ESTIMATES;
import static org.steadwork.workplace.TestTargets.TARGETS;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Draws of the body against what is known in closed form, and laws that hold for any. */
class SurenessTest {

    private static final ErrorCorrelations MALE = CORRELATIONS.get(BodyGroup.MALE).get(false);
    private static final Workstation WIDE = Workstation.of(Map.of(Part.SEAT, Travel.of(300, 650), Part.DESK, Travel.of(450, 1100)),
            Settings.UNKNOWN.with(Part.SEAT, 450).with(Part.DESK, 700), 30, 30);

    private static Person estimated(BodyGroup group, double stature) {
        Map<BodyMeasure, Measurement> body = new EnumMap<>(BodyMeasure.class);
        for (BodyMeasure measure : List.of(BodyMeasure.POPLITEAL_HEIGHT, BodyMeasure.ELBOW_REST_HEIGHT, BodyMeasure.EYE_HEIGHT_SITTING,
                BodyMeasure.BUTTOCK_POPLITEAL_LENGTH, BodyMeasure.THIGH_CLEARANCE)) {
            BodyEstimate estimate = ESTIMATES.estimate(BodyDimension.of(measure).orElseThrow(), group, stature, OptionalDouble.empty());
            body.put(measure, Measurement.estimated(estimate.value(), estimate.predictionError()));
        }
        return Person.of(body, Lenses.SINGLE_OR_NONE);
    }

    private static Sureness sureness(Person person, Workstation station, ErrorCorrelations together, int draws, long seed) {
        return Sureness.of(person, station, TARGETS, FitSolver.solve(person, station, TARGETS), together, draws, seed);
    }

    /** Source: composite equations of the same survey, fitted on their own: a man of 1760 mm, seat ± 26.1, floor to eye ± 31.8. */
    @Test
    void drawnHeightsAboveTheFloorHaveTheErrorsOfTheCompositeEquations() {
        Person tall = estimated(BodyGroup.MALE, 1760).with(BodyMeasure.THIGH_CLEARANCE, Measurement.measured(100, 0));
        Sureness sureness = sureness(tall, WIDE, MALE, 40_000, 1);
        assertEquals(26.1, sureness.settings().get(Part.SEAT).giveOrTake(), 0.7);
        assertEquals(46.2, sureness.settings().get(Part.DESK).giveOrTake(), 1.2);
        assertEquals(31.8, sureness.settings().get(Part.SCREEN_TOP).giveOrTake(), 0.8);
    }

    @ParameterizedTest
    @EnumSource(BodyGroup.class)
    void drawsHaveTheErrorsAndCorrelationsTheyAreDrawnWith(BodyGroup group) {
        Person person = estimated(group, 1700);
        ErrorCorrelations together = CORRELATIONS.get(group).get(false);
        FitModel model = new FitModel(person, WIDE, TARGETS);
        Body[] bodies = BodyDraws.of(model, together).draw(100_000, 5);
        double popliteal = person.measure(BodyMeasure.POPLITEAL_HEIGHT).value();
        double elbow = person.measure(BodyMeasure.ELBOW_REST_HEIGHT).value();
        double both = 0;
        double squares = 0;
        for (Body body : bodies) {
            both += (body.popliteal() - popliteal) * (body.elbow() - elbow) / bodies.length;
            squares += (body.elbow() - elbow) * (body.elbow() - elbow) / bodies.length;
        }
        double error = person.measure(BodyMeasure.ELBOW_REST_HEIGHT).standardError();
        assertEquals(error, Math.sqrt(squares), 0.01 * error);
        double correlation = both / error / person.measure(BodyMeasure.POPLITEAL_HEIGHT).standardError();
        assertEquals(together.between(BodyDimension.POPLITEAL_HEIGHT, BodyDimension.ELBOW_REST_HEIGHT), correlation, 0.01);
    }

    /** A deviation at given settings is a sum of normal errors, so the share of each verdict is known. */
    @Test
    void sharesOfVerdictsAreThoseOfTheNormalDistribution() {
        Person person = estimated(BodyGroup.MALE, 1760);
        Sureness sureness = sureness(person, WIDE, MALE, 20_000, 2);
        double elbow = 700 + 30 - 450 - person.measure(BodyMeasure.ELBOW_REST_HEIGHT).value();
        NormalDistribution off = new NormalDistribution(elbow, person.measure(BodyMeasure.ELBOW_REST_HEIGHT).standardError());
        Sureness.Judged now = sureness.now().get(Deviation.ELBOW);
        assertEquals(off.probability(-30, 10), now.shares().get(Verdict.IN_RANGE), 0.015);
        assertEquals(off.cumulativeProbability(-60) + 1 - off.cumulativeProbability(30), now.shares().get(Verdict.OUT_OF_RANGE), 0.015);
        assertEquals(1, now.shares().values().stream().mapToDouble(share -> share).sum(), 1e-9);
        assertEquals(now.shares().get(now.verdict()), now.holds());
    }

    @Test
    void moreDrawsConverge() {
        Person person = estimated(BodyGroup.FEMALE, 1630);
        ErrorCorrelations together = CORRELATIONS.get(BodyGroup.FEMALE).get(false);
        Sureness exact = sureness(person, WIDE, together, 100_000, 99);
        double few = 0;
        double many = 0;
        for (int seed = 0; seed < 10; seed++) {
            few += away(sureness(person, WIDE, together, 100, seed), exact);
            many += away(sureness(person, WIDE, together, 10_000, seed), exact);
        }
        // A hundred times the draws should leave about a tenth of the error.
        assertTrue(many < few / 4, many + " after " + few);
    }

    private static double away(Sureness sureness, Sureness exact) {
        return Math.abs(sureness.settings().get(Part.DESK).high() - exact.settings().get(Part.DESK).high())
                + Math.abs(sureness.settings().get(Part.SEAT).low() - exact.settings().get(Part.SEAT).low());
    }

    @Test
    void theSameSeedGivesTheSameAnswer() {
        Person person = estimated(BodyGroup.MALE, 1760);
        assertEquals(sureness(person, WIDE, MALE, 500, 7), sureness(person, WIDE, MALE, 500, 7));
    }

    @Test
    void whereEverythingIsExactEverythingIsSure() {
        WorkedCase worked = WorkedCase.named("2");
        Sureness sureness = sureness(worked.person(), worked.station(), ErrorCorrelations.NONE, 100, 1);
        sureness.settings().values().forEach(spread -> assertEquals(0, spread.giveOrTake(), 1e-9));
        sureness.proposed().values().forEach(judged -> assertEquals(1, judged.holds(), 1e-9));
        for (Sureness.Recommended recommended : sureness.equipment()) {
            assertEquals(1, recommended.needed(), 1e-9, recommended.toString());
            assertEquals(1, recommended.helps(), 1e-9, recommended.toString());
        }
        assertEquals(1, sureness.of(List.of(Equipment.KEYBOARD_TRAY)).orElseThrow().suffices(), 1e-9);
        assertTrue(sureness.settling().isEmpty());
    }

    /** With the desk fixed and the seat at its top, the keys are 60 above the elbow: a tray is needed while the elbow is lower than 50 more. */
    @Test
    void aPieceIsNeededAsOftenAsTheElbowIsLow() {
        WorkedCase worked = WorkedCase.named("2");
        Person person = worked.person().with(BodyMeasure.ELBOW_REST_HEIGHT, Measurement.estimated(200, 28));
        Sureness sureness = sureness(person, worked.station(), ErrorCorrelations.NONE, 20_000, 3);
        double low = new NormalDistribution(200, 28).cumulativeProbability(250);
        Sureness.Recommended tray = sureness.of(List.of(Equipment.KEYBOARD_TRAY)).orElseThrow();
        assertEquals(low, tray.needed(), 0.01);
        assertTrue(tray.helps() <= tray.needed() && tray.suffices() < 1, tray.toString());
    }

    /** Knowing one of two correlated errors leaves the other what the conditional normal leaves it. */
    @Test
    void aKnownMeasureMovesWhatGoesWithIt() {
        FitModel model = new FitModel(estimated(BodyGroup.MALE, 1760), WIDE, TARGETS);
        BodyDraws draws = BodyDraws.of(model, MALE);
        double popliteal = draws.value(0);
        Body expected = draws.expected(0, popliteal + 10);
        double r = MALE.between(BodyDimension.POPLITEAL_HEIGHT, BodyDimension.ELBOW_REST_HEIGHT);
        assertEquals(model.elbow() + r * draws.error(2) / draws.error(0) * 10, expected.elbow(), 1e-9);
        double rest = 0;
        Body[] bodies = draws.draw(50_000, 4);
        for (Body body : bodies) {
            Body known = draws.knowing(body, 0, popliteal + 10);
            assertEquals(popliteal + 10, known.popliteal(), 1e-9);
            rest += Math.pow(known.elbow() - expected.elbow(), 2) / bodies.length;
        }
        assertEquals(draws.error(2) * Math.sqrt(1 - r * r), Math.sqrt(rest), 0.3);
    }

    @Test
    void aMeasurementThatCannotChangeAnythingIsNotAskedFor() {
        Person person = estimated(BodyGroup.MALE, 1760);
        Person measured = person.with(BodyMeasure.POPLITEAL_HEIGHT, Measurement.measured(431, 1))
                .with(BodyMeasure.ELBOW_REST_HEIGHT, Measurement.measured(245, 1)).with(BodyMeasure.THIGH_CLEARANCE, Measurement.measured(150, 1))
                .with(BodyMeasure.BUTTOCK_POPLITEAL_LENGTH, Measurement.notLookedAt());
        Settling eye = sureness(measured, WIDE, MALE, 1000, 1).settling().orElseThrow();
        assertEquals(BodyMeasure.EYE_HEIGHT_SITTING, eye.measure());
        assertTrue(eye.expectedCostAfter() < 0.2 * eye.expectedCost(), eye.toString());
        Person all = measured.with(BodyMeasure.EYE_HEIGHT_SITTING, Measurement.measured(760, 1));
        assertTrue(sureness(all, WIDE, MALE, 1000, 1).settling().isEmpty());
        Person scattered = measured.with(BodyMeasure.EYE_HEIGHT_SITTING, Measurement.measured(760, 20));
        assertEquals(BodyMeasure.EYE_HEIGHT_SITTING, sureness(scattered, WIDE, MALE, 1000, 1).settling().orElseThrow().measure());
    }

    @Test
    void correlationsThatCannotStandTogetherAreRefused() {
        Map<BodyDimension, Map<BodyDimension, Double>> impossible = Map.of(BodyDimension.POPLITEAL_HEIGHT,
                Map.of(BodyDimension.ELBOW_REST_HEIGHT, 0.9, BodyDimension.EYE_HEIGHT_SITTING, 0.9), BodyDimension.ELBOW_REST_HEIGHT,
                Map.of(BodyDimension.EYE_HEIGHT_SITTING, -0.9));
        assertThrows(IllegalArgumentException.class, () -> new ErrorCorrelations(impossible));
        assertThrows(IllegalArgumentException.class,
                () -> new ErrorCorrelations(Map.of(BodyDimension.POPLITEAL_HEIGHT, Map.of(BodyDimension.ELBOW_REST_HEIGHT, 1.1))));
        Person person = estimated(BodyGroup.MALE, 1760);
        assertThrows(IllegalArgumentException.class, () -> sureness(person, WIDE, MALE, 99, 1));
    }

    /** Source: commons-math3, CholeskyDecomposition. */
    @Test
    void theFactorTimesItselfIsTheMatrix() {
        double[][] matrix = {{1, 0.3, -0.5}, {0.3, 1, 0.2}, {-0.5, 0.2, 1}};
        Cholesky factor = Cholesky.of(matrix);
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = 0;
                for (int k = 0; k <= j; k++) {
                    sum += factor.at(i, k) * factor.at(j, k);
                }
                assertEquals(matrix[i][j], sum, 1e-12);
            }
        }
        double[][] library = new org.apache.commons.math3.linear.CholeskyDecomposition(
                new org.apache.commons.math3.linear.Array2DRowRealMatrix(matrix)).getL().getData();
        assertEquals(library[2][1], factor.at(2, 1), 1e-12);
        assertEquals(library[2][2], factor.at(2, 2), 1e-12);
    }
}
