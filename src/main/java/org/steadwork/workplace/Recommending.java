package org.steadwork.workplace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.steadwork.workplace.fit.BodyMeasure;
import org.steadwork.workplace.fit.Criterion;
import org.steadwork.workplace.fit.CriterionResult;
import org.steadwork.workplace.fit.Deviation;
import org.steadwork.workplace.fit.Equipment;
import org.steadwork.workplace.fit.EquipmentGain;
import org.steadwork.workplace.fit.FitResult;
import org.steadwork.workplace.fit.How;
import org.steadwork.workplace.fit.Measurement;
import org.steadwork.workplace.fit.Part;
import org.steadwork.workplace.fit.Settings;
import org.steadwork.workplace.fit.Verdict;

/** Works out from an assessment what to buy, with ranges wide enough for what is not known of the person. */
final class Recommending {

    /** Ranges are given to this, outwards, in mm. */
    private static final double ROUND = 10;

    private final RecordedWorkplace recorded;
    private final WorkplaceContent content;
    private final EquipmentContent equipment;

    Recommending(RecordedWorkplace recorded, WorkplaceContent content, EquipmentContent equipment) {
        this.recorded = recorded;
        this.content = content;
        this.equipment = equipment;
    }

    /** One line for each thing, what the fit asks for first; what is seen to be missing joins it where it is the same thing. */
    List<Recommendation.Line> lines() {
        Map<String, Draft> drafts = new LinkedHashMap<>();
        wanted().ifPresent(gain -> gain.items().forEach(item -> add(drafts, item, gain.settings())));
        for (CriterionResult result : recorded.results()) {
            EquipmentText text = equipment.seen().get(result.criterion().id());
            if (text != null && off(result.verdict())) {
                Draft draft = drafts.computeIfAbsent(text.what(), what -> new Draft());
                draft.add(text.spec(), text.why(), evidence(text.judges()), result.verdict() == Verdict.OUT_OF_RANGE, seen(result));
            }
        }
        List<Recommendation.Line> lines = new ArrayList<>();
        drafts.forEach((what, draft) -> lines.add(new Recommendation.Line(lines.size() + 1, what, draft.specs, draft.whys,
                String.join(", ", draft.evidence), draft.needed, String.join("; ", draft.rests))));
        return lines;
    }

    /** The shortest list of equipment, or none when everything can be set with what is there. */
    Optional<EquipmentGain> wanted() {
        return recorded.fit().flatMap(FitResult::shortestList);
    }

    /** The settings with what is asked for, or the best with what is there. */
    Optional<Settings> settings() {
        return wanted().map(EquipmentGain::settings).or(() -> recorded.fit().map(FitResult::best));
    }

    /** Whether a laptop gets keys of its own. */
    boolean keysApart() {
        return wanted().stream().flatMap(gain -> gain.items().stream()).anyMatch(item -> item.equipment() == Equipment.LAPTOP_SET);
    }

    List<Recommendation.Setting> settingRows() {
        return settings().map(Recommending::rows).orElse(List.of());
    }

    /** The settings in the order in which they are made; a cushion only where there is one. */
    static List<Recommendation.Setting> rows(Settings at) {
        List<Recommendation.Setting> rows = new ArrayList<>();
        for (Part part : Part.values()) {
            at.of(part).ifPresent(value -> {
                boolean none = value == 0 && (part == Part.FOOTREST || part == Part.CUSHION);
                if (!(none && part == Part.CUSHION)) {
                    rows.add(new Recommendation.Setting(WorkplaceWords.of(part), none ? "none" : Numerals.setting(value)));
                }
            });
        }
        return rows;
    }

    /** What the list leaves off, so that the buyer knows what it does not solve. */
    List<String> left() {
        List<String> left = new ArrayList<>();
        Map<Deviation, Double> deviations = wanted().map(EquipmentGain::deviations).or(() -> recorded.fit().map(FitResult::proposed)).orElse(Map.of());
        deviations.forEach((deviation, value) -> {
            if (off(content.targets().of(deviation, recorded.person().lenses()).verdict(value))) {
                left.add(WorkplaceWords.capital(WorkplaceWords.amount(deviation, value)));
            }
        });
        return left;
    }

