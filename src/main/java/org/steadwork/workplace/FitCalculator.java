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
import org.steadwork.bench.CalculatorRefusal;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.workplace.fit.BodyMeasure;
import org.steadwork.workplace.fit.FitModel;
import org.steadwork.workplace.fit.FitResult;
import org.steadwork.workplace.fit.FitSolver;
import org.steadwork.workplace.fit.Part;
import org.steadwork.workplace.fit.Person;
import org.steadwork.workplace.fit.Sureness;
import org.steadwork.workplace.fit.Workstation;

/** The fit of a seated work place, on the Bench. */
@ApplicationScoped
class FitCalculator implements Calculator {

    @Inject
    WorkplaceContent content;

    @Override
    public String key() {
        return "fit";
    }

    @Override
    public BenchGroup group() {
        return BenchGroup.WORK_PLACE;
    }

    @Override
    public String title() {
        return "Fit of a seated work place";
    }

    @Override
    public String question() {
        return "How should chair, desk and screen be set for this body, what is left, and what would have to be asked for?";
    }

    @Override
    public List<String> limits() {
        return List.of("For typing at a desk; not for wheelchairs, pregnancy, one-handed work or tasks other than the keyboard and screen.",
                "A deviation may contribute to a complaint; none of these bands is a medical or legal limit.",
                "What relieves the person is better than a setting that is right by numbers.",
                "What was left out and cannot be estimated stays unknown; it is not counted as fitting.");
    }

    @Override
    public List<Input> inputs() {
        BodyInputs body = new BodyInputs(content);
        StationInputs station = new StationInputs(content);
        List<Input> inputs = new ArrayList<>(List.of(BodyInputs.sex(), BodyInputs.lenses()));
        inputs.addAll(body.measures(BodyMeasure.STATURE, BodyMeasure.BODY_MASS, BodyMeasure.POPLITEAL_HEIGHT, BodyMeasure.SHOE,
                BodyMeasure.ELBOW_REST_HEIGHT, BodyMeasure.EYE_HEIGHT_SITTING, BodyMeasure.BUTTOCK_POPLITEAL_LENGTH, BodyMeasure.THIGH_CLEARANCE,
                BodyMeasure.ARM_REACH, BodyMeasure.STANDING_ELBOW_HEIGHT, BodyMeasure.STANDING_EYE_HEIGHT));
        inputs.addAll(station.readings(StationMeasure.SEAT_NOW, StationMeasure.SEAT_LOW, StationMeasure.SEAT_HIGH, StationMeasure.SEAT_STEP, StationMeasure.SEAT_DEPTH_NOW,
                StationMeasure.SEAT_DEPTH_LOW, StationMeasure.SEAT_DEPTH_HIGH, StationMeasure.CUSHION_NOW, StationMeasure.ARMREST_NOW,
                StationMeasure.ARMREST_LOW, StationMeasure.ARMREST_HIGH, StationMeasure.FOOTREST_NOW, StationMeasure.FOOTREST_LOW,
                StationMeasure.FOOTREST_HIGH, StationMeasure.DESK_NOW, StationMeasure.DESK_LOW, StationMeasure.DESK_HIGH, StationMeasure.DESK_STEP,
                StationMeasure.TOP_THICKNESS, StationMeasure.HOME_ROW, StationMeasure.SCREEN_TOP_NOW, StationMeasure.SCREEN_LOW,
                StationMeasure.SCREEN_HIGH, StationMeasure.DISTANCE_NOW, StationMeasure.LAPTOP_TOP, StationMeasure.LAPTOP_HOME_ROW));
        return List.copyOf(inputs);
    }

    @Override
    public String standing() {
        return "Eleven cases worked by hand are reproduced, and the settings agree with trying every setting there is. Aims stand in sources;"
                + " nearly all bands and weights are our proposal.";
    }

    @Override
    public List<String> sources() {
        return List.of("Aims: OSHA, CCOHS, AUVA, DGUV, ANSI/HFES 100-2007, EN 527-1, as named at each target in the content",
                "Estimates and how their errors go together: Gordon et al., NATICK/TR-15/007, 2014", "Bands, weights and the order of what counts: proposal of this project");
    }

    /** Worked case 2: a short person at a fixed desk of 740 mm. */
    @Override
    public Map<String, Object> example() {
        Map<String, Object> example = new LinkedHashMap<>();
        example.put("popliteal_height", 355);
        example.put("shoe", 20);
        example.put("elbow_rest_height", 200);
        example.put("eye_height_sitting", 690);
        example.put("buttock_popliteal_length", 435);
        example.put("thigh_clearance", 125);
        example.put("seat_low", 400);
        example.put("seat_high", 510);
        example.put("footrest_low", 50);
        example.put("footrest_high", 250);
        example.put("desk_now", 740);
        return example;
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        BodyInputs body = new BodyInputs(content);
        Person person = body.person(given);
        Workstation station = new StationInputs(content).station(given);
        require(FitSolver.missing(person, station));
        FitResult fit = FitSolver.solve(person, station, content.targets());
        Sureness sureness = Sureness.of(person, station, content.targets(), fit,
                content.correlations(body.group(given), given.has(FitContent.key(BodyMeasure.BODY_MASS))), Sureness.DRAWS, Sureness.SEED);
        return new FitAnswer(new FitModel(person, station, content.targets()), fit, sureness, content).answer();
    }

    private void require(FitSolver.Missing missing) {
        for (BodyMeasure measure : missing.measures()) {
            String label = content.text(measure).label();
            throw CalculatorRefusal.at(FitContent.key(measure), label + " is missing. Enter it, or a stature to estimate it from.", "", "a length in mm");
        }
        for (Part part : missing.parts()) {
            StationMeasure now = StationMeasure.of(part, StationMeasure.Role.NOW).orElseThrow();
            throw CalculatorRefusal.at(now.key(), WorkplaceWords.of(part) + " is missing. Enter how it is set now, or its lowest and highest setting.", "",
                    "a length in mm");
        }
    }
}
