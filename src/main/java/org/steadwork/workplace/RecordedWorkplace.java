package org.steadwork.workplace;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steadwork.workplace.fit.Assessor;
import org.steadwork.workplace.fit.BodyMeasure;
import org.steadwork.workplace.fit.CriterionResult;
import org.steadwork.workplace.fit.FitModel;
import org.steadwork.workplace.fit.FitResult;
import org.steadwork.workplace.fit.FitSolver;
import org.steadwork.workplace.fit.Grade;
import org.steadwork.workplace.fit.How;
import org.steadwork.workplace.fit.Measurement;
import org.steadwork.workplace.fit.Person;
import org.steadwork.workplace.fit.Sureness;
import org.steadwork.workplace.fit.Workstation;

/** An assessment with all that was recorded for it, as the fit takes it: the person, the work place, what was seen. */
final class RecordedWorkplace {

    /** Key of the longest unbroken run at the screen, which stands on the assessment itself. */
    static final String LONGEST_SPELL = "longest_spell";

    private final WorkplaceAssessment assessment;
    private final Map<String, Taken> taken;
    private final Map<String, Grade> grades;
    private final WorkplaceContent content;
    private final Person person;
    private final Workstation station;
    private final List<CriterionResult> results;
    private final Optional<FitResult> fit;
    private Optional<Sureness> sureness;

    RecordedWorkplace(WorkplaceAssessment assessment, Map<String, Taken> taken, Map<String, Grade> grades, WorkplaceContent content) {
        this.assessment = assessment;
        this.taken = taken;
        this.grades = grades;
        this.content = content;
        this.person = readPerson();
        this.station = readStation();
        this.results = new Assessor(content.criteria(), content.targets()).judge(found());
        this.fit = FitSolver.missing(person, station).none() ? Optional.of(FitSolver.solve(person, station, content.targets())) : Optional.empty();
    }

    WorkplaceAssessment assessment() {
        return assessment;
    }

    Map<String, Taken> taken() {
        return taken;
    }

    Map<String, Grade> grades() {
        return grades;
    }

    Person person() {
        return person;
    }

    Workstation station() {
        return station;
    }

    FitModel model() {
        return new FitModel(person, station, content.targets());
    }

    List<CriterionResult> results() {
        return results;
    }

    /** Returns the best settings and what they leave; empty while something it needs was not looked at. */
    Optional<FitResult> fit() {
        return fit;
    }

    /** Returns how sure the fit is; worked out when first asked for, as it draws the body a thousand times. */
    Optional<Sureness> sureness() {
        if (sureness == null) {
            boolean withMass = person.measure(BodyMeasure.BODY_MASS).known();
            sureness = fit.map(result -> Sureness.of(person, station, content.targets(), result,
                    content.correlations(BodyForm.group(assessment.caseFile().patient().sex()), withMass), Sureness.DRAWS, Sureness.SEED));
        }
        return sureness;
    }

    FitSolver.Missing missing() {
        return FitSolver.missing(person, station);
    }

    private Person readPerson() {
        Map<BodyMeasure, Measurement> measures = new EnumMap<>(BodyMeasure.class);
        for (BodyMeasure measure : BodyMeasure.values()) {
            Taken value = taken.get(FitContent.key(measure));
            if (value != null) {
                measures.put(measure, value.measurement());
            }
        }
        return Person.of(measures, assessment.lenses());
    }

    private Workstation readStation() {
        return new StationReadings(measure -> reading(measure, Double.NaN), content.targets().allowances()).station(assessment.laptopAlone());
    }

    private double reading(StationMeasure measure, double otherwise) {
        Taken value = taken.get(measure.key());
        return value == null ? otherwise : value.amount().doubleValue();
    }

    private Assessor.Found found() {
        Map<String, Measurement> measured = new HashMap<>();
        taken.forEach((key, value) -> measured.put(key, value.measurement()));
        if (assessment.longestSpellMinutes() != null) {
            measured.put(LONGEST_SPELL, new Measurement(assessment.longestSpellMinutes(), How.ESTIMATED, 0));
        }
        double tapeError = content.stationGiveOrTake() / Measurement.NORMAL_975;
        return new Assessor.Found(person, station, tapeError, reading(StationMeasure.SCREEN_HEIGHT, Double.NaN), measured, grades);
    }
}
