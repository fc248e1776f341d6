package org.steadwork.workplace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.workplace.fit.BodyDimension;
import org.steadwork.workplace.fit.BodyEstimate;
import org.steadwork.workplace.fit.BodyMeasure;
import org.steadwork.workplace.fit.Criterion;
import org.steadwork.workplace.fit.OutsideSurvey;

/** The form of an assessment, ready to be shown. */
record WorkplaceFields(Form form, String action, String title, List<PersonField> person, List<StationFields> chair, List<StationFields> desk,
        List<StationFields> screen, List<CriterionFields> criteria, RegisteredPlace place) {

    private static final List<Option> LENSES = List.of(new Option("single_or_none", "None, or single vision"),
            new Option("progressive", "Progressive, bifocal or trifocal"));
    private static final List<Option> GRADES = List.of(new Option("fits", "Fits"), new Option("partly", "Partly"),
            new Option("does_not_fit", "Does not fit"), new Option("not_asked", "Not looked at"));

    /** One measure of the person. {@code estimate} says what stature would give, or null. */
    record PersonField(String key, String label, String hint, String unit, boolean estimable, String estimate, boolean asksTwice) {
    }

    static WorkplaceFields of(Form form, String action, String title, WorkplaceContent content, BodyForm body, RegisteredPlace place) {
        List<PersonField> person = new ArrayList<>();
        for (BodyMeasure measure : BodyMeasure.values()) {
            MeasureText text = content.text(measure);
            Optional<String> estimate = estimate(form, body, measure);
            boolean estimable = BodyDimension.of(measure).isPresent();
            person.add(new PersonField(text.key(), text.label(), text.how(), text.unit(), estimable, estimate.orElse(null), body.asksTwice(form, measure)));
        }
        return new WorkplaceFields(form, action, title, person, StationFields.of("chair", content, place.known()),
                StationFields.of("desk", content, place.known()), StationFields.of("screen", content, place.known()),
                CriterionFields.of(content.criteria()), place);
    }

    private static Optional<String> estimate(Form form, BodyForm body, BodyMeasure measure) {
        OptionalDouble stature = body.number(form, BodyMeasure.STATURE);
        if (stature.isEmpty()) {
            return Optional.empty();
        }
        try {
            Optional<BodyEstimate> estimate = body.estimate(measure, stature.getAsDouble(), body.number(form, BodyMeasure.BODY_MASS));
            return estimate.map(found -> Numerals.mm(found.value() - body.slump(measure)) + " ± " + Numerals.mm(found.halfWidth95()));
        } catch (OutsideSurvey outside) {
            return Optional.empty();
        }
    }

    /** Tells whether the register or the assessment itself has sizes that were only told. */
    public boolean someTold() {
        return !place.told().isEmpty() || form.is(ToldSizes.SOME, "yes");
    }

    public List<Option> lenses() {
        return LENSES;
    }

    public List<Option> grades() {
        return GRADES;
    }

    /** Says under a measured criterion what to aim at. */
    public String hint(Criterion criterion) {
        String known = place.known().get(criterion.id());
        return criterion.measured() + ". Aim: " + criterion.target() + "." + (known == null ? "" : " Register: " + known + ".");
    }
}
