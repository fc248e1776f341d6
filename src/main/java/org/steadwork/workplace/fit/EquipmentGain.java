package org.steadwork.workplace.fit;

import java.util.List;
import java.util.Map;

/**
 * What asking for some equipment would remove.
 *
 * @param items what is asked for, each with how much of it is used, in mm (see {@link Item})
 * @param removes the cost it takes away: weighted mm outside green ÷ 10, more than 0
 * @param remains the cost that is left, 0 or more
 * @param settings the best setting with it
 * @param deviations the deviations of that setting, in mm
 * @param cleared the deviations that come into range with it
 * @param station the work place with it
 */
public record EquipmentGain(List<Item> items, double removes, double remains, Settings settings, Map<Deviation, Double> deviations,
        List<Deviation> cleared, Workstation station) {

    /**
     * One thing to ask for.
     *
     * @param size mm, not rounded: height of a footrest, what a riser or blocks add, what a tray takes off; see {@link Equipment}
     */
    public record Item(Equipment equipment, double size) {
    }
}
