package org.steadwork.workplace;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.steadwork.workplace.WorkplaceView.Choice;
import org.steadwork.workplace.WorkplaceView.GainRow;
import org.steadwork.workplace.WorkplaceView.StepRow;
import org.steadwork.workplace.fit.AdjustmentStep;
import org.steadwork.workplace.fit.BodyMeasure;
import org.steadwork.workplace.fit.Criterion;
import org.steadwork.workplace.fit.CriterionResult;
import org.steadwork.workplace.fit.Deviation;
import org.steadwork.workplace.fit.EquipmentGain;
import org.steadwork.workplace.fit.FitModel;
import org.steadwork.workplace.fit.FitResult;
import org.steadwork.workplace.fit.HandResult;
import org.steadwork.workplace.fit.How;
import org.steadwork.workplace.fit.Part;
import org.steadwork.workplace.fit.Settings;
import org.steadwork.workplace.fit.Settling;
import org.steadwork.workplace.fit.Sureness;
import org.steadwork.workplace.fit.Verdict;

/** Says what the fit worked out: steps, equipment, room, the measurement that would settle it. Empty while nothing could be worked out. */
final class FitView {

    /** Half of the 5 mm to which a setting is given: what is nearer than this stays as it is. */
    private static final double CLOSEST = 2.5;
    /** Two ways of setting that differ by less than this, in mm, are one. */
    private static final double WORTH_SAYING = 10;

    private final RecordedWorkplace recorded;
    private final WorkplaceContent content;
    private final FitModel model;
    private final Optional<FitResult> fit;

    FitView(RecordedWorkplace recorded, WorkplaceContent content) {
        this.recorded = recorded;
        this.content = content;
        this.model = recorded.model();
        this.fit = recorded.fit();
    }

    List<StepRow> steps() {
        List<StepRow> rows = new ArrayList<>();
        fit.ifPresent(result -> result.steps().forEach(step -> rows.add(row(step))));
        for (CriterionResult result : recorded.results()) {
            Criterion criterion = result.criterion();
            boolean ownStep = criterion.kind() == Criterion.Kind.MEASURED || criterion.kind() == Criterion.Kind.OBSERVED;
            if (ownStep && (result.verdict() == Verdict.OUT_OF_RANGE || result.verdict() == Verdict.NEAR_THE_EDGE)) {
                rows.add(row(rows.size() + 1, result));
            }
        }
        return rows;
    }

    private StepRow row(AdjustmentStep step) {
        boolean known = !Double.isNaN(step.now());
        boolean absent = step.part() == Part.FOOTREST || step.part() == Part.CUSHION;
        boolean stays = Math.abs(step.change()) < CLOSEST;
        String now = !known ? "not looked at" : absent && step.now() == 0 ? "none" : Numerals.mm(step.now());
        String proposed = stays ? "as now" : absent && step.proposed() == 0 ? "none" : Numerals.setting(step.proposed());
        String change = !known ? "–" : stays ? "none" : Numerals.signedMm(5 * Math.rint(step.proposed() / 5) - step.now());
        return new StepRow(step.number(), WorkplaceWords.of(step.part()), now, proposed, change, WorkplaceWords.effect(step, model));
    }

    private static StepRow row(int number, CriterionResult result) {
        Criterion criterion = result.criterion();
        boolean measured = !Double.isNaN(result.value());
        String now = measured ? Numerals.with(result.value(), criterion.unit()) : result.verdict() == Verdict.NEAR_THE_EDGE ? "partly" : "does not fit";
        String proposed = measured ? FindingRows.aim(result.bands(), criterion.unit()) : "fits";
        String change = measured ? Numerals.with(Math.abs(result.value() - result.bands().green().clip(result.value())), criterion.unit()) : "–";
        return new StepRow(number, criterion.label(), now, proposed, change, criterion.adjustment());
    }

    String stepsNote() {
        if (fit.isEmpty()) {
            return null;
        }
        return fit.get().serves() ? null : "No setting frees the thighs with what is there. What stands here presses least.";
    }

    String byHand() {
        HandResult hand = fit.map(FitResult::hand).orElse(null);
        if (hand == null) {
            return null;
        }
        Settings best = fit.get().best();
        boolean same = Math.abs(hand.settings().seat() - best.seat()) < WORTH_SAYING && Math.abs(hand.settings().desk() - best.desk()) < WORTH_SAYING;
        if (same) {
            return null;
        }
        List<String> wants = new ArrayList<>();
        want(wants, hand.riser(), "a riser of ");
        want(wants, hand.deskRaise(), "the desk raised by ");
        want(wants, hand.keyboardLowering(), "the keys lowered by ");
        want(wants, hand.cushion(), "a cushion of ");
        return "Set by hand, the seat would stand at " + Numerals.setting(hand.settings().seat()) + " and the desk at "
                + Numerals.setting(hand.settings().desk()) + (wants.isEmpty() ? "" : ", and want " + String.join(", ", wants))
                + ". What is proposed fits better with what is there.";
    }

    private static void want(List<String> wants, double size, String words) {
        if (size > 0) {
            wants.add(words + Numerals.sizeUp(size));
        }
    }

    WorkplaceView.Room room() {
        return fit.flatMap(FitResult::room).filter(room -> !room.enough()).map(room -> new WorkplaceView.Room(
                "Elbow above the seat " + Numerals.mm(recorded.person().measure(BodyMeasure.ELBOW_REST_HEIGHT).value()) + " − home row "
                        + Numerals.mm(recorded.station().homeRow()) + " − desk top " + Numerals.mm(recorded.station().topThickness()) + " − thigh "
                        + Numerals.mm(recorded.person().measure(BodyMeasure.THIGH_CLEARANCE).value()) + " = " + Numerals.mm(room.room())
                        + "; at least " + Numerals.mm(room.least()) + " is needed",
                Numerals.mm(room.room()), Numerals.mm(room.least()), room.tradeOffs().stream().map(choice -> new Choice(Numerals.setting(choice.desk()),
                        WorkplaceWords.amount(Deviation.ELBOW, choice.elbow()), WorkplaceWords.amount(Deviation.CLEARANCE, choice.clearance()))).toList()))
                .orElse(null);
    }

