package org.steadwork.outcome;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchGroup;
import org.steadwork.bench.Calculator;
import org.steadwork.bench.CalculatorRefusal;
import org.steadwork.bench.Choice;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.body.Side;
import org.steadwork.outcome.scoring.ChangeVerdict;
import org.steadwork.outcome.scoring.Grip;
import org.steadwork.outcome.scoring.GripResult;
import org.steadwork.outcome.scoring.GripTrial;
import org.steadwork.outcome.scoring.NormGroup;
import org.steadwork.outcome.scoring.SideComparison;

/** Grip strength on the Bench. */
@ApplicationScoped
class GripCalculator implements Calculator {

    private static final double MOST_KG = 100;

    @Inject
    Instruments instruments;

    @Override
    public String key() {
        return "grip";
    }

    @Override
    public BenchGroup group() {
        return BenchGroup.OUTCOMES;
    }

    @Override
    public String title() {
        return "Grip strength";
    }

    @Override
    public String question() {
        return "How strong is a hand beside healthy people of its age, the other hand, and the time before?";
    }

    @Override
    public List<String> limits() {
        return List.of("The norms are of one American city in 1985, for men and for women from 20 years; they name no cause.",
                "No measurement error is confirmed: a change is set beside what matters to most people only.", grip().about().method());
    }

    @Override
    public List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        inputs.add(Input.choice("hand", "Hand", List.of(new Choice("right", "Right"), new Choice("left", "Left"))));
        for (int trial = 1; trial <= grip().trials(); trial++) {
            inputs.add(Input.number("trial" + trial, "Trial " + trial, "kg", 0, MOST_KG, 1).optional().example(new int[] {34, 36, 35}[trial % 3]));
        }
        inputs.add(Input.text("not_done", "Why a trial was not done", 100).startsAt(GripTrial.STOPPED_FOR_PAIN)
                .hint("Counts for trials left empty; such a trial is never 0."));
        inputs.add(Input.whole("age", "Age", "years", 0, 120).optional().example(47));
        inputs.add(Input.choice("norms_of", "Norms of", List.of(new Choice("men", "Men"), new Choice("women", "Women"))).optional().example("men"));
        inputs.add(Input.number("other_hand", "Mean of the other hand", "kg", 0, MOST_KG, 1).optional().example(42));
        inputs.add(Input.number("earlier", "Mean of this hand at an earlier test", "kg", 0, MOST_KG, 1).optional());
        return inputs;
    }

    @Override
    public String standing() {
        return "The norms were seen as reprinted in a dynamometer's manual and are checked age by age; position of the body from memory, the mean of three "
                + "seen. Means, z and shares were checked against R.";
    }

    @Override
    public List<String> sources() {
        return List.of("Mathiowetz et al., Arch Phys Med Rehabil 1985;66:69 (norms)", "Bohannon, J Phys Ther Sci 2019;31:75 (change of 5.0 to 6.5 kg)");
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        if (given.text("not_done").isBlank()) {
            throw CalculatorRefusal.at(given.path("not_done"), "Say why a trial was not done, for example: " + GripTrial.STOPPED_FOR_PAIN + ".", null,
                    "a reason in words");
        }
        List<GripTrial> trials = new ArrayList<>();
        for (int trial = 1; trial <= grip().trials(); trial++) {
            trials.add(given.has("trial" + trial) ? GripTrial.of(given.number("trial" + trial)) : GripTrial.without(given.text("not_done")));
        }
        GripResult result = grip().measure(given.choice("hand", Side.class), trials, given.has("age") ? OptionalInt.of(given.whole("age"))
                : OptionalInt.empty(), given.has("norms_of") ? Optional.of(given.choice("norms_of", NormGroup.class)) : Optional.empty());
        BenchAnswer answer = BenchAnswer.of(band(result));
        result.meanKg().ifPresent(mean -> answer.headline("Mean of " + result.done() + (result.done() == 1 ? " trial" : " trials"), kg(mean), "kg"));
        result.percentOfNorm().ifPresent(percent -> answer.headline("Of the norm", Shown.fixed(percent, 1), "%"));
        answer.step("Mean and norm", grip().about().method(), result.working(), "");
        if (result.estimated()) {
            answer.note("Marked: only " + result.done() + " of " + grip().trials() + " trials have a reading (" + String.join(", ", result.notDone()) + ").");
        }
        if (result.meanKg().isPresent() && result.norm().isEmpty()) {
            answer.note("No norm: age or group is not given, or no norm is published for that age.");
        }
        answer.result("mean_kg", ScoreCalculator.number(result.meanKg())).result("trials_done", result.done()).result("marked", result.estimated())
                .result("norm_kg", result.norm().map(norm -> (Object) norm.meanKg()).orElse(null)).result("z", ScoreCalculator.number(result.z()))
                .result("percent_of_norm", ScoreCalculator.number(result.percentOfNorm()));
        beside(given, result, answer);
        return answer;
    }

    private void beside(Inputs given, GripResult result, BenchAnswer answer) {
        if (result.meanKg().isPresent() && given.has("other_hand")) {
            SideComparison sides = SideComparison.of(result.meanKg().getAsDouble(), given.number("other_hand"));
            answer.step("Beside the other hand", "other − this; this ÷ other × 100", kg(sides.deficit()) + " kg less" + (sides.percentOfOther().isEmpty() ? ""
                    : ", " + Shown.fixed(sides.percentOfOther().getAsDouble(), 1) + " %"), "");
            answer.result("deficit_kg", sides.deficit()).result("percent_of_other", ScoreCalculator.number(sides.percentOfOther()));
        }
        if (result.meanKg().isPresent() && given.has("earlier")) {
            ChangeVerdict change = grip().change(given.number("earlier"), result.meanKg().getAsDouble());
            answer.step("Since the earlier test", ScoreGrids.capital(change.kind().words()), (change.change() > 0 ? "+" : "") + kg(change.change()), "kg");
            answer.result("change_kg", change.change()).result("change_is", change.kind().name().toLowerCase(Locale.ROOT));
        }
    }

    private static String band(GripResult result) {
        if (result.meanKg().isEmpty()) {
            return "No trial has a reading";
        }
        if (result.z().isEmpty()) {
            return "Mean of the trials; no norm to set it beside";
        }
        double z = result.z().getAsDouble();
        return Shown.fixed(Math.abs(z), 2) + " standard deviations " + (z < 0 ? "below" : "above") + " the norm";
    }

    private Grip grip() {
        return instruments.grip();
    }

    private static String kg(double value) {
        return Shown.fixed(value, 1);
    }
}
