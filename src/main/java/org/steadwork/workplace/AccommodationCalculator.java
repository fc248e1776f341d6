package org.steadwork.workplace;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchGroup;
import org.steadwork.bench.Calculator;
import org.steadwork.bench.Choice;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.workplace.fit.Accommodation;
import org.steadwork.workplace.fit.Deviation;
import org.steadwork.workplace.fit.Lenses;
import org.steadwork.workplace.fit.Sureness;
import org.steadwork.workplace.fit.Targets;

/** Whom a range of furniture serves, on the Bench. */
@ApplicationScoped
class AccommodationCalculator implements Calculator {

    @Inject
    WorkplaceContent content;

    @Override
    public String key() {
        return "accommodation";
    }

    @Override
    public BenchGroup group() {
        return BenchGroup.WORK_PLACE;
    }

    @Override
    public String title() {
        return "Whom furniture serves";
    }

    @Override
    public String question() {
        return "For what share of a population does some setting of this furniture fit, and where do the others fail?";
    }

    @Override
    public List<String> limits() {
        List<String> limits = new ArrayList<>(List.of("For choosing a range of furniture, not for anyone in particular: measure the person.",
                "People are drawn as normal from means, standard deviations and correlations; shoes, sitting posture and clothing are one allowance for all.",
                "A share of people for whom everything can be in range at once is lower than what a maker says of single measures."));
        content.populations().values().forEach(population -> limits.add(population.label() + ": " + population.note()));
        return List.copyOf(limits);
    }

    @Override
    public List<Input> inputs() {
        StationInputs station = new StationInputs(content);
        List<Input> inputs = new ArrayList<>();
        inputs.add(Input.choice("population", "Population", content.populations().values().stream()
                .map(population -> new Choice(population.id(), population.label(), population.note())).toList()));
        inputs.add(Input.number("women", "Women among them", "%", 0, 100, 1).startsAt(50));
        inputs.add(BodyInputs.lenses());
        inputs.add(Input.choice("accepted", "What counts as served", List.of(new Choice("in_range", "Everything in range"),
                new Choice("near_the_edge", "Nothing out of range"))).startsAt("in_range"));
        inputs.add(station.reading(StationMeasure.SEAT_LOW).example(400));
        inputs.add(station.reading(StationMeasure.SEAT_HIGH).example(510));
        inputs.add(station.reading(StationMeasure.DESK_LOW).hint("The same as the highest for a desk that cannot be set.").example(650));
        inputs.add(station.reading(StationMeasure.DESK_HIGH).example(850));
        inputs.addAll(station.readings(StationMeasure.SEAT_STEP, StationMeasure.DESK_STEP, StationMeasure.SEAT_DEPTH_LOW, StationMeasure.SEAT_DEPTH_HIGH, StationMeasure.ARMREST_LOW,
                StationMeasure.ARMREST_HIGH, StationMeasure.FOOTREST_LOW, StationMeasure.FOOTREST_HIGH, StationMeasure.SCREEN_LOW,
                StationMeasure.SCREEN_HIGH, StationMeasure.TOP_THICKNESS, StationMeasure.HOME_ROW));
        inputs.add(Input.whole("people", "People to draw", "", 1000, 100_000).startsAt(20_000));
        return List.copyOf(inputs);
    }

    @Override
    public String standing() {
        return "For the soldiers, shares agree with those counted on the survey's 6,068 people one by one, within 2 percentage points."
                + " The British sizes are partly from memory.";
    }

    @Override
    public List<String> sources() {
        return content.populations().values().stream().map(population -> population.label() + ": " + population.source()).toList();
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        PopulationText population = content.populations().get(given.choice("population"));
        Targets targets = given.choice("accepted").equals("in_range") ? content.targets() : content.targets().loosened();
        Accommodation found = Accommodation.of(population.population(), given.number("women") / 100, given.choice(BodyInputs.LENSES, Lenses.class),
                new StationInputs(content).station(given), targets, given.whole("people"), Sureness.SEED);
        BenchAnswer answer = BenchAnswer.of("Serves " + percent(found.served()) + " % of them; drawing leaves ± "
                + Numerals.number(196 * found.standardError(), 1) + " percentage points (95 %)");
        answer.headline("Served", percent(found.served()), "%").headline("Standard error of drawing", Numerals.number(100 * found.standardError(), 2), "%");
        found.firstFailing().forEach((deviation, share) -> {
            if (found.failing().get(deviation) > 0) {
                answer.step(WorkplaceWords.of(deviation), "off first, in the order of what is kept right, and in brackets off at all, of all people",
                        percent(share) + " (" + percent(found.failing().get(deviation)) + ")", "%");
            }
        });
        return answer.note("Each is fitted for themselves: thighs free first, then feet, elbows, eyes, then the rest. What comes later gives way.")
                .result("people", found.people()).result("served", found.served()).result("standard_error", found.standardError())
                .result("first_failing", shares(found.firstFailing())).result("failing", shares(found.failing()));
    }

    private static String percent(double share) {
        return Numerals.number(100 * share, 1);
    }

    private static Map<String, Object> shares(Map<Deviation, Double> shares) {
        Map<String, Object> shown = new LinkedHashMap<>();
        shares.forEach((deviation, share) -> shown.put(FitContent.key(deviation), share));
        return shown;
    }
}
