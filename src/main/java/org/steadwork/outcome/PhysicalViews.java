package org.steadwork.outcome;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.steadwork.body.Side;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.SymptomReports;
import org.steadwork.outcome.scoring.ChangeVerdict;
import org.steadwork.outcome.scoring.Grip;
import org.steadwork.outcome.scoring.GripResult;
import org.steadwork.outcome.scoring.Motion;
import org.steadwork.outcome.scoring.MotionReading;
import org.steadwork.outcome.scoring.NormGroup;
import org.steadwork.outcome.scoring.RangeOfMotion;
import org.steadwork.outcome.scoring.SideComparison;
import org.steadwork.people.Sex;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/** Gathers what the page of grip strength and motion shows. */
@ApplicationScoped
class PhysicalViews {

    private static final List<Side> HANDS = List.of(Side.RIGHT, Side.LEFT);
    private static final String DEGREE = "\u00b0";

    @Inject
    Instruments instruments;

    @Inject
    PhysicalMeasurements measurements;

    @Inject
    SymptomReports reports;

    @Inject
    CaseRegions caseRegions;

    PhysicalView of(CaseFile file, LocalDate on, Form typed) {
        List<GripMeasurement> grips = measurements.grips(file.id());
        List<MotionMeasurement> motions = measurements.motions(file.id());
        Form form = typed == null ? show(on, grips, motions) : typed;
        return new PhysicalView(on, form, HANDS.stream().map(hand -> hand(file, hand, grips, on)).toList(), rows(file, motions, on),
                instruments.grip().about(), instruments.rangeOfMotion().about(), Option.of(Motion.Device.class, Motion.Device::words));
    }

    /** Puts what is stored for a day into a form. */
    static Form show(LocalDate on, List<GripMeasurement> grips, List<MotionMeasurement> motions) {
        Form form = Form.empty().with("on", Dates.shown(on)).with("version", version(on, grips, motions));
        grips.stream().filter(grip -> grip.testedOn().equals(on)).forEach(grip -> {
            for (int i = 0; i < GripMeasurement.TRIALS; i++) {
                form.with(PhysicalView.trial(grip.hand(), i), grip.kilograms().get(i) == null ? ""
                        : grip.kilograms().get(i).stripTrailingZeros().toPlainString());
            }
            form.with(PhysicalView.why(grip.hand()), grip.notDone());
        });
        motions.stream().filter(motion -> motion.testedOn().equals(on)).forEach(motion -> {
            String key = PhysicalView.key(motion.motion(), motion.side());
            form.with("d_" + key, motion.degrees() == null ? "" : motion.degrees().stripTrailingZeros().toPlainString())
                    .with("w_" + key, motion.notMeasured()).with("t_" + key, motion.device().name().toLowerCase(java.util.Locale.ROOT));
            if (motion.painLimited()) {
                form.with("p_" + key, "yes");
            }
        });
        return form;
    }

    /** Returns a number that changes whenever what is stored for a day changes. */
    static int version(LocalDate on, List<GripMeasurement> grips, List<MotionMeasurement> motions) {
        List<Object> stored = new ArrayList<>(List.of(on));
        grips.stream().filter(grip -> grip.testedOn().equals(on)).forEach(grip -> stored.add(grip.id() * 31 + grip.version()));
        motions.stream().filter(motion -> motion.testedOn().equals(on)).forEach(motion -> stored.add(motion.id() * 37 + motion.version()));
        return Math.floorMod(Objects.hash(stored.toArray()), 999_999_937);
    }

    /** The motions asked about in a case: those of its regions and those measured before. */
    List<Motion> asked(CaseFile file, List<MotionMeasurement> before) {
        Set<Motion> asked = new LinkedHashSet<>();
        RangeOfMotion range = instruments.rangeOfMotion();
        caseRegions.of(reports.of(file.id())).forEach(region -> asked.addAll(range.forRegion(region)));
        before.forEach(motion -> range.find(motion.motion()).ifPresent(asked::add));
        return List.copyOf(asked);
    }

    static List<Side> sides(Motion motion) {
        return motion.sided() ? HANDS : List.of(Side.CENTRE);
    }

    private PhysicalView.Hand hand(CaseFile file, Side hand, List<GripMeasurement> grips, LocalDate on) {
        List<GripMeasurement> own = grips.stream().filter(grip -> grip.hand() == hand && !grip.testedOn().isAfter(on)).toList();
        Optional<GripMeasurement> now = own.stream().filter(grip -> grip.testedOn().equals(on) && !grip.blank()).findFirst();
        List<String> lines = new ArrayList<>();
        String words = "";
        String working = "";
        if (now.isPresent()) {
            GripResult result = measure(file, now.get());
            working = result.working();
            result.meanKg().ifPresent(mean -> lines.add("mean " + kg(mean) + (result.estimated() ? ", of fewer than three trials" : "")));
            result.percentOfNorm().ifPresent(percent -> lines.add(Shown.amount(Math.round(percent * 10) / 10.0) + "\u00a0% of the norm, z "
                    + Shown.amount(Math.round(result.z().getAsDouble() * 100) / 100.0)));
            words = change(file, own, result);
        }
        return new PhysicalView.Hand(hand == Side.RIGHT ? "Right hand" : "Left hand", List.of(PhysicalView.trial(hand, 0), PhysicalView.trial(hand, 1),
                PhysicalView.trial(hand, 2)), PhysicalView.why(hand), lines, words, working, earlier(file, own, on));
    }

