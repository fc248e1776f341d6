package org.steadwork.workplace;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.steadwork.body.BodyRegion;
import org.steadwork.web.Dates;
import org.steadwork.workplace.FindingRow.Fact;
import org.steadwork.workplace.fit.Assessor;
import org.steadwork.workplace.fit.Band;
import org.steadwork.workplace.fit.BodyMeasure;
import org.steadwork.workplace.fit.Criterion;
import org.steadwork.workplace.fit.CriterionResult;
import org.steadwork.workplace.fit.Deviation;
import org.steadwork.workplace.fit.How;
import org.steadwork.workplace.fit.Measurement;
import org.steadwork.workplace.fit.Settings;
import org.steadwork.workplace.fit.Verdict;
import org.steadwork.workplace.fit.Workstation;

/** Puts the results of an assessment into rows: what was found, on what it rests, and what became of it. */
final class FindingRows {

    private final RecordedWorkplace recorded;
    private final WorkplaceContent content;
    private final Map<String, Finding> findings;

    FindingRows(RecordedWorkplace recorded, WorkplaceContent content, Map<String, Finding> findings) {
        this.recorded = recorded;
        this.content = content;
        this.findings = findings;
    }

    FindingRow of(CriterionResult result) {
        Criterion criterion = result.criterion();
        boolean lowerIsLess = criterion.deviation() == Deviation.SCREEN_DROP;
        double value = lowerIsLess ? -result.value() : result.value();
        Criterion.Bands bands = lowerIsLess && result.bands() != null ? turned(result.bands()) : result.bands();
        boolean number = !Double.isNaN(result.value());
        Finding finding = findings.get(criterion.id());
        return new FindingRow(criterion.id(), criterion.label(), detail(result), how(result),
                number ? BandStrip.of(value, result.giveOrTake(), bands) : null,
                number ? Numerals.signedWith(bands.deviation(value), criterion.unit()) : seen(result),
                number && result.giveOrTake() > 0 ? "± " + Numerals.number(result.giveOrTake(), 0) : null, number ? criterion.unit() : "",
                WorkplaceWords.of(result.verdict()), WorkplaceWords.state(result.verdict()), working(result), regions(criterion),
                finding == null ? null : stage(finding), finding == null ? null : "/cases/" + recorded.assessment().caseFile().id()
                        + "/work-place/findings/" + finding.id());
    }

    /** A screen drop counts downwards; shown, more is higher as for everything else. */
    private static Criterion.Bands turned(Criterion.Bands bands) {
        return new Criterion.Bands(-bands.aim(), new Band(-bands.green().high(), -bands.green().low()),
                new Band(-bands.amber().high(), -bands.amber().low()));
    }

    private static String seen(CriterionResult result) {
        return switch (result.verdict()) {
            case IN_RANGE -> "seen, fits";
            case NEAR_THE_EDGE -> "seen, partly";
            case OUT_OF_RANGE -> "seen, does not fit";
            case NOT_LOOKED_AT -> "";
        };
    }

    private static String how(CriterionResult result) {
        if (result.how() == How.ESTIMATED) {
            BodyMeasure body = result.criterion().deviation() == null ? null : Assessor.bodyMeasure(result.criterion().deviation());
            boolean eye = body == BodyMeasure.EYE_HEIGHT_SITTING || result.criterion().kind() == Criterion.Kind.GAZE;
            return eye ? "estimated eye" : body == null ? "asked" : "estimated";
        }
        return result.how() == How.NOT_LOOKED_AT ? "" : WorkplaceWords.of(result.how());
    }

    static String stage(Finding finding) {
        String with = finding.stage() == FindingStage.AGREED ? " with " + finding.agreedWith() : "";
        return WorkplaceWords.capital(finding.stage().label()) + with + ", " + Dates.shown(finding.stageOn());
    }

    private static String regions(Criterion criterion) {
        String regions = criterion.regions().stream().map(key -> BodyRegion.of(key).label().toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(", "));
        return criterion.also().isEmpty() ? regions : regions.isEmpty() ? criterion.also() : regions + ", " + criterion.also();
    }

