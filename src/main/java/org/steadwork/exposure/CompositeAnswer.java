package org.steadwork.exposure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchAnswer.Mark;
import org.steadwork.bench.Rounded;
import org.steadwork.exposure.method.CompositeLifting;
import org.steadwork.exposure.method.LiftingEquation;

/** Shows a composite index with the line of each task, the hardest first. */
final class CompositeAnswer {

    private CompositeAnswer() {
    }

    static BenchAnswer of(CompositeLifting.Result result, String unit) {
        boolean defined = result.index().isPresent();
        double index = result.index().orElse(0);
        BenchAnswer answer = BenchAnswer.of(!defined ? "Not acceptable: together the tasks come more often, or reach farther, than the equation allows"
                : LiftingEquation.band(index)).marked(defined ? LiftInputs.mark(index) : Mark.OUT)
                .headline("Composite lifting index", defined ? Rounded.fixed(index, 1) : "not defined", "")
                .headline("Hardest task", String.valueOf(result.lines().get(0).number()), "");
        List<Map<String, Object>> lines = new ArrayList<>();
        for (CompositeLifting.Line line : result.lines()) {
            String task = "Task " + line.number() + ": ";
            answer.step(task + "limit without frequency", "the equation with a frequency multiplier of 1", Rounded.to(line.firwl(), 3), unit);
            answer.step(task + "limit with its own frequency", "times its frequency multiplier", Rounded.to(line.strwl(), 3), unit);
            answer.step(task + "index without frequency", "largest load / limit without frequency", shown(line.fili()), "");
            answer.step(task + "index alone", "mean load / limit with its own frequency", shown(line.stli()), "");
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("task", line.number());
            one.put("firwl", line.firwl());
            one.put("strwl", line.strwl());
            one.put("fili", finite(line.fili()));
            one.put("stli", finite(line.stli()));
            lines.add(one);
        }
        answer.step("Composite lifting index", "hardest task alone, plus for each further task its index without frequency × (1/FM of the summed lifts a minute"
                + " − 1/FM of the sum before)", defined ? Rounded.to(index, 3) : "not defined", "");
        LiftInputs.noteRounding(answer, index, defined);
        return answer.note("Most cells of the frequency table are from memory.").result("index", defined ? index : null).result("tasks", lines);
    }

    private static String shown(double value) {
        return Double.isFinite(value) ? Rounded.to(value, 3) : "not defined";
    }

    private static Double finite(double value) {
        return Double.isFinite(value) ? value : null;
    }
}
