package org.steadwork.exposure;

import jakarta.inject.Singleton;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchAnswer.Mark;
import org.steadwork.bench.Choice;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.bench.Rounded;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.exposure.method.Step;
import org.steadwork.exposure.method.StrainIndex;
import org.steadwork.exposure.method.StrainIndex.Variable;

/** The strain index of 1995 from ratings in words. */
@Singleton
class StrainIndexCalculator extends MethodCalculator {

    private final StrainIndex index = ExposureContent.strainIndex();
    private final Map<Variable, List<Choice>> choices = new EnumMap<>(Variable.class);
    private final Map<String, Integer> ratings = new HashMap<>();

    StrainIndexCalculator() {
        super("strain-index");
        for (Entry row : Content.csv("exposure/strain-index.csv")) {
            Variable variable = row.constant("variable", Variable.class);
            String code = row.text("code");
            String criterion = row.text("criterion");
            boolean word = code.matches("[a-z_]+");
            String label = word ? code.replace('_', ' ') : criterion;
            choices.computeIfAbsent(variable, v -> new ArrayList<>())
                    .add(new Choice(code, Character.toUpperCase(label.charAt(0)) + label.substring(1), word ? criterion : ""));
            ratings.put(variable + "=" + code, row.integer("rating"));
        }
    }

    @Override
    public List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        for (Variable variable : Variable.values()) {
            Entry words = input(name(variable));
            inputs.add(Input.choice(name(variable), words.text("label"), choices.get(variable)).hint(words.optionalText("hint").orElse("")));
        }
        return inputs;
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        Map<Variable, Integer> rated = new EnumMap<>(Variable.class);
        for (Variable variable : Variable.values()) {
            rated.put(variable, ratings.get(variable + "=" + given.choice(name(variable))));
        }
        StrainIndex.Result result = index.of(rated);
        double value = result.index();
        BenchAnswer answer = BenchAnswer.of(result.band()).marked(value <= 3 ? Mark.IN : value >= 7 ? Mark.OUT : Mark.EDGE)
                .headline("Strain Index", Rounded.to(value, 1), "");
        List<Step> working = result.working();
        for (Variable variable : Variable.values()) {
            Step step = working.get(variable.ordinal());
            answer.step(input(name(variable)).text("label"), step.rule(), Rounded.to(step.value(), 2), "");
        }
        return answer.step("Strain Index", "the product of the six", Rounded.to(value, 4), "").result("index", value);
    }

    private static String name(Variable variable) {
        return variable.name().toLowerCase(Locale.ROOT);
    }
}
