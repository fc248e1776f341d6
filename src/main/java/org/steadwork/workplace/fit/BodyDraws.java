package org.steadwork.workplace.fit;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/**
 * What a person's measures might be in truth: each normal about its value with its standard error, in mm. Errors of measures
 * that were taken are independent; those of estimates go together as {@link ErrorCorrelations} says.
 */
final class BodyDraws {

    /** In the order of {@link Body}. */
    static final BodyMeasure[] MEASURES = {BodyMeasure.POPLITEAL_HEIGHT, BodyMeasure.SHOE, BodyMeasure.ELBOW_REST_HEIGHT,
        BodyMeasure.EYE_HEIGHT_SITTING, BodyMeasure.BUTTOCK_POPLITEAL_LENGTH, BodyMeasure.THIGH_CLEARANCE, BodyMeasure.ARM_REACH};

    private final double[] values;
    private final double[] errors;
    private final double[][] correlations;
    private final Cholesky factor;

    private BodyDraws(double[] values, double[] errors, double[][] correlations) {
        this.values = values;
        this.errors = errors;
        this.correlations = correlations;
        this.factor = Cholesky.of(correlations);
    }

    static BodyDraws of(FitModel model, ErrorCorrelations together) {
        int size = MEASURES.length;
        double[] values = numbers(model.body());
        double[] errors = new double[size];
        double[][] correlations = new double[size][size];
        for (int i = 0; i < size; i++) {
            errors[i] = model.person().measure(MEASURES[i]).standardError();
            for (int j = 0; j < size; j++) {
                correlations[i][j] = i == j ? 1 : correlation(model.person(), together, MEASURES[i], MEASURES[j]);
            }
        }
        return new BodyDraws(values, errors, correlations);
    }

    private static double correlation(Person person, ErrorCorrelations together, BodyMeasure one, BodyMeasure other) {
        boolean bothEstimated = person.measure(one).how() == How.ESTIMATED && person.measure(other).how() == How.ESTIMATED;
        return !bothEstimated ? 0 : BodyDimension.of(one)
                .flatMap(first -> BodyDimension.of(other).map(second -> together.between(first, second))).orElse(0.0);
    }

    /** Draws bodies, the same ones for the same seed. */
    Body[] draw(int count, long seed) {
        RandomGenerator random = new SplittableRandom(seed);
        double[] independent = new double[values.length];
        double[] correlated = new double[values.length];
        double[] drawn = new double[values.length];
        Body[] bodies = new Body[count];
        for (int n = 0; n < count; n++) {
            for (int i = 0; i < independent.length; i++) {
                independent[i] = random.nextGaussian();
            }
            factor.correlate(independent, correlated);
            for (int i = 0; i < drawn.length; i++) {
                drawn[i] = values[i] + errors[i] * correlated[i];
            }
            bodies[n] = body(drawn);
        }
        return bodies;
    }

    /** Returns one measure of all bodies, the smallest first. */
    static double[] sorted(Body[] bodies, int measure) {
        double[] drawn = new double[bodies.length];
        for (int n = 0; n < drawn.length; n++) {
            drawn[n] = numbers(bodies[n])[measure];
        }
        Arrays.sort(drawn);
        return drawn;
    }

    double value(int measure) {
        return values[measure];
    }

    double error(int measure) {
        return errors[measure];
    }

    /** Returns what is expected once a measure is known to be {@code found}. */
    Body expected(int measure, double found) {
        return knowing(values, measure, found);
    }

    /** Turns a draw into one in which a measure is {@code found}; what went with its error moves along. */
    Body knowing(Body drawn, int measure, double found) {
        return knowing(numbers(drawn), measure, found);
    }

    private Body knowing(double[] numbers, int measure, double found) {
        double off = (found - numbers[measure]) / errors[measure];
        double[] moved = new double[numbers.length];
        for (int i = 0; i < moved.length; i++) {
            moved[i] = numbers[i] + off * errors[i] * correlations[i][measure];
        }
        return body(moved);
    }

    private static Body body(double[] of) {
        return new Body(of[0], of[1], of[2], of[3], of[4], of[5], of[6]);
    }

    private static double[] numbers(Body body) {
        return new double[] {body.popliteal(), body.shoe(), body.elbow(), body.eye(), body.thighLength(), body.thigh(), body.reach()};
    }
}
