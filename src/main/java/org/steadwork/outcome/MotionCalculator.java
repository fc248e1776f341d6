package org.steadwork.outcome;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchGroup;
import org.steadwork.bench.Calculator;
import org.steadwork.bench.CalculatorRefusal;
import org.steadwork.bench.Choice;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.body.Side;
import org.steadwork.outcome.scoring.Motion;
import org.steadwork.outcome.scoring.MotionReading;
import org.steadwork.outcome.scoring.MotionReference;
import org.steadwork.outcome.scoring.RangeOfMotion;

/** Active range of motion on the Bench. */
@ApplicationScoped
class MotionCalculator implements Calculator {

    private static final double MOST_DEGREES = 220;
    private static final String ONE = "one person";
    private static final String TWO = "two people";

    @Inject
    Instruments instruments;

    @Override
    public String key() {
        return "range-of-motion";
    }

    @Override
    public BenchGroup group() {
        return BenchGroup.OUTCOMES;
    }

    @Override
    public String title() {
        return "Active range of motion";
    }

    @Override
    public String question() {
        return "How far does a joint move beside the other side, published values, and the time before?";
    }

    @Override
    public List<String> limits() {
        return List.of("The other side is the better measure; round reference figures are not means, and healthy people fall short of them.",
                "The measurement error of 5 or 10 degrees is a general figure from memory: it alone calls nothing worse.");
    }

    @Override
    public List<Input> inputs() {
        List<Choice> motions = motions().motions().stream().map(motion -> new Choice(motion.key(), motion.name(), motion.position())).toList();
        List<Choice> devices = Arrays.stream(Motion.Device.values()).map(device -> new Choice(word(device), device.words())).toList();
        return List.of(Input.choice("motion", "Motion", motions).example("wrist_extension"),
                Input.choice("side", "Side", Arrays.stream(Side.values()).map(side -> new Choice(side.key(), ScoreGrids.capital(side.label()))).toList())
                        .hint("The middle for a motion without sides.").example("left"),
                Input.number("degrees", "Measured", "°", 0, MOST_DEGREES, 1).optional().example(50),
                Input.text("not_measured", "Why it was not measured", 100).hint("Needed when no value is entered. Not measured is never 0.").optional(),
                Input.choice("device", "Device", devices).example("goniometer"), Input.yesNo("pain_limited", "Stopped by pain").startsAt(false),
                Input.number("other_side", "The other side", "°", 0, MOST_DEGREES, 1).optional().example(68),
                Input.number("earlier", "This side at an earlier time, with the same device", "°", 0, MOST_DEGREES, 1).optional(),
                Input.choice("measured_by", "Both times measured by", List.of(new Choice("one", ONE), new Choice("two", TWO))).startsAt("two"));
    }

    @Override
    public String standing() {
        return "Values for shoulder and wrist were seen as tabulated in a goniometry textbook, those of Apti for the spine in their source; AAOS and AMA "
                + "values for the spine are from memory.";
    }

    @Override
    public List<String> sources() {
        return Stream.concat(Stream.of(motions().about().source()), motions().motions().stream().flatMap(motion -> motion.references().stream())
                .map(MotionReference::source)).distinct().toList();
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        Motion motion = motions().find(given.choice("motion")).orElseThrow();
        Side side = given.choice("side", Side.class);
        if (motion.sided() == (side == Side.CENTRE)) {
            throw CalculatorRefusal.at(given.path("side"), motion.name() + (motion.sided() ? " is measured left or right." : " has no sides: choose the middle."),
                    side.key(), motion.sided() ? "left or right" : "centre");
        }
        MotionReading reading = reading(given, motion, side, "degrees");
        BenchAnswer answer = BenchAnswer.of(band(reading));
        reading.degrees().ifPresent(degrees -> answer.headline(motion.name() + (side == Side.CENTRE ? "" : ", " + side.label()), Shown.amount(degrees), "°"));
        for (RangeOfMotion.Share share : motions().shares(reading)) {
            String percent = Shown.fixed(share.lowPercent(), 1) + (share.lowPercent() == share.highPercent() ? "" : " to " + Shown.fixed(share.highPercent(), 1));
            answer.step(share.reference().by() + " " + share.reference().shown(), share.reference().population() + "; " + share.reference().source(), percent, "%");
        }
        answer.result("degrees", ScoreCalculator.number(reading.degrees())).result("pain_limited", reading.painLimited())
                .result("not_measured", reading.notMeasured()).result("shares", motions().shares(reading).stream().map(MotionCalculator::share).toList());
        sides(given, reading, answer);
        change(given, reading, answer);
        return answer;
    }

