package org.steadwork.exposure;

import jakarta.inject.Singleton;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchAnswer.Mark;
import org.steadwork.bench.CalculatorRefusal;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.bench.Rounded;
import org.steadwork.exposure.method.StaticPosture;
import org.steadwork.exposure.method.StaticPosture.Verdict;

/** How long a posture may be held, part by part; what was not looked at stays out. */
@Singleton
class StaticPostureCalculator extends MethodCalculator {

    StaticPostureCalculator() {
        super("static-posture");
    }

    @Override
    public List<Input> inputs() {
        return List.of(angle("trunk", "Trunk from upright", -90, 180).hint("Forward is positive, back is negative.").example(40),
                tick("trunk_supported", "Is the trunk fully supported?"), tick("trunk_twisted", "Is the trunk twisted or bent to the side?"),
                angle("head", "Head from upright", -90, 180).hint("Forward is positive, back is negative.").example(45),
                tick("head_supported", "Is the head fully supported?"), tick("head_twisted", "Is the head twisted or bent to the side?"),
                angle("upper_arm", "Upper arm from hanging down", 0, 180).example(30), tick("arm_supported", "Is the arm fully supported?"),
                tick("arm_awkward", "Is the arm behind or across the body, strongly turned, or the shoulder raised?"),
                angle("knee", "Knee, sitting", 0, 180).hint("180° is a straight leg. Only when sitting."),
                Input.number("held", "Held in one piece", "min", 0.1, 600, 1).optional().example(2));
    }

    private static Input angle(String name, String label, double least, double most) {
        return Input.number(name, label, "°", least, most, 1).optional();
    }

    private static Input tick(String name, String label) {
        return Input.yesNo(name, label).startsAt(false);
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        Map<String, StaticPosture.Result> parts = new LinkedHashMap<>();
        if (given.has("trunk")) {
            parts.put("Trunk", StaticPosture.trunk(given.number("trunk"), given.yes("trunk_supported"), given.yes("trunk_twisted")));
        }
        if (given.has("head")) {
            double head = given.number("head");
            parts.put("Head", StaticPosture.head(head, given.yes(head < 0 ? "head_supported" : "trunk_supported"), given.yes("head_twisted")));
        }
        if (given.has("head") && given.has("trunk")) {
            parts.put("Neck", StaticPosture.neck(given.number("head"), given.number("trunk"), given.yes("head_supported")));
        }
        if (given.has("upper_arm")) {
            parts.put("Upper arm", StaticPosture.upperArm(given.number("upper_arm"), given.yes("arm_supported"), given.yes("arm_awkward")));
        }
        if (given.has("knee")) {
            parts.put("Knee", StaticPosture.kneeSitting(given.number("knee")));
        }
        if (parts.isEmpty()) {
            throw CalculatorRefusal.at(given.path("trunk"), "Enter at least one angle: trunk, head, upper arm or knee.", "", "at least one angle");
        }
        return answer(given, parts);
    }

    private static BenchAnswer answer(Inputs given, Map<String, StaticPosture.Result> parts) {
        boolean bad = parts.values().stream().anyMatch(part -> part.verdict() == Verdict.NOT_RECOMMENDED);
        OptionalDouble shortest = parts.values().stream().flatMapToDouble(part -> part.minutes().stream()).min();
        boolean over = shortest.isPresent() && given.has("held") && given.number("held") > shortest.getAsDouble();
        String band = bad ? "Not recommended to be held" : over ? "Held longer than the limit"
                : shortest.isPresent() ? "May be held for a limited time" : "Acceptable to be held";
        BenchAnswer answer = BenchAnswer.of(band).marked(bad || over ? Mark.OUT : shortest.isPresent() ? Mark.EDGE : Mark.IN);
        if (!bad && shortest.isPresent()) {
            answer.headline("Longest holding time", Rounded.to(shortest.getAsDouble(), 1), "min");
        }
        List<Map<String, Object>> list = new ArrayList<>();
        parts.forEach((name, part) -> {
            answer.step(name, rule(name, given), words(part), "");
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("part", name.toLowerCase(Locale.ROOT).replace(' ', '_'));
            one.put("verdict", part.verdict().name().toLowerCase(Locale.ROOT));
            one.put("minutes", part.minutes().isPresent() ? part.minutes().getAsDouble() : null);
            list.add(one);
        });
        if (given.has("head") && given.has("trunk")) {
            answer.result("neck_degrees", given.number("head") - given.number("trunk"));
        }
        return answer.note("All limits are from memory.").result("parts", list)
                .result("verdict", (bad ? Verdict.NOT_RECOMMENDED : shortest.isPresent() ? Verdict.TIME_LIMITED : Verdict.ACCEPTABLE).name().toLowerCase(Locale.ROOT))
                .result("minutes", !bad && shortest.isPresent() ? shortest.getAsDouble() : null);
    }

    private static String words(StaticPosture.Result part) {
        return switch (part.verdict()) {
            case ACCEPTABLE -> "acceptable";
            case NOT_RECOMMENDED -> "not recommended";
            case TIME_LIMITED -> "at most " + Rounded.to(part.minutes().getAsDouble(), 1) + " min";
        };
    }

    private static String rule(String part, Inputs given) {
        return switch (part) {
            case "Trunk" -> "up to 20° acceptable; 20° to 60° with full support acceptable, without 4 min falling to 1 min; beyond, back without support, or twisted not";
            case "Head" -> "up to 25° acceptable; 25° to 85° with full trunk support acceptable, without 8 min falling to 1 min; beyond or twisted not";
            case "Neck" -> "head − trunk = " + Rounded.to(given.number("head") - given.number("trunk"), 1) + "°; 0° to 25° acceptable";
            case "Upper arm" -> "up to 20° acceptable; 20° to 60° with full support acceptable, without 3 min falling to 1 min; beyond or awkward not";
            default -> "sitting, 90° to 135° acceptable";
        };
    }
}
