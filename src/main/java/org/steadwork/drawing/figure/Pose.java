package org.steadwork.drawing.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The joint angles and placings of one frame. Angles are degrees from standing upright with hanging arms; a name without a
 * side ({@code elbow.flex}) holds for both sides, {@code elbow.flex.R} for one.
 */
final class Pose {

    private final Values values;

    Pose(Values values) {
        this.values = values;
    }

    Values values() {
        return values;
    }

    boolean isCloseUp() {
        return values.has("hands");
    }

    double angle(String name) {
        return values.number(name, 0);
    }

    double angle(String name, Side side) {
        String own = name + "." + side;
        return values.has(own) ? values.number(own) : angle(name);
    }

    /** True when the name is given for this side alone, so that its z is not mirrored. */
    boolean ownSide(String name, Side side) {
        return values.has(name + "." + side);
    }

    /** The value for a side, or that for both, or null. */
    Object value(String name, Side side) {
        return ownSide(name, side) ? values.raw(name + "." + side) : values.raw(name);
    }

    /** A direction for a side, mirrored to the left where it stands for both; null when there is none. */
    Vec3 direction(String name, Side side) {
        if (!(value(name, side) instanceof List<?> list)) {
            return null;
        }
        double[] v = Values.numbers(name, list);
        return new Vec3(v[0], v[1], v[2] * (ownSide(name, side) ? 1 : side.sign()));
    }

    /** The pose a share of the way to another: numbers run evenly, anything else changes half way. */
    Pose towards(Pose other, double share) {
        if (isCloseUp()) {
            List<Values> from = values.nested("hands");
            List<Values> to = other.values.nested("hands");
            List<Object> hands = new ArrayList<>();
            for (int i = 0; i < Math.min(from.size(), to.size()); i++) {
                hands.add(between(from.get(i), to.get(i), share).asMap());
            }
            return new Pose(new Values(Map.of("hands", hands)));
        }
        return new Pose(between(values, other.values, share));
    }

    private static Values between(Values from, Values to, double share) {
        Set<String> names = new LinkedHashSet<>(from.names());
        names.addAll(to.names());
        Map<String, Object> mixed = new LinkedHashMap<>();
        for (String name : names) {
            Object any = from.has(name) ? from.raw(name) : to.raw(name);
            Object none = any instanceof Number ? 0.0 : null;
            Object a = from.has(name) ? from.raw(name) : none;
            Object b = to.has(name) ? to.raw(name) : none;
            mixed.put(name, a == null ? b : b == null ? a : mix(a, b, share));
        }
        return new Values(mixed);
    }

    private static Object mix(Object a, Object b, double share) {
        if (a instanceof Number from && b instanceof Number to) {
            return from.doubleValue() + (to.doubleValue() - from.doubleValue()) * share;
        }
        if (a instanceof List<?> from && b instanceof List<?> to && from.size() == to.size()) {
            List<Object> mixed = new ArrayList<>();
            for (int i = 0; i < from.size(); i++) {
                Object x = from.get(i);
                Object y = to.get(i);
                mixed.add(x == null || y == null ? (share < 0.5 ? x : y) : mix(x, y, share));
            }
            return mixed;
        }
        return share < 0.5 ? a : b;
    }
}