    private String detail(CriterionResult result) {
        Criterion criterion = result.criterion();
        if (Double.isNaN(result.value())) {
            return criterion.target();
        }
        String value = Numerals.with(result.value(), criterion.unit());
        if (criterion.deviation() == null) {
            return value + "; aim " + aim(result.bands(), criterion.unit());
        }
        Workstation station = recorded.station();
        Settings at = station.present();
        double elbow = at.seat() + body(BodyMeasure.ELBOW_REST_HEIGHT);
        return switch (criterion.deviation()) {
            case FEET -> "Seat " + Numerals.mm(at.seat()) + ", leg and shoe " + Numerals.mm(at.seat() - at.footrest() - result.value())
                    + (at.footrest() > 0 ? ", footrest " + Numerals.mm(at.footrest()) : "");
            case ELBOW -> "Home row " + Numerals.mm(at.desk() + station.homeRow()) + ", elbow " + Numerals.mm(elbow);
            case CLEARANCE -> "Underside " + Numerals.mm(at.desk() - station.topThickness()) + ", thigh "
                    + Numerals.mm(at.seat() + body(BodyMeasure.THIGH_CLEARANCE));
            case SCREEN_DROP -> "Eye " + Numerals.mm(at.seat() + body(BodyMeasure.EYE_HEIGHT_SITTING)) + ", screen top " + Numerals.mm(at.screenTop())
                    + "; aim " + Numerals.mm(result.bands().aim()) + " below" + accepted(result);
            case ARMREST -> "Armrest " + Numerals.mm(at.armrest()) + ", elbow " + Numerals.mm(body(BodyMeasure.ELBOW_REST_HEIGHT)) + " above the seat";
            case KNEE_GAP, DISTANCE -> value + "; aim " + aim(result.bands(), criterion.unit());
        };
    }

    private static String accepted(CriterionResult result) {
        boolean onItsOwn = Verdict.of(result.value(), result.bands().green(), result.bands().amber()) == result.verdict();
        return onItsOwn ? "" : ". Low, accepted because the gaze to its centre is in range";
    }

    private double body(BodyMeasure measure) {
        return recorded.person().measure(measure).value();
    }

    static String aim(Criterion.Bands bands, String unit) {
        Band green = bands.green();
        if (Double.isInfinite(green.low())) {
            return Numerals.with(green.high(), unit) + " or less";
        }
        if (Double.isInfinite(green.high())) {
            return Numerals.with(green.low(), unit) + " or more";
        }
        return Numerals.number(green.low(), 1) + " to " + Numerals.with(green.high(), unit);
    }

    private List<Fact> working(CriterionResult result) {
        Criterion criterion = result.criterion();
        List<Fact> facts = new ArrayList<>();
        if (criterion.deviation() != null && result.verdict() != Verdict.NOT_LOOKED_AT) {
            BodyMeasure body = Assessor.bodyMeasure(criterion.deviation());
            if (body != null) {
                Measurement taken = recorded.person().measure(body);
                facts.add(new Fact("Rests on", content.text(body).label() + ": " + Numerals.mm(taken.value()) + " ± "
                        + Numerals.mm(taken.giveOrTake()) + ", " + WorkplaceWords.of(taken.how())));
            }
        }
        if (criterion.deviation() != null) {
            recorded.sureness().map(sureness -> sureness.now().get(criterion.deviation()))
                    .ifPresent(judged -> facts.add(new Fact("How sure", "the band stays the same in " + Numerals.number(100 * judged.holds(), 0)
                            + " of 100 draws of the body within the errors of its measures")));
        }
        facts.add(new Fact("What is measured", criterion.measured()));
        facts.add(new Fact("Aim", criterion.target()));
        if (result.bands() != null) {
            facts.add(new Fact("Bands", "in range " + aim(result.bands(), criterion.unit()) + ", near the edge to "
                    + aim(new Criterion.Bands(Double.NaN, result.bands().amber(), result.bands().amber()), criterion.unit()) + " (" + criterion.status() + ")"));
        }
        if (!Double.isNaN(result.value())) {
            facts.add(new Fact("Found", Numerals.with(result.value(), criterion.unit())
                    + (result.open() ? "; within give or take it could stand in another band" : "")));
        }
        facts.add(new Fact("Usual adjustment", criterion.adjustment()));
        facts.add(new Fact("Evidence", criterion.evidence().name() + (criterion.evidenceNote().isEmpty() ? "" : ": " + criterion.evidenceNote())));
        facts.add(new Fact("Source", criterion.source()));
        return facts;
    }
}
