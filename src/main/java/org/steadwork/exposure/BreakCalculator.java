package org.steadwork.exposure;

import jakarta.inject.Singleton;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchAnswer.Mark;
import org.steadwork.bench.CalculatorRefusal;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.exposure.method.ScreenDay;

/** The screen runs of a working day on the Bench. */
@Singleton
class BreakCalculator extends MethodCalculator {

    private static final int MOST_BREAKS = 20;

    BreakCalculator() {
        super("screen-breaks");
    }

    @Override
    public List<Input> inputs() {
        return List.of(Input.time("start", "Screen work begins").example("09:00"), Input.time("end", "Screen work ends").example("17:00"),
                Input.rows("breaks", "Times off the screen", 0, MOST_BREAKS, List.of(Input.time("from", "From"), Input.time("to", "To")))
                        .hint("In the order of the day. Count what is away from the screen and in another posture.")
                        .example(List.of(Map.of("from", "10:00", "to", "10:10"), Map.of("from", "12:30", "to", "13:15"))));
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        LocalTime start = given.time("start");
        LocalTime end = given.time("end");
        if (!start.isBefore(end)) {
            throw CalculatorRefusal.at(given.path("end"), "Screen work ends after it begins. It begins at " + start + ".", end, "a time after " + start);
        }
        List<ScreenDay.Off> off = new ArrayList<>();
        LocalTime at = start;
        for (Inputs row : given.rows("breaks")) {
            LocalTime from = row.time("from");
            LocalTime to = row.time("to");
            if (from.isBefore(at)) {
                throw CalculatorRefusal.at(row.path("from"), "Breaks stand in their order within the day: this one may begin at " + at + " or later.", from,
                        "a time from " + at);
            }
            if (!from.isBefore(to) || to.isAfter(end)) {
                throw CalculatorRefusal.at(row.path("to"), "A break ends after it begins and by the end of the day, " + end + ".", to,
                        "a time after " + from + ", at most " + end);
            }
            off.add(new ScreenDay.Off(from, to));
            at = to;
        }
        return answer(ScreenDay.of(start, end, off));
    }

    private static BenchAnswer answer(ScreenDay.Result result) {
        BenchAnswer answer = switch (result.band()) {
            case IN_RANGE -> BenchAnswer.of("In range: no run is longer than an hour").marked(Mark.IN);
            case NEAR_THE_EDGE -> BenchAnswer.of("Near the edge: a run is longer than an hour").marked(Mark.EDGE);
            case OUT_OF_RANGE -> BenchAnswer.of("Out of range: a run is longer than an hour and a half").marked(Mark.OUT);
        };
        answer.headline("Longest run", String.valueOf(result.longest()), "min").headline("Screen time", String.valueOf(result.total()), "min");
        for (int i = 0; i < result.runs().size(); i++) {
            answer.step("Run " + (i + 1), "screen time since the last break of five minutes or more", String.valueOf(result.runs().get(i)), "min");
        }
        return answer.result("longest", result.longest()).result("total", result.total()).result("runs", result.runs())
                .result("band", result.band().name().toLowerCase(Locale.ROOT));
    }
}
