package org.steadwork.workplace;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchAnswer.Mark;
import org.steadwork.bench.BenchGroup;
import org.steadwork.bench.Calculator;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.workplace.fit.BodyMeasure;
import org.steadwork.workplace.fit.Part;
import org.steadwork.workplace.fit.Person;
import org.steadwork.workplace.fit.Settings;
import org.steadwork.workplace.fit.SharedDesk;
import org.steadwork.workplace.fit.Travel;
import org.steadwork.workplace.fit.Workstation;

/** One desk for several people, on the Bench. */
@ApplicationScoped
class SharedDeskCalculator implements Calculator {

    private static final int MOST_PEOPLE = 12;

    @Inject
    WorkplaceContent content;

    @Override
    public String key() {
        return "shared-desk";
    }

    @Override
    public BenchGroup group() {
        return BenchGroup.WORK_PLACE;
    }

    @Override
    public String title() {
        return "One desk for several people";
    }

    @Override
    public String question() {
        return "How does each set it, what can they share, and who is left out?";
    }

    @Override
    public List<String> limits() {
        return List.of("For typing at a desk, with a chair that each sets for themselves; a footrest that is not there is taken as obtainable.",
                "The shared height is chosen first, then one footrest, then one height of the screen; another order may share differently.",
                "None of these bands is a medical or legal limit.");
    }

    @Override
    public List<Input> inputs() {
        BodyInputs body = new BodyInputs(content);
        StationInputs station = new StationInputs(content);
        List<Input> columns = new ArrayList<>(List.of(required(body.measure(BodyMeasure.POPLITEAL_HEIGHT)), required(body.measure(BodyMeasure.ELBOW_REST_HEIGHT))));
        columns.addAll(body.measures(BodyMeasure.EYE_HEIGHT_SITTING, BodyMeasure.THIGH_CLEARANCE, BodyMeasure.SHOE));
        columns.add(BodyInputs.lenses());
        List<Input> inputs = new ArrayList<>();
        inputs.add(Input.rows("people", "People", 1, MOST_PEOPLE, columns)
                .example(List.of(Map.of("popliteal_height", 370, "elbow_rest_height", 230, "eye_height_sitting", 710, "thigh_clearance", 135, "shoe", 20),
                        Map.of("popliteal_height", 470, "elbow_rest_height", 265, "eye_height_sitting", 830, "thigh_clearance", 170, "shoe", 25))));
        inputs.add(station.reading(StationMeasure.SEAT_LOW).example(400));
        inputs.add(station.reading(StationMeasure.SEAT_HIGH).example(520));
        inputs.add(station.reading(StationMeasure.DESK_LOW).hint("The same as the highest for a desk that cannot be set.").example(680));
        inputs.add(station.reading(StationMeasure.DESK_HIGH).example(820));
        inputs.addAll(station.readings(StationMeasure.SEAT_STEP, StationMeasure.DESK_STEP, StationMeasure.FOOTREST_LOW, StationMeasure.FOOTREST_HIGH, StationMeasure.SCREEN_LOW, StationMeasure.SCREEN_HIGH,
                StationMeasure.TOP_THICKNESS, StationMeasure.HOME_ROW));
        return List.copyOf(inputs);
    }

    private static Input required(Input optional) {
        return Input.number(optional.name(), optional.label(), optional.unit(), optional.least().doubleValue(), optional.most().doubleValue(), 1)
                .hint(optional.hint());
    }

    @Override
    public String standing() {
        return "Two people worked by hand are reproduced; settings agree with trying every setting there is. Nearly all bands and weights are our proposal.";
    }

    @Override
    public List<String> sources() {
        return List.of("Aims: OSHA, CCOHS, AUVA, DGUV, ANSI/HFES 100-2007, EN 527-1, as named at each target in the content",
                "Bands, weights and the order of sharing: proposal of this project");
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        BodyInputs body = new BodyInputs(content);
        List<Person> people = given.rows("people").stream().map(body::person).toList();
        Workstation station = new StationInputs(content).station(given);
        Travel heights = station.travel(Part.DESK).orElseThrow();
        SharedDesk shared = SharedDesk.of(people, station, content.targets(), heights);
        long leftOut = shared.fixed().leftOut();
        BenchAnswer answer = BenchAnswer.of(leftOut == 0 ? "One height serves everyone, near the edge at worst" : leftOut + " of " + people.size()
                + " would be left out at one height").marked(leftOut == 0 ? Mark.IN : Mark.OUT);
        answer.headline("Best shared height", Numerals.number(shared.fixed().height(), 0), "mm");
        shared.footrest().ifPresent(one -> answer.headline("One footrest", Numerals.number(one.height(), 0), "mm"));
        shared.screen().ifPresent(one -> answer.headline("One screen top above the desk", Numerals.number(one.height(), 0), "mm"));
        steps(answer, "set for oneself", shared.own());
        steps(answer, "desk at the shared height", shared.fixed().places());
        shared.footrest().ifPresent(one -> steps(answer, "and one footrest", one.places()));
        shared.screen().ifPresent(one -> steps(answer, "and one screen height", one.places()));
        return answer.result("unit", "mm").result("own", places(shared.own())).result("shared_height", sharing(shared.fixed()))
                .result("shared_footrest", shared.footrest().map(SharedDeskCalculator::sharing).orElse(null))
                .result("shared_screen", shared.screen().map(SharedDeskCalculator::sharing).orElse(null));
    }

    private static void steps(BenchAnswer answer, String how, List<SharedDesk.Place> places) {
        for (int i = 0; i < places.size(); i++) {
            SharedDesk.Place place = places.get(i);
            Settings at = place.settings();
            String rest = at.footrest() > 0 ? ", footrest " + Numerals.number(at.footrest(), 0) : "";
            String misses = place.misses().isEmpty() ? "all in range" : place.misses().stream().map(WorkplaceWords::of).collect(Collectors.joining("; "));
            answer.step("Person " + (i + 1) + ", " + how, misses, "seat " + Numerals.number(at.seat(), 0) + ", desk " + Numerals.number(at.desk(), 0)
                    + rest + (Double.isNaN(at.screenTop()) ? "" : ", screen top " + Numerals.number(at.screenTop() - at.desk(), 0) + " above the desk"), "mm");
        }
    }

    private static Map<String, Object> sharing(SharedDesk.Sharing sharing) {
        Map<String, Object> shown = new LinkedHashMap<>();
        shown.put("height", sharing.height());
        shown.put("left_out", sharing.leftOut());
        shown.put("people", places(sharing.places()));
        return shown;
    }

    private static List<Map<String, Object>> places(List<SharedDesk.Place> places) {
        List<Map<String, Object>> shown = new ArrayList<>();
        for (SharedDesk.Place place : places) {
            Map<String, Object> one = new LinkedHashMap<>();
            for (Part part : Part.values()) {
                place.settings().of(part).ifPresent(value -> one.put(FitContent.key(part), value));
            }
            List<Map<String, Object>> misses = new ArrayList<>();
            place.misses().forEach(miss -> misses.add(Map.of("deviation", FitContent.key(miss.deviation()), "off", miss.off(), "beyond", miss.beyond(),
                    "verdict", FitContent.key(miss.verdict()))));
            one.put("misses", misses);
            one.put("left_out", place.leftOut());
            shown.add(one);
        }
        return shown;
    }
}
