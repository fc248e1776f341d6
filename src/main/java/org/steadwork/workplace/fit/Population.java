package org.steadwork.workplace.fit;

import java.util.Map;
import java.util.random.RandomGenerator;

/**
 * The sizes of a population, women and men apart: mean and standard deviation of each measure and how the measures go
 * together; people are drawn as normal, each measure to the whole mm, as a survey reads them. Barefoot, sitting erect.
 */
public final class Population {

    /** What a person is drawn with; nothing else of a person is. */
    static final BodyMeasure[] MEASURES = {BodyMeasure.POPLITEAL_HEIGHT, BodyMeasure.ELBOW_REST_HEIGHT, BodyMeasure.EYE_HEIGHT_SITTING,
        BodyMeasure.BUTTOCK_POPLITEAL_LENGTH, BodyMeasure.THIGH_CLEARANCE};

    private final Group women;
    private final Group men;

    public Population(Group women, Group men) {
        this.women = women;
        this.men = men;
    }

    /**
     * One measure of a group, in mm.
     *
     * @param mean in (0, 3000)
     * @param deviation standard deviation, in (0, 500)
     */
    public record Size(double mean, double deviation) {

        public Size {
            if (!(mean > 0 && mean < 3000 && deviation > 0 && deviation < 500)) {
                throw new IllegalArgumentException("A size needs a mean and a standard deviation, in mm, but has " + mean + " and " + deviation);
            }
        }
    }

    /** Women or men. */
    public static final class Group {

        private final double[] means = new double[MEASURES.length];
        private final double[] deviations = new double[MEASURES.length];
        private final Cholesky factor;

        /**
         * @param sizes of popliteal height, elbow rest height, eye height sitting, buttock–popliteal length and thigh clearance
         * @param correlations of every pair of these, in either order; refused when they cannot stand together
         */
        public Group(Map<BodyMeasure, Size> sizes, Map<BodyMeasure, Map<BodyMeasure, Double>> correlations) {
            double[][] together = new double[MEASURES.length][MEASURES.length];
            for (int i = 0; i < MEASURES.length; i++) {
                Size size = sizes.get(MEASURES[i]);
                if (size == null) {
                    throw new IllegalArgumentException("The population has no size for " + MEASURES[i]);
                }
                means[i] = size.mean();
                deviations[i] = size.deviation();
                together[i][i] = 1;
                for (int j = 0; j < i; j++) {
                    together[i][j] = correlation(correlations, MEASURES[i], MEASURES[j]);
                }
            }
            factor = Cholesky.of(together);
        }

        private static double correlation(Map<BodyMeasure, Map<BodyMeasure, Double>> correlations, BodyMeasure one, BodyMeasure other) {
            Double found = correlations.getOrDefault(one, Map.of()).get(other);
            Double correlation = found != null ? found : correlations.getOrDefault(other, Map.of()).get(one);
            if (correlation == null || !(correlation >= -1 && correlation <= 1)) {
                throw new IllegalArgumentException("The population has no correlation of " + one + " and " + other);
            }
            return correlation;
        }
    }

    /** Draws people one after the other. */
    final class Draws {

        private final RandomGenerator random;
        private final double womenShare;
        private final Targets.Allowances allowances;
        private final double[] independent = new double[MEASURES.length];
        private final double[] correlated = new double[MEASURES.length];

        Draws(RandomGenerator random, double womenShare, Targets.Allowances allowances) {
            this.random = random;
            this.womenShare = womenShare;
            this.allowances = allowances;
        }

        /** Returns a person as one sits at work: with shoes, and with the slump taken off the eye. */
        Body next() {
            Group group = random.nextDouble() < womenShare ? women : men;
            for (int i = 0; i < independent.length; i++) {
                independent[i] = random.nextGaussian();
            }
            group.factor.correlate(independent, correlated);
            for (int i = 0; i < correlated.length; i++) {
                correlated[i] = Math.rint(group.means[i] + group.deviations[i] * correlated[i]);
            }
            return new Body(correlated[0], allowances.shoe(), correlated[1], correlated[2] - allowances.slump(), correlated[3], correlated[4], Double.NaN);
        }
    }
}