    private void sides(Inputs given, MotionReading reading, BenchAnswer answer) {
        if (!given.has("other_side")) {
            return;
        }
        if (reading.side() == Side.CENTRE) {
            throw CalculatorRefusal.at(given.path("other_side"), reading.motion().name() + " has no other side: leave this empty.",
                    given.number("other_side"), "nothing");
        }
        MotionReading other = reading(given, reading.motion(), reading.side() == Side.LEFT ? Side.RIGHT : Side.LEFT, "other_side");
        motions().sides(reading, other).ifPresent(sides -> {
            answer.step("Beside the other side", "other − this; this ÷ other × 100", Shown.amount(sides.deficit()) + "° less"
                    + (sides.percentOfOther().isEmpty() ? "" : ", " + Shown.fixed(sides.percentOfOther().getAsDouble(), 1) + " %"), "");
            answer.result("deficit", sides.deficit()).result("percent_of_other", ScoreCalculator.number(sides.percentOfOther()));
        });
    }

    private void change(Inputs given, MotionReading reading, BenchAnswer answer) {
        if (!given.has("earlier")) {
            return;
        }
        motions().change(reading(given, reading.motion(), reading.side(), "earlier"), reading).ifPresent(change -> {
            answer.step("Since the earlier time", ScoreGrids.capital(change.kind().words()) + "; more than error from "
                    + Shown.amount(change.error().getAsDouble()) + "°, from memory", (change.change() > 0 ? "+" : "") + Shown.amount(change.change()), "°");
            answer.result("change", change.change()).result("change_is", word(change.kind())).result("alerts", change.alerts());
        });
    }

    private static MotionReading reading(Inputs given, Motion motion, Side side, String field) {
        if (given.has(field) && given.number(field) > motion.mostDegrees()) {
            String allowed = "a number from 0 to " + motion.mostDegrees() + "°";
            throw CalculatorRefusal.at(given.path(field), motion.name() + " must be " + allowed + ". You entered " + Shown.amount(given.number(field)) + ".",
                    Shown.amount(given.number(field)), allowed);
        }
        boolean reason = given.has("not_measured") && !given.text("not_measured").isBlank();
        if (!given.has(field) && !reason) {
            throw CalculatorRefusal.at(given.path(field), "Enter the degrees, or say below why they were not measured.", null, "degrees or a reason");
        }
        if (given.has(field) && field.equals("degrees") && reason) {
            throw CalculatorRefusal.at(given.path("not_measured"), "A value and a reason for having none do not go together.", given.text("not_measured"), "nothing");
        }
        return new MotionReading(motion, side, given.has(field) ? OptionalDouble.of(given.number(field)) : OptionalDouble.empty(),
                given.choice("device", Motion.Device.class), given.yes("pain_limited"), given.choice("measured_by").equals("one") ? ONE : "",
                given.has(field) ? "" : given.text("not_measured"));
    }

    private String band(MotionReading reading) {
        if (reading.degrees().isEmpty()) {
            return "Not measured: " + reading.notMeasured();
        }
        return motions().shares(reading).stream().findFirst().map(share -> Shown.fixed(share.lowPercent(), 1) + " % of " + share.reference().by() + " "
                + share.reference().shown()).orElse("Measured") + (reading.painLimited() ? "; stopped by pain" : "");
    }

    private static Map<String, Object> share(RangeOfMotion.Share share) {
        Map<String, Object> shown = new LinkedHashMap<>();
        shown.put("by", share.reference().by());
        shown.put("degrees", share.reference().shown());
        shown.put("low_percent", share.lowPercent());
        shown.put("high_percent", share.highPercent());
        shown.put("tag", share.reference().tag());
        return shown;
    }

    private RangeOfMotion motions() {
        return instruments.rangeOfMotion();
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