    private String change(CaseFile file, List<GripMeasurement> own, GripResult now) {
        Optional<GripResult> first = own.stream().map(grip -> measure(file, grip)).filter(result -> result.meanKg().isPresent()).findFirst();
        if (own.size() < 2 || first.isEmpty() || now.meanKg().isEmpty()) {
            return "";
        }
        ChangeVerdict verdict = instruments.grip().change(first.get().meanKg().getAsDouble(), now.meanKg().getAsDouble());
        return (verdict.change() < 0 ? "\u2212" : "+") + kg(Math.abs(verdict.change())) + " since " + Dates.shown(own.get(0).testedOn()) + ": "
                + verdict.kind().words();
    }

    private String earlier(CaseFile file, List<GripMeasurement> own, LocalDate on) {
        return own.stream().filter(grip -> grip.testedOn().isBefore(on)).reduce((a, b) -> b).map(grip -> measure(file, grip).meanKg().isPresent()
                ? kg(measure(file, grip).meanKg().getAsDouble()) + ", " + Dates.shown(grip.testedOn()) : "no reading, " + Dates.shown(grip.testedOn()))
                .orElse("");
    }

    private GripResult measure(CaseFile file, GripMeasurement grip) {
        Grip method = instruments.grip();
        Sex sex = file.patient().sex();
        Optional<NormGroup> group = sex == Sex.FEMALE ? Optional.of(NormGroup.WOMEN) : sex == Sex.MALE ? Optional.of(NormGroup.MEN) : Optional.empty();
        return method.measure(grip.hand(), grip.trials(), OptionalInt.of(file.patient().ageOn(grip.testedOn())), group);
    }

    private static String kg(double value) {
        return Shown.amount(Math.round(value * 10) / 10.0) + "\u00a0kg";
    }

    private List<PhysicalView.MotionRow> rows(CaseFile file, List<MotionMeasurement> all, LocalDate on) {
        List<PhysicalView.MotionRow> rows = new ArrayList<>();
        for (Motion motion : asked(file, all)) {
            for (Side side : sides(motion)) {
                List<MotionMeasurement> own = all.stream().filter(m -> m.motion().equals(motion.key()) && m.side() == side && !m.blank()
                        && !m.testedOn().isAfter(on)).toList();
                String before = own.stream().filter(m -> m.testedOn().isBefore(on)).reduce((a, b) -> b)
                        .map(m -> (m.degrees() == null ? "not measured" : Shown.amount(m.degrees().doubleValue()) + DEGREE) + ", " + Dates.shown(m.testedOn()))
                        .orElse("");
                rows.add(new PhysicalView.MotionRow(motion.name() + (side == Side.CENTRE ? "" : ", " + side.label()), motion.position(),
                        PhysicalView.key(motion.key(), side), motion.mostDegrees(), before, result(motion, side, own, all, on), references(motion)));
            }
        }
        return rows;
    }

    private List<String> result(Motion motion, Side side, List<MotionMeasurement> own, List<MotionMeasurement> all, LocalDate on) {
        List<String> lines = new ArrayList<>();
        Optional<MotionMeasurement> now = own.stream().filter(m -> m.testedOn().equals(on) && m.degrees() != null).findFirst();
        if (now.isEmpty()) {
            return lines;
        }
        MotionReading reading = now.get().reading(motion);
        RangeOfMotion range = instruments.rangeOfMotion();
        if (motion.sided()) {
            Side opposite = side == Side.RIGHT ? Side.LEFT : Side.RIGHT;
            all.stream().filter(m -> m.motion().equals(motion.key()) && m.side() == opposite && m.testedOn().equals(on) && m.degrees() != null).findFirst()
                    .flatMap(m -> range.sides(reading, m.reading(motion))).ifPresent(beside -> lines.add(beside(beside, opposite)));
        }
        range.shares(reading).stream().findFirst().ifPresent(share -> lines.add(Shown.amount(Math.round(share.lowPercent())) + "\u00a0% of "
                + share.reference().shown() + " (" + share.reference().by() + ")"));
        own.stream().filter(m -> m.degrees() != null && m.testedOn().isBefore(on)).findFirst().ifPresent(first -> range.change(first.reading(motion), reading)
                .ifPresent(verdict -> lines.add((verdict.change() < 0 ? "\u2212" : "+") + Shown.amount(Math.abs(verdict.change())) + DEGREE + " since "
                        + Dates.shown(first.testedOn()) + ": " + verdict.kind().words() + " (error from memory)")));
        return lines;
    }

    private static String beside(SideComparison beside, Side other) {
        if (beside.deficit() == 0) {
            return "the same as " + other.label();
        }
        return Shown.amount(Math.abs(beside.deficit())) + DEGREE + (beside.deficit() > 0 ? " less than " : " more than ") + other.label();
    }

    private static String references(Motion motion) {
        return String.join("; ", motion.references().stream().map(reference -> reference.shown() + " " + reference.by()
                + (reference.tag().equals("M") ? ", from memory" : "")).toList());
    }
}
