package org.steadwork.workplace.fit;

import java.util.EnumMap;
import java.util.Map;

/**
 * The targets of every deviation and the allowances the fit works with, all from content; lengths in mm.
 *
 * @param byDeviation a target for every deviation, the screen drop as for single-vision lenses
 * @param progressiveDrop the screen drop for progressive, bifocal or trifocal lenses
 * @param allowances the numbers of the rules
 * @param obtainable what may be asked for when the equipment does not reach
 */
public record Targets(Map<Deviation, Target> byDeviation, Target progressiveDrop, Allowances allowances, Obtainable obtainable) {

    public Targets {
        byDeviation = new EnumMap<>(byDeviation);
        for (Deviation deviation : Deviation.values()) {
            if (!byDeviation.containsKey(deviation)) {
                throw new IllegalArgumentException("There is no target for " + deviation);
            }
        }
    }

    public Target of(Deviation deviation, Lenses lenses) {
        boolean lowered = deviation == Deviation.SCREEN_DROP && lenses == Lenses.PROGRESSIVE;
        return lowered ? progressiveDrop : byDeviation.get(deviation);
    }

    /** Returns these targets with the amber bands as green ones: what is near the edge counts as in range. */
    public Targets loosened() {
        Map<Deviation, Target> loose = new EnumMap<>(Deviation.class);
        byDeviation.forEach((deviation, target) -> loose.put(deviation, target.loosened()));
        return new Targets(loose, progressiveDrop.loosened(), allowances, obtainable);
    }

    private static void requireLengths(double... values) {
        for (double value : values) {
            if (!(value >= 0 && value <= 2000)) {
                throw new IllegalArgumentException("An allowance must be between 0 and 2000 mm, but was " + value);
            }
        }
    }

    /**
     * The numbers of the rules, in mm, each in [0, 2000].
     *
     * @param shoe heel height when it was not measured
     * @param slump what eye height loses between sitting erect and sitting as people do
     * @param homeRow height of the home row above the desk top when not measured, and of a separate keyboard
     * @param topThickness desk top and frame when not measured
     * @param distance viewing distance when neither the arm nor the present distance is known
     * @param footrestAbove a footrest is wanted when the seat is higher than the feet want it by more than this
     */
    public record Allowances(double shoe, double slump, double homeRow, double topThickness, double distance, double footrestAbove) {

        public Allowances {
            requireLengths(shoe, slump, homeRow, topThickness, distance, footrestAbove);
        }
    }

    /**
     * What may be asked for, in mm, each in [0, 2000].
     *
     * @param footrest heights of a footrest
     * @param platform highest foot platform, for more than a footrest gives
     * @param screen heights of a screen top above the desk, with a riser or an arm
     * @param desk heights of a desk that can be set while sitting
     * @param blocks the most by which a desk is raised on blocks
     * @param seat heights of the seats of all chairs together
     * @param seatDepth depths of the seats of all chairs together
     * @param cushion thickest cushion on a backrest
     * @param tray the most by which a keyboard tray lowers the keys
     * @param thinTop thickness of a thin desk top with its frame
     * @param flatKeyboard home row of a flat keyboard above the desk
     */
    public record Obtainable(Travel footrest, double platform, Travel screen, Travel desk, double blocks, Travel seat, Travel seatDepth,
            double cushion, double tray, double thinTop, double flatKeyboard) {

        public Obtainable {
            requireLengths(platform, blocks, cushion, tray, thinTop, flatKeyboard);
        }
    }
}
