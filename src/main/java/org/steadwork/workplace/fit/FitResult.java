package org.steadwork.workplace.fit;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What fits a person at a work place; lengths in mm, not rounded (shown to the nearest 5 mm), NaN where not looked at.
 *
 * @param now today's deviations
 * @param best the best setting with what is there
 * @param proposed its deviations
 * @param serves false when every setting presses the desk on the thigh
 * @param steps the settings in the order in which they are made
 * @param hand what setting by hand arrives at, with wanted values that the equipment may not reach
 * @param gains equipment one by one, the one that removes most first; empty when nothing is left to remove
 * @param shortestList the shortest list of equipment that leaves least
 * @param room what body and furniture leave between elbow and thigh; empty when the thigh was not looked at
 * @param costNow weighted mm outside green ÷ 10, today
 * @param costProposed the same for the best setting
 */
public record FitResult(Map<Deviation, Double> now, Settings best, Map<Deviation, Double> proposed, boolean serves, List<AdjustmentStep> steps,
        HandResult hand, List<EquipmentGain> gains, Optional<EquipmentGain> shortestList, Optional<Room> room,
        Optional<Standing> standing, double costNow, double costProposed, Objective objective) {
}