    /** Which sizes of the person were estimated, without saying how big the person is. */
    List<String> estimates() {
        List<String> words = new ArrayList<>();
        for (BodyMeasure measure : new BodyMeasure[] {BodyMeasure.POPLITEAL_HEIGHT, BodyMeasure.ELBOW_REST_HEIGHT, BodyMeasure.EYE_HEIGHT_SITTING,
            BodyMeasure.BUTTOCK_POPLITEAL_LENGTH, BodyMeasure.THIGH_CLEARANCE}) {
            Measurement taken = recorded.person().measure(measure);
            if (taken.how() == How.ESTIMATED) {
                words.add(content.text(measure).label() + ", give or take " + Numerals.mm(taken.giveOrTake()));
            }
        }
        return words;
    }

    private void add(Map<String, Draft> drafts, EquipmentGain.Item item, Settings at) {
        EquipmentText text = equipment.of(item.equipment());
        Draft draft = drafts.computeIfAbsent(text.what(), what -> new Draft());
        draft.add(filled(text.spec(), text, item, at), filled(text.why(), text, item, at), evidence(text.judges()), true, rests(text));
    }

    private String filled(String words, EquipmentText text, EquipmentGain.Item item, Settings at) {
        double wanted = switch (item.equipment()) {
            case SCREEN_RISER -> at.screenTop() - at.desk();
            case ADJUSTABLE_DESK -> at.desk();
            case OTHER_CHAIR -> at.seat();
            default -> item.size();
        };
        double room = equipment.margin() + error(text);
        String depth = Double.isNaN(at.seatDepth()) ? "" : "; seat depth adjustable from " + down(at.seatDepth() - depthRoom()) + " to " + up(at.seatDepth() + depthRoom());
        return words.replace("{from}", down(Math.max(0, wanted - room))).replace("{to}", up(wanted + room)).replace("{step}", plain(equipment.step()))
                .replace("{wanted}", plain(5 * Math.ceil(item.size() / 5 - 1e-9))).replace("{seat}", plain(at.seat())).replace("{desk}", plain(at.desk()))
                .replace("{depth}", depth.isEmpty() ? "" : depth + " mm").replace("{depth_why}", Double.isNaN(at.seatDepth()) ? "" : " with the seat "
                        + plain(at.seatDepth()) + " mm deep");
    }

    private double depthRoom() {
        return equipment.margin() + recorded.person().measure(BodyMeasure.BUTTOCK_POPLITEAL_LENGTH).giveOrTake();
    }

    /** Half the 95 % interval of what the range is driven by, in mm; the errors are taken as independent. */
    private double error(EquipmentText text) {
        double squares = 0;
        for (BodyMeasure measure : text.drivenBy()) {
            double half = recorded.person().measure(measure).giveOrTake();
            squares += half * half;
        }
        return Math.sqrt(squares);
    }

    private static String down(double mm) {
        return plain(ROUND * Math.floor(mm / ROUND + 1e-9));
    }

    private static String up(double mm) {
        return plain(ROUND * Math.ceil(mm / ROUND - 1e-9));
    }

    private static String plain(double mm) {
        return Numerals.number(5 * Math.rint(mm / 5), 0);
    }

    private String rests(EquipmentText text) {
        boolean estimated = text.drivenBy().stream().anyMatch(measure -> recorded.person().measure(measure).how() == How.ESTIMATED);
        boolean told = text.drivenBy().stream().anyMatch(measure -> recorded.person().measure(measure).how() == How.TOLD);
        return estimated ? "estimated size, widened for its error" : told ? WorkplaceWords.of(How.TOLD) : WorkplaceWords.of(How.MEASURED);
    }

    private static String seen(CriterionResult result) {
        return result.how() == How.OBSERVED ? "seen at the desk" : WorkplaceWords.of(result.how());
    }

    private String evidence(String criterionId) {
        Criterion criterion = content.criterion(criterionId).orElseThrow();
        return criterion.evidence().name();
    }

    private static boolean off(Verdict verdict) {
        return verdict == Verdict.OUT_OF_RANGE || verdict == Verdict.NEAR_THE_EDGE;
    }

    /** A line in the making. */
    private static final class Draft {
        private final List<String> specs = new ArrayList<>();
        private final List<String> whys = new ArrayList<>();
        private final TreeSet<String> evidence = new TreeSet<>();
        private final TreeSet<String> rests = new TreeSet<>();
        private boolean needed;

        void add(String spec, String why, String grade, boolean out, String rest) {
            specs.add(spec);
            whys.add(why);
            evidence.add(grade);
            rests.add(rest);
            needed |= out;
        }
    }
}
