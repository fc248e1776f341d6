package org.steadwork.workplace;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.steadwork.web.Dates;
import org.steadwork.workplace.WorkplaceView.Group;
import org.steadwork.workplace.WorkplaceView.MeasureRow;
import org.steadwork.workplace.fit.BodyMeasure;
import org.steadwork.workplace.fit.CriterionResult;
import org.steadwork.workplace.fit.FitSolver;
import org.steadwork.workplace.fit.How;
import org.steadwork.workplace.fit.Measurement;
import org.steadwork.workplace.fit.Verdict;

/** Makes the page about the work place from what was recorded. */
@ApplicationScoped
class WorkplaceViews {

    private static final List<Verdict> ORDER = List.of(Verdict.OUT_OF_RANGE, Verdict.NEAR_THE_EDGE);

    @Inject
    WorkplaceContent content;

    @Inject
    Assessments assessments;

    @Inject
    Findings findings;

    @Inject
    DeskDrawing drawing;

    @Inject
    Photos photos;

    @Inject
    RegisterDifferences register;

    /** Takes five queries, however much was recorded. */
    WorkplaceView of(WorkplaceAssessment assessment, List<WorkplaceAssessment> looks) {
        RecordedWorkplace recorded = assessments.recorded(assessment);
        Map<String, Finding> known = new LinkedHashMap<>();
        findings.of(assessment.caseFile().id()).stream().filter(f -> f.assessment().id().equals(assessment.id()))
                .forEach(f -> known.putIfAbsent(f.criterionId(), f));
        FindingRows rows = new FindingRows(recorded, content, known);
        List<FindingRow> shown = recorded.results().stream().filter(r -> r.verdict() != Verdict.NOT_LOOKED_AT)
                .filter(r -> r.verdict() != Verdict.IN_RANGE).sorted(Comparator.comparingInt(r -> ORDER.indexOf(r.verdict()))).map(rows::of).toList();
        List<FindingRow> fitting = recorded.results().stream().filter(r -> r.verdict() == Verdict.IN_RANGE).map(rows::of).toList();
        List<CriterionResult> unseen = recorded.results().stream().filter(r -> r.verdict() == Verdict.NOT_LOOKED_AT).toList();
        FitView fit = new FitView(recorded, content);
        TwoAnswers answers = new TwoAnswers(recorded, content);
        return new WorkplaceView(assessment, looks, looks.get(0).id().equals(assessment.id()), shown, fitting, groups(unseen), unseen.size(), told(recorded),
                fit.settling(), fit.settlingRest(), missing(recorded), fit.steps(), fit.stepsNote(), fit.byHand(), new SurenessWords(recorded).words().orElse(null), fit.room(), fit.gains(),
                fit.shortest(), answers.withWhatIsThere(), answers.withChanges(), measures(recorded), fit.standing(), drawing.page(recorded), drawing.phone(recorded),
                photos.of(assessment.id()), register.of(recorded).size());
    }

    private static List<Group> groups(List<CriterionResult> unseen) {
        Map<String, List<String>> labels = new LinkedHashMap<>();
        unseen.forEach(r -> labels.computeIfAbsent(CriterionFields.title(r.criterion().group()), t -> new ArrayList<>()).add(r.criterion().label()));
        return labels.entrySet().stream().map(group -> new Group(group.getKey(), group.getValue())).toList();
    }

    private List<String> missing(RecordedWorkplace recorded) {
        FitSolver.Missing missing = recorded.missing();
        List<String> words = new ArrayList<>();
        missing.measures().forEach(measure -> words.add(content.text(measure).label()));
        missing.parts().forEach(part -> words.add(WorkplaceWords.of(part)));
        return words;
    }

    private List<MeasureRow> measures(RecordedWorkplace recorded) {
        List<MeasureRow> rows = new ArrayList<>();
        for (BodyMeasure measure : BodyMeasure.values()) {
            MeasureText text = content.text(measure);
            Measurement taken = recorded.person().measure(measure);
            boolean wanted = taken.known() || measure != BodyMeasure.BODY_MASS && measure != BodyMeasure.HIP_BREADTH_SITTING
                    && measure != BodyMeasure.ABDOMINAL_DEPTH_SITTING && measure != BodyMeasure.STANDING_ELBOW_HEIGHT
                    && measure != BodyMeasure.STANDING_EYE_HEIGHT;
            if (wanted) {
                rows.add(taken.known() ? known(recorded, text, taken) : new MeasureRow(text.label(), "–", "–", "not measured", false, List.of()));
            }
        }
        return rows;
    }

    private static List<FindingRow.Fact> measured(Taken value, MeasureText text) {
        List<FindingRow.Fact> facts = new ArrayList<>(List.of(new FindingRow.Fact("Landmark", text.how())));
        if (!value.readings().isEmpty()) {
            double apart = Collections.max(value.readings()).subtract(Collections.min(value.readings())).doubleValue();
            facts.add(new FindingRow.Fact("Readings", value.readings().stream().map(reading -> Numerals.number(reading.doubleValue(), 1)).collect(Collectors.joining("; "))
                    + " " + text.unit() + ". The median counts. They lie " + Numerals.with(apart, text.unit()) + " apart; give or take comes from that, and is never less than careful reading leaves"));
        }
        facts.add(new FindingRow.Fact("Source", text.source()));
        return facts;
    }

    /** Names what somebody told and nobody measured, of the work place. */
    private List<String> told(RecordedWorkplace recorded) {
        List<String> labels = new ArrayList<>();
        for (StationMeasure measure : StationMeasure.values()) {
            Taken value = recorded.taken().get(measure.key());
            if (value != null && value.how() == How.TOLD) {
                labels.add(StationFields.fullLabel(content, measure));
            }
        }
        content.criteria().stream().filter(criterion -> recorded.taken().containsKey(criterion.id()) && recorded.taken().get(criterion.id()).how() == How.TOLD)
                .forEach(criterion -> labels.add(criterion.label()));
        return labels;
    }

    private MeasureRow known(RecordedWorkplace recorded, MeasureText text, Measurement taken) {
        Taken value = recorded.taken().get(text.key());
        boolean estimated = taken.how() == How.ESTIMATED;
        String how = estimated ? "estimated from stature and sex"
                : taken.how() == How.TOLD ? "told, not measured, " + Dates.shown(recorded.assessment().assessedOn())
                : (value.readings().size() > 1 ? "measured " + value.readings().size() + " times" : value.twice() ? "measured twice" : "measured") + ", " + Dates.shown(recorded.assessment().assessedOn());
        List<FindingRow.Fact> working = estimated
                ? List.of(new FindingRow.Fact("Rule", "Linear equation on stature" + (recorded.person().measure(BodyMeasure.BODY_MASS).known()
                        ? " and body mass" : "") + " for " + (recorded.assessment().caseFile().patient().sex().label()) + "; 95 % prediction interval"
                        + (text.measure() == BodyMeasure.EYE_HEIGHT_SITTING ? "; "
                                + Numerals.mm(content.targets().allowances().slump()) + " taken off for sitting as people do" : "")),
                        new FindingRow.Fact("Holds for", "People like those of the survey, aged 17 to 58; other groups lie up to 15 to 40 mm off"),
                        new FindingRow.Fact("Source", "Gordon et al. 2014, NATICK/TR-15/007, our regressions"))
                : measured(value, text);
        return new MeasureRow(text.label(), Numerals.with(taken.value(), text.unit()), Numerals.with(taken.giveOrTake(), text.unit()), how, true, working);
    }
}
