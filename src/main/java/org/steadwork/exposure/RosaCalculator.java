package org.steadwork.exposure;

import jakarta.inject.Singleton;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchAnswer.Mark;
import org.steadwork.bench.Choice;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.exposure.method.Rosa;

/** Rapid office strain assessment from what is seen of chair and devices; the items and their points come from the content. */
@Singleton
class RosaCalculator extends MethodCalculator {

    private static final List<String> CHAIR = List.of("seat_height", "seat_depth", "armrest", "backrest");
    private static final List<String> DEVICES = List.of("monitor", "telephone", "mouse", "keyboard");
    private static final String NOT_USED = "not_used";
    /** The charts end here; keyboard, mouse and screen can reach one more by their points. */
    private static final Map<String, Integer> CHART_ENDS = Map.of("monitor", 7, "telephone", 6, "mouse", 7, "keyboard", 7);

    private final Rosa rosa = ExposureContent.rosa();
    private final Map<String, List<Choice>> bases = new LinkedHashMap<>();
    private final Map<String, List<Choice>> additions = new LinkedHashMap<>();
    private final Map<String, Integer> points = new HashMap<>();
    private final List<Choice> times = new ArrayList<>();

    RosaCalculator() {
        super("rosa");
        for (Entry row : Content.csv("exposure/rosa-factors.csv")) {
            String item = row.text("item");
            Choice choice = new Choice(row.text("code"), capital(row.text("option")));
            points.put(item + "=" + choice.value(), row.integer("points"));
            if (item.equals("duration")) {
                times.add(choice);
            } else {
                (row.text("kind").equals("base") ? bases : additions).computeIfAbsent(item, key -> new ArrayList<>()).add(choice);
            }
        }
    }

    @Override
    public List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        CHAIR.forEach(item -> add(inputs, item, List.of()));
        inputs.add(time("chair"));
        for (String item : DEVICES) {
            add(inputs, item, item.equals("monitor") ? List.of() : List.of(new Choice(NOT_USED, "Not used")));
            inputs.add(time(item));
        }
        return inputs;
    }

    private void add(List<Input> inputs, String item, List<Choice> more) {
        List<Choice> choices = new ArrayList<>(bases.get(item));
        choices.addAll(more);
        inputs.add(Input.choice(item, input(item).text("label"), choices));
        additions.get(item).forEach(addition -> inputs.add(Input.yesNo(item + "_" + addition.value(), addition.label() + "?").startsAt(false)));
    }

    private Input time(String item) {
        String name = item + "_time";
        return Input.choice(name, input(name).text("label"), times).startsAt("middle");
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        Map<String, Integer> scores = new LinkedHashMap<>();
        CHAIR.forEach(item -> scores.put(item, sum(given, item)));
        DEVICES.forEach(item -> scores.put(item, device(given, item)));
        int chairTime = points.get("duration=" + given.choice("chair_time"));
        Rosa.Result result = rosa.of(new Rosa.Station(scores.get("seat_height"), scores.get("seat_depth"), scores.get("armrest"), scores.get("backrest"), chairTime,
                scores.get("monitor"), scores.get("telephone"), scores.get("mouse"), scores.get("keyboard")));
        BenchAnswer answer = BenchAnswer.of(result.band()).marked(result.score() >= Rosa.ACT ? Mark.OUT : result.score() >= 3 ? Mark.EDGE : Mark.IN)
                .headline("Final score", String.valueOf(result.score()), "of 10");
        scores.forEach((item, score) -> answer.step(input(item).text("label"), CHAIR.contains(item) ? "what is seen and what is added"
                : "what is seen, what is added and the time; 0 when not used", String.valueOf(score), ""));
        working(answer, result.working(), 0);
        return answer.note("The charts are from memory.").result("score", result.score()).result("chair", result.chair()).result("peripherals", result.peripherals())
                .result("items", scores);
    }

    private int device(Inputs given, String item) {
        if (given.choice(item).equals(NOT_USED)) {
            return 0;
        }
        int score = sum(given, item) + points.get("duration=" + given.choice(item + "_time"));
        return Math.max(0, Math.min(CHART_ENDS.get(item), score));
    }

    private int sum(Inputs given, String item) {
        return points.get(item + "=" + given.choice(item)) + additions.get(item).stream().filter(addition -> given.yes(item + "_" + addition.value()))
                .mapToInt(addition -> points.get(item + "=" + addition.value())).sum();
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
