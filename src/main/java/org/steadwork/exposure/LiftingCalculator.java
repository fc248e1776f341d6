package org.steadwork.exposure;

import jakarta.inject.Singleton;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchAnswer.Mark;
import org.steadwork.bench.CalculatorRefusal;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.bench.Rounded;
import org.steadwork.exposure.method.Lift;
import org.steadwork.exposure.method.LiftingEquation;

/** The revised lifting equation for one task, at its start and, where the load is placed with care, at its end. */
@Singleton
class LiftingCalculator extends MethodCalculator {

    private final LiftingEquation equation = ExposureContent.lifting();

    LiftingCalculator() {
        super("lifting");
    }

    @Override
    public List<Input> inputs() {
        List<Input> inputs = new ArrayList<>(LiftInputs.geometry());
        inputs.add(choice("duration").example("short"));
        inputs.add(choice("grip").example("fair"));
        inputs.add(Input.number("load", "Load", "kg", 0.1, 200, 2).example(10));
        inputs.add(Input.yesNo("placed_with_care", "Must the load be placed with care at the end?").startsAt(false)
                .hint("Placed exactly, gripped anew or held. Then the end counts as well as the start."));
        inputs.add(Input.number("end_reach", "Reach at the end", "cm", 0, 100, 2).hint(LiftInputs.REACH).optional());
        inputs.add(Input.number("end_height", "Height of the hands at the end", "cm", 0, 250, 2).hint(LiftInputs.HEIGHT).optional());
        inputs.add(Input.number("end_asymmetry", "Turned to the side at the end", "°", 0, 180, 1).hint(LiftInputs.ASYMMETRY).startsAt(0));
        return inputs;
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        double load = given.number("load");
        Lift lift = LiftInputs.lift(given, given);
        LiftingEquation.Result start = equation.of(lift, load);
        if (!given.yes("placed_with_care")) {
            return answer(start, "", List.of(start), List.of("Start"));
        }
        for (String name : List.of("end_reach", "end_height")) {
            if (!given.has(name)) {
                throw CalculatorRefusal.at(given.path(name), "A load that is placed with care is measured at the end as well. Enter this, or answer no above.", "",
                        "a number in cm");
            }
        }
        LiftingEquation.Result end = equation.of(new Lift(given.number("end_reach"), given.number("end_height"), lift.travel(),
                given.number("end_asymmetry"), lift.perMinute(), lift.duration(), lift.coupling()), load);
        boolean endIsHarder = end.limitKg() < start.limitKg();
        return answer(endIsHarder ? end : start, endIsHarder ? ", at the end" : ", at the start", List.of(start, end), List.of("Start", "End"));
    }

    private static BenchAnswer answer(LiftingEquation.Result hardest, String where, List<LiftingEquation.Result> all, List<String> names) {
        boolean defined = hardest.index().isPresent();
        double index = hardest.index().orElse(0);
        BenchAnswer answer = BenchAnswer.of(hardest.band()).marked(defined ? LiftInputs.mark(index) : Mark.OUT)
                .headline("Lifting index" + where, defined ? Rounded.fixed(index, 1) : "not defined", "")
                .headline("Recommended weight limit" + where, Rounded.fixed(hardest.limitKg(), 1), "kg");
        for (int i = 0; i < all.size(); i++) {
            String name = names.get(i);
            LiftingEquation.Result one = all.get(i);
            one.working().forEach(step -> answer.step(name + ": " + step.what().toLowerCase(Locale.ROOT), step.rule(), Rounded.to(step.value(), 3), ""));
            answer.step(name + ": weight limit", "the product of all", Rounded.to(one.limitKg(), 3), "kg");
            answer.step(name + ": lifting index", "load / weight limit", one.index().isPresent() ? Rounded.to(one.index().getAsDouble(), 3) : "not defined", "");
            answer.result(name.toLowerCase(Locale.ROOT) + "_limit_kg", one.limitKg())
                    .result(name.toLowerCase(Locale.ROOT) + "_index", one.index().isPresent() ? one.index().getAsDouble() : null);
        }
        LiftInputs.noteRounding(answer, index, defined);
        return answer.note("Most cells of the frequency table are from memory.").result("limit_kg", hardest.limitKg()).result("index", defined ? index : null);
    }
}
