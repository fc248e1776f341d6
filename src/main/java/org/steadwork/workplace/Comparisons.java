package org.steadwork.workplace;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.steadwork.workplace.fit.BodyMeasure;
import org.steadwork.workplace.fit.Criterion;
import org.steadwork.workplace.fit.CriterionResult;
import org.steadwork.workplace.fit.Verdict;

/** Holds two assessments of one case against each other. */
@ApplicationScoped
class Comparisons {

    private static final List<Verdict> FROM_WORST = List.of(Verdict.OUT_OF_RANGE, Verdict.NEAR_THE_EDGE, Verdict.IN_RANGE);

    private static final String AS_BEFORE = "as before";

    @Inject
    WorkplaceContent content;

    @Inject
    DeskDrawing drawing;

    Comparison of(RecordedWorkplace from, RecordedWorkplace to, List<WorkplaceAssessment> looks) {
        Map<String, CriterionResult> before = from.results().stream().collect(Collectors.toMap(r -> r.criterion().id(), Function.identity()));
        List<Comparison.DeviationRow> changed = new ArrayList<>();
        List<Comparison.DeviationRow> same = new ArrayList<>();
        int better = 0;
        int worse = 0;
        int unknown = 0;
        for (CriterionResult after : to.results()) {
            CriterionResult was = before.get(after.criterion().id());
            if (was.verdict() == Verdict.NOT_LOOKED_AT && after.verdict() == Verdict.NOT_LOOKED_AT) {
                continue;
            }
            Comparison.DeviationRow row = row(was, after);
            (row.course().equals(AS_BEFORE) ? same : changed).add(row);
            int moved = moved(was, after);
            boolean oneUnknown = was.verdict() == Verdict.NOT_LOOKED_AT || after.verdict() == Verdict.NOT_LOOKED_AT;
            unknown += oneUnknown ? 1 : 0;
            better += moved > 0 ? 1 : 0;
            worse += moved < 0 ? 1 : 0;
        }
        return new Comparison(from.assessment(), to.assessment(), looks, lead(better, worse, unknown), changed, same, settings(from, to), measures(from, to),
                drawing.found(from), drawing.found(to));
    }

    private static String lead(int better, int worse, int unknown) {
        String known = better + worse == 0 ? "No verdict changed where both looked." : "Of what both looked at, " + better + (better == 1 ? " is" : " are")
                + " better and " + worse + (worse == 1 ? " is" : " are") + " worse than before.";
        return unknown == 0 ? known : known + " " + unknown + (unknown == 1 ? " was" : " were") + " looked at only once: that is neither better nor worse.";
    }

    /** More than 0: in a better band; less: in a worse one; 0: the same, or one of the two is not known. */
    private static int moved(CriterionResult was, CriterionResult after) {
        if (was.verdict() == Verdict.NOT_LOOKED_AT || after.verdict() == Verdict.NOT_LOOKED_AT) {
            return 0;
        }
        return Integer.compare(FROM_WORST.indexOf(after.verdict()), FROM_WORST.indexOf(was.verdict()));
    }

    private static Comparison.DeviationRow row(CriterionResult was, CriterionResult after) {
        Criterion criterion = after.criterion();
        boolean both = !Double.isNaN(was.deviation()) && !Double.isNaN(after.deviation());
        return new Comparison.DeviationRow(criterion.label(), shown(was), WorkplaceWords.state(was.verdict()), WorkplaceWords.of(was.verdict()), shown(after),
                WorkplaceWords.state(after.verdict()), WorkplaceWords.of(after.verdict()),
                both ? FindingLives.signed(criterion, after.deviation() - was.deviation()) : "–", course(was, after));
    }

    private static String shown(CriterionResult result) {
        return Double.isNaN(result.deviation()) ? "–" : FindingLives.signed(result.criterion(), result.deviation());
    }

    private static String course(CriterionResult was, CriterionResult after) {
        if (was.verdict() == Verdict.NOT_LOOKED_AT) {
            return "looked at only the second time";
        }
        if (after.verdict() == Verdict.NOT_LOOKED_AT) {
            return "looked at only the first time";
        }
        int moved = moved(was, after);
        if (moved == 0) {
            double nearer = Math.abs(was.deviation()) - Math.abs(after.deviation());
            return Double.isNaN(nearer) || Math.abs(nearer) < 0.05 ? AS_BEFORE : nearer > 0 ? "same band, nearer" : "same band, further off";
        }
        return moved > 0 ? "better" : "worse";
    }

    private List<Comparison.ValueRow> settings(RecordedWorkplace from, RecordedWorkplace to) {
        Map<String, String> labels = new LinkedHashMap<>();
        for (StationMeasure measure : StationMeasure.values()) {
            labels.put(measure.key(), StationFields.fullLabel(content, measure));
        }
        return values(labels, from, to, "mm");
    }

    private List<Comparison.ValueRow> measures(RecordedWorkplace from, RecordedWorkplace to) {
        List<Comparison.ValueRow> rows = new ArrayList<>();
        for (BodyMeasure measure : BodyMeasure.values()) {
            MeasureText text = content.text(measure);
            rows.addAll(values(Map.of(text.key(), text.label()), from, to, text.unit()));
        }
        return rows;
    }

    /** What differs, or was taken only once; what stayed the same is left out. */
    private static List<Comparison.ValueRow> values(Map<String, String> labels, RecordedWorkplace from, RecordedWorkplace to, String unit) {
        List<Comparison.ValueRow> rows = new ArrayList<>();
        labels.forEach((key, label) -> {
            Taken was = from.taken().get(key);
            Taken now = to.taken().get(key);
            boolean differs = was == null ? now != null : now == null || was.amount().compareTo(now.amount()) != 0 || was.how() != now.how();
            if (differs) {
                rows.add(new Comparison.ValueRow(label, words(was, unit), words(now, unit), was == null || now == null ? "–"
                        : Numerals.signedWith(now.amount().subtract(was.amount()).doubleValue(), unit) + "\u00a0" + unit));
            }
        });
        return rows;
    }

    private static String words(Taken taken, String unit) {
        return taken == null ? "not looked at" : Numerals.with(taken.amount().doubleValue(), unit) + ", " + WorkplaceWords.of(taken.how());
    }
}
