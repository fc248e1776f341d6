package org.steadwork.workplace;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import org.steadwork.casefile.CaseFile;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.workplace.fit.Criterion;
import org.steadwork.workplace.fit.Grade;
import org.steadwork.workplace.fit.How;
import org.steadwork.workplace.fit.Lenses;
import org.steadwork.workplace.fit.Part;

/** An assessment as typed. */
record AssessmentForm(LocalDate assessedOn, String place, Lenses lenses, boolean laptopAlone, BigDecimal hoursAtScreen,
        Integer longestSpellMinutes, String breaks, String notes, Map<String, Taken> taken, Map<String, Grade> grades) {

    static AssessmentForm read(Form form, WorkplaceContent content, CaseFile file, LocalDate today, ToldSizes told) {
        LocalDate assessedOn = form.requiredDate("assessedOn", "Assessed on");
        if (assessedOn != null && (assessedOn.isBefore(file.openedOn()) || assessedOn.isAfter(today))) {
            form.error("assessedOn", "The work place was assessed between the opening of the case, " + Dates.shown(file.openedOn())
                    + ", and today. You entered " + Dates.shown(assessedOn) + ".");
        }
        Lenses lenses = form.choice("lenses", "Glasses at the screen", Lenses.class);
        Map<String, Taken> taken = new LinkedHashMap<>(new BodyForm(content, file.patient().sex()).read(form));
        readStation(form, content, taken);
        readCriteria(form, content, taken);
        told.keep(form, taken);
        boolean laptopAlone = form.ticked("laptopAlone");
        if (laptopAlone && !form.has("laptop_top")) {
            form.error("laptop_top", "How high is the top of the laptop's screen above the desk? Without it the laptop cannot be judged.");
        }
        return new AssessmentForm(assessedOn, form.text("place", 200), lenses == null ? Lenses.SINGLE_OR_NONE : lenses, laptopAlone,
                form.decimal("hoursAtScreen", "Hours at the screen a day", BigDecimal.ZERO, BigDecimal.valueOf(24), 1, "h"),
                form.integer("longestSpell", "Longest unbroken run", 0, 1440), form.text("breaks", 300), form.text("notes", 4000), taken,
                readGrades(form, content));
    }

    private static void readStation(Form form, WorkplaceContent content, Map<String, Taken> taken) {
        for (StationMeasure measure : StationMeasure.values()) {
            StationText text = content.text(measure);
            BigDecimal typed = form.decimal(text.key(), StationFields.fullLabel(content, measure), BigDecimal.valueOf(text.range().low()).stripTrailingZeros(),
                    BigDecimal.valueOf(text.range().high()).stripTrailingZeros(), 1, text.unit());
            if (typed != null) {
                taken.put(text.key(), content.measured(text.key(), typed));
            }
        }
        for (Part part : Part.values()) {
            StationMeasure.of(part, StationMeasure.Role.LOW)
                    .ifPresent(low -> checkRange(form, content, taken, low, StationMeasure.of(part, StationMeasure.Role.HIGH).orElseThrow()));
        }
    }

    private static void checkRange(Form form, WorkplaceContent content, Map<String, Taken> taken, StationMeasure low, StationMeasure high) {
        Taken from = taken.get(low.key());
        Taken to = taken.get(high.key());
        if (from != null && to == null && form.error(high.key()) == null) {
            form.error(high.key(), StationFields.fullLabel(content, high) + " is missing. Enter both ends of the range; the same number twice when it is fixed.");
        } else if (to != null && from == null && form.error(low.key()) == null) {
            form.error(low.key(), StationFields.fullLabel(content, low) + " is missing. Enter both ends of the range; the same number twice when it is fixed.");
        } else if (from != null && to != null && from.amount().compareTo(to.amount()) > 0) {
            form.error(high.key(), StationFields.fullLabel(content, high) + " must not be below the lowest. You entered " + from.amount().toPlainString()
                    + " and " + to.amount().toPlainString() + " mm.");
        }
    }

    private static void readCriteria(Form form, WorkplaceContent content, Map<String, Taken> taken) {
        for (Criterion criterion : content.criteria()) {
            if (CriterionFields.typed(criterion)) {
                boolean signed = criterion.bands().amber().low() < 0;
                BigDecimal typed = form.decimal(criterion.id(), criterion.label(), BigDecimal.valueOf(signed ? -CriterionFields.most(criterion) : 0),
                        BigDecimal.valueOf(CriterionFields.most(criterion)), 1, criterion.unit());
                if (typed != null) {
                    taken.put(criterion.id(), content.measured(criterion.id(), typed));
                }
            }
        }
    }

    private static Map<String, Grade> readGrades(Form form, WorkplaceContent content) {
        Map<String, Grade> grades = new LinkedHashMap<>();
        for (Criterion criterion : content.criteria()) {
            if (criterion.kind() == Criterion.Kind.OBSERVED) {
                Grade grade = form.choice(criterion.id(), criterion.label(), Grade.class);
                if (grade != null && grade != Grade.NOT_ASKED) {
                    grades.put(criterion.id(), grade);
                }
            }
        }
        return grades;
    }

    void putInto(WorkplaceAssessment assessment) {
        assessment.assessedOn(assessedOn);
        assessment.looksAt(place, lenses, laptopAlone, notes);
        assessment.dayIs(hoursAtScreen, longestSpellMinutes, breaks);
    }

    static Form fresh(LocalDate today, WorkplaceContent content) {
        Form form = Form.empty().with("assessment", "").with("version", "").with("assessedOn", Dates.shown(today)).with("lenses", "single_or_none");
        content.criteria().stream().filter(c -> c.kind() == Criterion.Kind.OBSERVED).forEach(c -> form.with(c.id(), "not_asked"));
        return form;
    }

    /** Puts what is stored into the form; for a new look at the work place the measures of the person are taken over. */
    static Form show(RecordedWorkplace recorded, WorkplaceContent content) {
        WorkplaceAssessment assessment = recorded.assessment();
        Form form = fresh(assessment.assessedOn(), content).with("assessment", assessment.id()).with("version", assessment.version())
                .with("place", assessment.place()).with("lenses", FitContent.key(assessment.lenses()))
                .with("hoursAtScreen", plain(assessment.hoursAtScreen())).with("longestSpell", assessment.longestSpellMinutes())
                .with("breaks", assessment.breaks()).with("notes", assessment.notes())
                .with("desk", assessment.desk() == null ? null : assessment.desk().id())
                .with("chair", assessment.chair() == null ? null : assessment.chair().id());
        if (assessment.laptopAlone()) {
            form.with("laptopAlone", "yes");
        }
        recorded.taken().forEach((key, value) -> {
            if (value.how() == How.ESTIMATED) {
                form.with(key + BodyForm.ESTIMATE, "yes");
            } else {
                form.with(key, RepeatedReadings.shown(value));
            }
            if (value.how() == How.TOLD) {
                form.with(ToldSizes.SOME, "yes");
            }
            if (value.twice()) {
                form.with(key + BodyForm.TWICE, "yes");
            }
        });
        recorded.grades().forEach((criterion, grade) -> form.with(criterion, FitContent.key(grade)));
        return form;
    }

    private static String plain(BigDecimal value) {
        return value == null ? null : value.stripTrailingZeros().toPlainString();
    }
}