    List<GainRow> gains() {
        return fit.map(result -> result.gains().stream().map(gain -> row(gain, result)).toList()).orElse(List.of());
    }

    private GainRow row(EquipmentGain gain, FitResult result) {
        String removes = gain.cleared().isEmpty() ? "Part of what is off" : gain.cleared().stream()
                .map(deviation -> WorkplaceWords.of(deviation) + ": " + WorkplaceWords.amount(deviation, result.proposed().get(deviation)))
                .collect(Collectors.joining("; "));
        return new GainRow(WorkplaceWords.of(gain, content.targets().obtainable().footrest().high()), removes, left(gain.deviations(), gain),
                "Seat " + Numerals.setting(gain.settings().seat()) + ", desk " + Numerals.setting(gain.settings().desk()), sure(gain));
    }

    /** Says how often it helps when the body is drawn within the errors of its measures. */
    private String sure(EquipmentGain gain) {
        return recorded.sureness().flatMap(sureness -> sureness.of(gain.items().stream().map(EquipmentGain.Item::equipment).toList()))
                .map(share -> "helps in " + inHundred(share.helps()) + ", is enough alone in " + inHundred(share.suffices()) + " of 100 draws").orElse("–");
    }

    private static String inHundred(double share) {
        return Numerals.number(100 * share, 0);
    }

    private String left(Map<Deviation, Double> deviations, EquipmentGain gain) {
        List<String> left = new ArrayList<>();
        deviations.forEach((deviation, off) -> {
            Verdict verdict = content.targets().of(deviation, recorded.person().lenses()).verdict(off);
            if (verdict == Verdict.OUT_OF_RANGE || verdict == Verdict.NEAR_THE_EDGE) {
                left.add(WorkplaceWords.amount(deviation, off) + ", " + WorkplaceWords.of(verdict));
            }
        });
        return left.isEmpty() ? "Nothing" : WorkplaceWords.capital(String.join("; ", left));
    }

    /** Says the shortest list when it has more than one piece, or what even that leaves. */
    String shortest() {
        return fit.flatMap(FitResult::shortestList).filter(list -> list.items().size() > 1)
                .map(list -> "The shortest list that leaves least: " + WorkplaceWords.of(list, content.targets().obtainable().footrest().high()) + ". Then "
                        + left(list.deviations(), list).toLowerCase(Locale.ROOT) + (left(list.deviations(), list).equals("Nothing") ? " is left." : "."))
                .orElse(null);
    }

    String settling() {
        return recorded.sureness().flatMap(Sureness::settling).map(settling -> "One measurement would settle "
                + (settling.open().isEmpty() ? "the settings" : WorkplaceWords.list(settling.open()).toLowerCase(Locale.ROOT)) + ":").orElse(null);
    }

    String settlingRest() {
        return recorded.sureness().flatMap(Sureness::settling).map(this::rest).orElse(null);
    }

    private String rest(Settling settling) {
        String label = content.text(settling.measure()).label();
        if (Double.isNaN(settling.giveOrTake())) {
            return label + ". It was not looked at, and no setting may press on the thigh.";
        }
        String moves = "";
        if (settling.whenLow().isPresent()) {
            List<String> parts = new ArrayList<>();
            for (Part part : new Part[] {Part.SEAT, Part.DESK, Part.SCREEN_TOP, Part.SEAT_DEPTH}) {
                Optional<String> range = range(part, settling.whenLow().get(), settling.whenHigh().get());
                range.ifPresent(parts::add);
            }
            moves = parts.isEmpty() ? "" : " Within that, " + String.join(", ", parts) + ".";
        }
        return label + (recorded.person().measure(settling.measure()).how() == How.ESTIMATED ? ". It is estimated from stature, give or take "
                : ". Its readings lie far apart, give or take ") + Numerals.mm(settling.giveOrTake()) + "." + moves
                + (settling.open().isEmpty() ? " The findings stay as they are either way; what you order may not." : "");
    }

    private static Optional<String> range(Part part, Settings low, Settings high) {
        if (low.of(part).isEmpty() || high.of(part).isEmpty() || Math.abs(low.of(part).getAsDouble() - high.of(part).getAsDouble()) < 5) {
            return Optional.empty();
        }
        double one = low.of(part).getAsDouble();
        double other = high.of(part).getAsDouble();
        return Optional.of(WorkplaceWords.of(part).toLowerCase(Locale.ROOT) + " would be anywhere from "
                + Numerals.setting(Math.min(one, other)) + " to " + Numerals.setting(Math.max(one, other)));
    }

    String standing() {
        return fit.flatMap(FitResult::standing).map(standing -> {
            String text = "Standing: desk at " + Numerals.setting(standing.desk())
                    + (Math.abs(standing.elbow()) < 0.5 ? "" : ", " + WorkplaceWords.amount(Deviation.ELBOW, standing.elbow()) + ", as far as it goes");
            if (Double.isNaN(standing.screenChange())) {
                return text + ".";
            }
            return text + (Math.abs(standing.screenChange()) <= 20 ? "; the same screen setting serves both."
                    : "; the screen " + Numerals.mm(Math.abs(standing.screenChange())) + (standing.screenChange() > 0 ? " higher" : " lower")
                            + " above the desk than sitting.");
        }).orElse(null);
    }
}
