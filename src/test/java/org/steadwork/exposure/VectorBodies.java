package org.steadwork.exposure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes a test vector as a person at the Bench would enter it: its scores as the postures and additions that give them. */
final class VectorBodies {

    private static final Map<String, String> LETTERS = Map.of("H", "reach", "V", "height", "D", "travel", "A", "asymmetry", "F", "per_minute", "L", "load");

    private VectorBodies() {
    }

    /** The calculator a vector is for. */
    static String calculator(Vector v) {
        return switch (v.method()) {
            case "niosh_us_printed" -> "lifting-printed";
            case "niosh_metric_formula" -> "lifting";
            case "niosh_cli" -> v.inputs().containsKey("FIRWL") ? "lifting-known-limits" : "lifting-several";
            case "strain_index" -> "strain-index";
            case "revised_strain_index" -> "revised-strain-index";
            case "iso_11226" -> "static-posture";
            case "breaks" -> v.inputs().containsKey("rate") ? "lifting-bursts" : v.inputs().containsKey("day") ? "standing-goal" : "screen-breaks";
            default -> v.method();
        };
    }

    static Map<String, Object> of(Vector v) {
        Map<String, Object> body = new LinkedHashMap<>();
        switch (calculator(v)) {
            case "lifting", "lifting-printed" -> lift(body, v.inputs());
            case "lifting-several" -> several(body, v);
            case "lifting-known-limits" -> known(body, v);
            case "rula" -> rula(body, v);
            case "reba" -> reba(body, v);
            case "rosa" -> rosa(body, v);
            case "strain-index" -> strain(body, v);
            case "revised-strain-index" -> {
                body.put("effort", Math.round(v.in("I") * 1000) / 100.0);
                body.putAll(Map.of("per_minute", v.in("E"), "seconds", v.in("D"), "wrist_degrees", Math.abs(v.in("P")), "hours", v.in("H"),
                        "wrist_direction", v.in("P") < 0 ? "extension" : "flexion"));
            }
            case "static-posture" -> posture(body, v);
            case "lifting-bursts" -> body.putAll(Map.of("rate", v.in("rate"), "minutes", v.in("minutes")));
            case "standing-goal" -> {
                body.put("day", v.whole("day"));
                if (v.inputs().containsKey("standing")) {
                    body.put("standing", v.whole("standing"));
                }
            }
            case "screen-breaks" -> breaks(body, v);
            default -> throw new AssertionError("No body for " + v);
        }
        return body;
    }

    private static void lift(Map<String, Object> body, Map<String, String> words) {
        words.forEach((letter, value) -> {
            if (LETTERS.containsKey(letter)) {
                body.put(LETTERS.get(letter), Double.valueOf(value));
            }
        });
        List.of("class", "coupling").forEach(word -> {
            if (words.containsKey(word)) {
                body.put(word.equals("class") ? "duration" : "grip", words.get(word));
            }
        });
        List.of("good", "fair", "poor").stream().filter(words::containsKey).forEach(grip -> body.put("grip", grip));
    }

    private static void several(Map<String, Object> body, Vector v) {
        var first = v.inputs().entrySet().iterator().next();
        List<Object> lifts = new ArrayList<>();
        for (String task : (first.getKey() + "=" + first.getValue()).split("\\|")) {
            Map<String, String> words = new LinkedHashMap<>();
            Arrays.stream(task.strip().split(" ")).forEach(w -> words.put(w.split("=")[0], w.contains("=") ? w.split("=")[1] : w));
            Map<String, Object> lift = new LinkedHashMap<>();
            lift(lift, words);
            lifts.add(lift);
        }
        body.put("lifts", lifts);
        body.put("duration", v.inputs().get("class"));
    }

    private static void known(Map<String, Object> body, Vector v) {
        List<Object> tasks = new ArrayList<>();
        for (int i = 0; i < v.list("FIRWL").length; i++) {
            tasks.add(Map.of("limit", v.list("FIRWL")[i], "load", v.list("L")[i], "per_minute", v.list("F")[i]));
        }
        body.put("tasks", tasks);
        body.put("duration", v.inputs().get("class"));
    }

    private static void rula(Map<String, Object> body, Vector v) {
        put(body, v.whole("UA"), "upper_arm", List.of("near", "forward_20_45", "forward_45_90", "over_90"), "shoulder_raised", "arm_out");
        put(body, v.whole("LA"), "lower_arm", List.of("within_60_100", "outside_60_100"), "forearm_across");
        put(body, v.whole("W"), "wrist", List.of("straight", "up_to_15", "over_15"), "wrist_sideways");
        put(body, v.whole("WT"), "wrist_twist", List.of("middle", "end"));
        force(body, v.whole("mA+fA"), "arm");
        put(body, v.whole("N"), "neck", List.of("up_to_10", "forward_10_20", "over_20", "back"), "neck_twisted", "neck_sideways");
        put(body, v.whole("T"), "trunk", List.of("seated_supported", "up_to_20", "forward_20_60", "over_60"), "trunk_twisted", "trunk_sideways");
        put(body, v.whole("L"), "legs", List.of("supported", "uneven"));
        force(body, v.whole("mB+fB"), "body");
    }

    private static void force(Map<String, Object> body, int sum, String part) {
        body.put(part + "_use", sum > 0);
        body.put(part + "_force", List.of("none", "none", "light", "held", "heavy").get(sum));
    }

