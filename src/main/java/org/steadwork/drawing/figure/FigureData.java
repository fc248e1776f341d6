package org.steadwork.drawing.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The data of one exercise figure, with its frames completed from presets and from the first frame. */
record FigureData(String key, Values values, List<Pose> poses) {

    FigureData {
        if (poses.isEmpty()) {
            throw new IllegalArgumentException("a figure needs at least one frame");
        }
        poses = List.copyOf(poses);
    }

    static FigureData of(String key, Map<String, ?> presets, Map<String, ?> data) {
        Values values = new Values(data);
        return new FigureData(key, values, complete(new Values(presets), values.nested("frames")));
    }

    int frames() {
        return poses.size();
    }

    /** Later frames only say what changes from the first of their kind (body or close-up), unless they name a preset. */
    private static List<Pose> complete(Values presets, List<Values> frames) {
        List<Pose> poses = new ArrayList<>();
        for (Values frame : frames) {
            Pose own = new Pose(preset(presets, frame));
            Pose first = frame.has("base") ? null : poses.stream().filter(p -> p.isCloseUp() == own.isCloseUp()).findFirst().orElse(null);
            poses.add(first == null ? own : own.isCloseUp() ? changedHands(first, frame) : new Pose(first.values().under(frame)));
        }
        return poses;
    }

    private static Values preset(Values presets, Values frame) {
        Values posed = new Values(Map.of());
        if (frame.has("base")) {
            String name = frame.text("base", "");
            if (!presets.has(name)) {
                throw new IllegalArgumentException("there is no preset '" + name + "'");
            }
            posed = preset(presets, presets.one(name));
        }
        return posed.under(frame.without("base"));
    }

    private static Pose changedHands(Pose first, Values frame) {
        List<Values> before = first.values().nested("hands");
        List<Values> now = frame.nested("hands");
        List<Object> hands = new ArrayList<>();
        for (int i = 0; i < now.size(); i++) {
            hands.add((i < before.size() ? before.get(i).under(now.get(i)) : now.get(i)).asMap());
        }
        Map<String, Object> changed = new LinkedHashMap<>(frame.asMap());
        changed.put("hands", hands);
        return new Pose(new Values(changed));
    }

    Camera camera(int frame) {
        Values own = poses.get(frame).values();
        Object view = own.has("view") ? own.raw("view") : values.raw("view");
        return Camera.of(view == null ? "side" : view);
    }

    /** True when a prop, arrow or other part stands in a frame (counted from 0). */
    static boolean standsIn(Values part, int frame) {
        Object in = part.raw("in");
        if (in instanceof List<?> frames) {
            return frames.stream().anyMatch(f -> Values.number("in", f) == frame + 1);
        }
        return in == null || Values.number("in", in) == frame + 1;
    }

    List<Values> props(int frame) {
        return values.nested("props").stream().filter(p -> standsIn(p, frame)).toList();
    }

    /** An arrow stands in the last frame unless it says where. */
    List<Values> arrows(int frame) {
        return values.nested("arrows").stream()
                .filter(a -> a.has("in") ? standsIn(a, frame) : frame == frames() - 1).toList();
    }

    /** True when the start position is shown dashed behind a frame. */
    boolean hasGhost(int frame) {
        Object ghost = values.raw("ghost");
        if (ghost instanceof List<?> frames) {
            return frames.stream().anyMatch(f -> Values.number("ghost", f) == frame + 1);
        }
        return values.flag("ghost", false) && frame > 0 && frame == frames() - 1;
    }
}
