package org.steadwork.workplace.fit;

import java.util.Arrays;

/**
 * How good a setting is, in tiers compared one after the other: a later one counts only when the earlier ones are equal.
 * First the thigh contact (mm), then the clearance missing to its green edge (mm), then the weighted mm outside green of
 * feet, elbow, eye, and of depth, distance and armrest together; inside the bands the squared distance from the aim of
 * feet, elbow and eye, and of depth and armrest together; then fewer things in use, the smaller change from today, and the lower footrest.
 */
public final class Objective implements Comparable<Objective> {

    private static final double HAIR = 1e-9;

    private final double[] tiers;

    private Objective(double... tiers) {
        this.tiers = tiers;
    }

    static Objective of(FitModel model, Settings at) {
        double clearance = model.deviation(Deviation.CLEARANCE, at);
        double contact = Double.isNaN(clearance) ? 0 : Math.max(0, -clearance);
        double missing = Double.isNaN(clearance) ? 0 : Math.max(0, model.target(Deviation.CLEARANCE).green().low() - clearance);
        return new Objective(contact, missing, cost(model, Deviation.FEET, at), cost(model, Deviation.ELBOW, at),
                cost(model, Deviation.SCREEN_DROP, at),
                cost(model, Deviation.KNEE_GAP, at) + cost(model, Deviation.DISTANCE, at) + cost(model, Deviation.ARMREST, at),
                squared(model, Deviation.FEET, at), squared(model, Deviation.ELBOW, at), squared(model, Deviation.SCREEN_DROP, at),
                squared(model, Deviation.KNEE_GAP, at) + squared(model, Deviation.ARMREST, at),
                at.footrest() > 0 ? 1 : 0, at.changeFrom(model.station().present()), at.footrest());
    }

    private static double cost(FitModel model, Deviation deviation, Settings at) {
        return model.target(deviation).cost(model.deviation(deviation, at));
    }

    private static double squared(FitModel model, Deviation deviation, Settings at) {
        double off = model.deviation(deviation, at) - model.target(deviation).aim();
        return Double.isNaN(off) ? 0 : off * off;
    }

    /** Returns how far the thigh would be pressed against the desk, in mm; 0 when it is free. */
    public double contact() {
        return tiers[0];
    }

    /** Returns the squared distances from the aims of feet, elbow and eye together, in mm². */
    double squares() {
        return tiers[6] + tiers[7] + tiers[8];
    }

    @Override
    public int compareTo(Objective other) {
        for (int i = 0; i < tiers.length; i++) {
            if (Math.abs(tiers[i] - other.tiers[i]) > HAIR) {
                return Double.compare(tiers[i], other.tiers[i]);
            }
        }
        return 0;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Objective objective && compareTo(objective) == 0;
    }

    @Override
    public int hashCode() {
        return Long.hashCode(Math.round(tiers[0]));
    }

    @Override
    public String toString() {
        return Arrays.toString(tiers);
    }
}