    private static void reba(Map<String, Object> body, Vector v) {
        put(body, v.whole("T"), "trunk", List.of("upright", "up_to_20", "forward_20_60", "over_60"), "trunk_twisted");
        put(body, v.whole("N"), "neck", List.of("up_to_20", "over_20"), "neck_twisted");
        int legs = v.whole("L");
        body.put("legs", legs > 1 ? "one" : "both");
        body.put("knees", List.of("straight", "bent_30_60", "over_60").get(Math.max(0, legs - 2)));
        put(body, v.whole("load") + 1, "load", List.of("under_5", "up_to_10", "over_10"), "jolt");
        put(body, v.whole("UA"), "upper_arm", List.of("near", "forward_20_45", "forward_45_90", "over_90"), "arm_out", "shoulder_raised");
        put(body, v.whole("LA"), "lower_arm", List.of("within_60_100", "outside_60_100"));
        put(body, v.whole("W"), "wrist", List.of("up_to_15", "over_15"), "wrist_twisted");
        put(body, v.whole("coupling") + 1, "grip", List.of("good", "fair", "poor", "unacceptable"));
        List<String> activity = List.of("held", "repeated", "unsteady");
        activity.forEach(one -> body.put(one, activity.indexOf(one) < v.whole("activity")));
    }

    private static void rosa(Map<String, Object> body, Vector v) {
        put(body, v.whole("height"), "seat_height", List.of("right", "too_low", "feet_hang"), "seat_height_no_leg_room", "seat_height_not_adjustable");
        put(body, v.whole("depth"), "seat_depth", List.of("right", "too_long"), "seat_depth_not_adjustable");
        put(body, v.whole("arm"), "armrest", List.of("right", "too_high_or_low"), "armrest_hard", "armrest_too_wide", "armrest_not_adjustable");
        put(body, v.whole("back"), "backrest", List.of("right", "angle"), "backrest_desk_too_high", "backrest_not_adjustable");
        body.put("chair_time", List.of("short", "middle", "long").get(v.whole("chairDur") + 1));
        put(body, v.whole("monitor"), "monitor", List.of("right", "too_low", "too_high"), "monitor_too_far", "monitor_neck_turned", "monitor_glare",
                "monitor_no_paper_holder");
        device(body, v.whole("phone"), "telephone", List.of("right", "too_far"), Map.of("neck_held", 2, "no_hands_free", 1));
        device(body, v.whole("mouse"), "mouse", List.of("right", "reaching"), Map.of("other_surface", 2, "pinch_grip", 1, "palm_rest", 1));
        device(body, v.whole("keyboard"), "keyboard", List.of("straight", "extended"), Map.of("sideways", 1, "too_high", 1, "overhead", 1, "not_adjustable", 1));
    }

    /** A device's score from its posture, then its dearest additions, then a long time. */
    private static void device(Map<String, Object> body, int score, String item, List<String> bases, Map<String, Integer> additions) {
        body.put(item, score == 0 ? "not_used" : bases.get(Math.min(score, 2) - 1));
        int[] rest = {score - 2};
        additions.entrySet().stream().sorted((a, b) -> b.getValue() - a.getValue()).filter(one -> one.getValue() <= rest[0]).toList().forEach(one -> {
            if (one.getValue() <= rest[0]) {
                body.put(item + "_" + one.getKey(), true);
                rest[0] -= one.getValue();
            }
        });
        body.put(item + "_time", rest[0] > 0 ? "long" : "middle");
    }

    private static void strain(Map<String, Object> body, Vector v) {
        code(body, "intensity", v.in("IM"), Map.of(1.0, "light", 3.0, "somewhat_hard", 6.0, "hard", 9.0, "very_hard", 13.0, "near_maximal"));
        code(body, "duration_of_exertion", v.in("DM"), Map.of(0.5, "lt10", 1.0, "10_29", 1.5, "30_49", 2.0, "50_79", 3.0, "ge80"));
        code(body, "efforts_per_minute", v.in("EM"), Map.of(0.5, "lt4", 1.0, "4_8", 1.5, "9_14", 2.0, "15_19", 3.0, "ge20"));
        code(body, "hand_wrist_posture", v.in("PM"), Map.of(1.0, "good", 1.5, "fair", 2.0, "bad", 3.0, "very_bad"));
        code(body, "speed_of_work", v.in("SM"), Map.of(1.0, "fair", 1.5, "fast", 2.0, "very_fast"));
        code(body, "duration_per_day", v.in("HM"), Map.of(0.25, "le1", 0.5, "1_2", 0.75, "2_4", 1.0, "4_8", 1.5, "ge8"));
    }

    private static void code(Map<String, Object> body, String name, double multiplier, Map<Double, String> codes) {
        body.put(name, codes.get(multiplier));
    }

    private static void posture(Map<String, Object> body, Vector v) {
        List.of("trunk", "head", "upper_arm").stream().filter(v.inputs()::containsKey).forEach(part -> body.put(part, v.in(part)));
        boolean supported = "full".equals(v.inputs().get("support"));
        body.put("trunk_supported", supported);
        body.put("arm_supported", supported);
    }

    private static void breaks(Map<String, Object> body, Vector v) {
        String[] day = v.inputs().keySet().iterator().next().split("-");
        body.put("start", day[0]);
        body.put("end", day[1]);
        body.put("breaks", Arrays.stream(v.inputs().get("off").split("\\|")).map(off -> Map.of("from", off.split("-")[0], "to", off.split("-")[1])).toList());
    }

    /** A score from the choices worth 1, 2, 3 … and, above the last, additions worth one each. */
    private static void put(Map<String, Object> body, int score, String name, List<String> choices, String... additions) {
        body.put(name, choices.get(Math.min(score, choices.size()) - 1));
        for (int i = 0; i < score - choices.size(); i++) {
            body.put(additions[i], true);
        }
    }
}
