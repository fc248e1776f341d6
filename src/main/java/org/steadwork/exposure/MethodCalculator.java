package org.steadwork.exposure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchGroup;
import org.steadwork.bench.Calculator;
import org.steadwork.bench.Choice;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.bench.Rounded;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.drawing.PostureSketch;
import org.steadwork.exposure.method.Step;

/** An exposure method on the Bench; its words and the points of its postures come from the content. */
abstract class MethodCalculator implements Calculator {

    private static final Entry METHODS = Content.yaml("exposure/methods.yaml");

    private final String key;
    private final Entry words;
    private final Map<String, Integer> points = new HashMap<>();

    MethodCalculator(String key) {
        this.key = key;
        words = METHODS.entry(key).orElseThrow(() -> METHODS.problem("the method '" + key + "' is missing"));
        for (String name : inputNames()) {
            Entry input = input(name);
            if (input.has("points")) {
                points.put(name, input.integer("points"));
            }
            input.entries("choices").stream().filter(choice -> choice.has("points"))
                    .forEach(choice -> points.put(name + "=" + choice.text("value"), choice.integer("points")));
        }
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public BenchGroup group() {
        return BenchGroup.EXPOSURE;
    }

    @Override
    public String title() {
        return words.text("title");
    }

    @Override
    public String question() {
        return words.text("question");
    }

    @Override
    public List<String> limits() {
        return words.texts("limits");
    }

    @Override
    public String standing() {
        return words.text("standing");
    }

    @Override
    public List<String> sources() {
        return words.texts("sources");
    }

    /** True for a method that looks at a person's task, whose result is worth keeping with the case. */
    boolean keptWithCase() {
        return words.flag("kept_with_case");
    }

    /** The names of the inputs whose words stand in the content, in its order. */
    List<String> inputNames() {
        return words.entry("inputs").map(inputs -> List.copyOf(inputs.keys())).orElse(List.of());
    }

    /** The inputs of the content in its order: a choice where it has choices, else a yes or no that starts at no. */
    List<Input> inputsOfTheContent() {
        return inputNames().stream().map(name -> input(name).has("choices") ? choice(name) : Input.yesNo(name, input(name).text("label")).startsAt(false))
                .toList();
    }

    Input choice(String name) {
        Entry input = input(name);
        Input choice = Input.choice(name, input.text("label"), input.entries("choices").stream().map(MethodCalculator::choice).toList());
        return choice.hint(input.optionalText("hint").orElse(""));
    }

    Entry input(String name) {
        return words.entry("inputs").flatMap(inputs -> inputs.entry(name)).orElseThrow(() -> words.problem("the input '" + name + "' is missing"));
    }

    /** The points of a posture: those of the choice and those of every addition that was seen. */
    int points(Inputs given, String choice, String... additions) {
        int sum = points.get(choice + "=" + given.choice(choice));
        for (String addition : additions) {
            sum += added(given, addition);
        }
        return sum;
    }

    int added(Inputs given, String addition) {
        return given.yes(addition) ? points.get(addition) : 0;
    }

    /** Puts a method's working into an answer, each value with at most {@code decimals} decimals. */
    static void working(BenchAnswer answer, List<Step> working, int decimals) {
        working.forEach(step -> answer.step(step.what(), step.rule(), Rounded.to(step.value(), decimals), ""));
    }

    private static Choice choice(Entry choice) {
        String sketch = choice.entry("drawing").map(MethodCalculator::sketch).orElse("");
        return new Choice(choice.text("value"), choice.text("label"), choice.optionalText("description").orElse(""), sketch);
    }

    private static String sketch(Entry drawing) {
        List<Double> angles = new ArrayList<>();
        for (String angle : List.of("trunk", "head", "arm", "elbow")) {
            angles.add(drawing.has(angle) ? drawing.number(angle) : 0);
        }
        return PostureSketch.of(new PostureSketch.Posture(angles.get(0), angles.get(1), angles.get(2), angles.get(3), drawing.flag("seated")),
                PostureSketch.Part.valueOf(drawing.text("show").toUpperCase(Locale.ROOT)));
    }
}
