package org.steadwork.drawing.figure;

import java.util.List;

/**
 * A body segment: the hull of its balls.
 *
 * @param name  what the data call it when it moves ({@code thigh_R})
 * @param layer the limb it is outlined with ({@code leg_R})
 */
record Segment(String name, String layer, List<Ball> balls) {
}
