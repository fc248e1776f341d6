package org.steadwork.workplace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchAnswer.Mark;
import org.steadwork.workplace.fit.Deviation;
import org.steadwork.workplace.fit.EquipmentGain;
import org.steadwork.workplace.fit.FitModel;
import org.steadwork.workplace.fit.FitResult;
import org.steadwork.workplace.fit.Part;
import org.steadwork.workplace.fit.Spread;
import org.steadwork.workplace.fit.Sureness;
import org.steadwork.workplace.fit.Verdict;

/** Says a fit as the Bench does: in words, step by step, and as numbers for machines. */
final class FitAnswer {

    private static final Map<Deviation, String> RULES = Map.of(Deviation.CLEARANCE, "desk − thickness − seat − thigh", Deviation.ELBOW,
            "desk + home row − seat − elbow above the seat", Deviation.FEET, "seat − footrest − (lower leg + shoe)", Deviation.SCREEN_DROP,
            "seat + eye above the seat − screen top", Deviation.KNEE_GAP, "buttock to knee crease − (seat depth − cushion)", Deviation.DISTANCE,
            "eye to the screen centre", Deviation.ARMREST, "armrest above the seat − elbow above the seat");

    private final FitModel model;
    private final FitResult fit;
    private final Sureness sureness;
    private final WorkplaceContent content;

    FitAnswer(FitModel model, FitResult fit, Sureness sureness, WorkplaceContent content) {
        this.model = model;
        this.fit = fit;
        this.sureness = sureness;
        this.content = content;
    }

    BenchAnswer answer() {
        BenchAnswer answer = band();
        for (Part part : new Part[] {Part.SEAT, Part.FOOTREST, Part.DESK, Part.SCREEN_TOP}) {
            fit.best().of(part).ifPresent(value -> answer.headline(WorkplaceWords.of(part), within(part, value), "mm"));
        }
        for (Deviation deviation : Deviation.values()) {
            double off = fit.proposed().get(deviation);
            if (!Double.isNaN(off)) {
                Sureness.Judged judged = sureness.proposed().get(deviation);
                answer.step(WorkplaceWords.of(deviation), RULES.get(deviation) + "; " + WorkplaceWords.amount(deviation, off) + ", "
                        + WorkplaceWords.of(judged.verdict()) + inDraws(judged), Numerals.signed(off, 0), "mm");
            }
        }
        for (EquipmentGain gain : fit.gains()) {
            answer.step(words(gain), "weighted mm outside the green band ÷ 10, today's best less the best with it", Numerals.number(gain.removes(), 1), "");
        }
        notes(answer);
        return machines(answer);
    }

    private BenchAnswer band() {
        List<Deviation> off = fit.proposed().entrySet().stream().filter(entry -> model.verdict(entry.getKey(), fit.best()).isOff())
                .map(Map.Entry::getKey).toList();
        if (!fit.serves()) {
            return BenchAnswer.of("No setting keeps the desk off the thighs; what stands here presses least").marked(Mark.OUT);
        }
        if (off.isEmpty()) {
            return BenchAnswer.of("Set like this, everything that was looked at is in range").marked(Mark.IN);
        }
        boolean out = off.stream().anyMatch(deviation -> model.verdict(deviation, fit.best()) == Verdict.OUT_OF_RANGE);
        return BenchAnswer.of("The best with what is there leaves off: " + WorkplaceWords.list(off).toLowerCase(Locale.ROOT)).marked(out ? Mark.OUT : Mark.EDGE);
    }

    private String within(Part part, double value) {
        Spread spread = sureness.settings().get(part);
        String set = part == Part.FOOTREST && value == 0 ? "none" : Numerals.number(value, 0);
        return spread.high() - spread.low() < 1 ? set : set + " (" + Numerals.number(spread.low(), 0) + " to " + Numerals.number(spread.high(), 0) + ")";
    }

    private static String inDraws(Sureness.Judged judged) {
        return judged.holds() > 0.995 ? "" : "; so in " + Numerals.number(100 * judged.holds(), 0) + " of 100 draws";
    }

    private String words(EquipmentGain gain) {
        return WorkplaceWords.of(gain, content.targets().obtainable().footrest().high());
    }

    private void notes(BenchAnswer answer) {
        answer.note("In brackets: where the setting lies in 95 of 100 draws of the body within the errors of its measures.");
        fit.shortestList().filter(list -> list.items().size() > 1).ifPresent(list -> answer.note("The shortest list that leaves least: " + words(list) + "."));
        fit.room().filter(room -> !room.enough()).ifPresent(room -> answer.note("Elbow, home row, desk top and thigh leave " + Numerals.mm(room.room())
                + "; at least " + Numerals.mm(room.least()) + " is needed, so that no setting has elbow and thigh both in range."));
        sureness.settling().ifPresent(settling -> answer.note("Measure next: " + content.text(settling.measure()).label() + "."));
        fit.standing().ifPresent(standing -> answer.note("Standing: desk at " + Numerals.setting(standing.desk()) + "."));
    }

    private BenchAnswer machines(BenchAnswer answer) {
        Map<String, Object> settings = new LinkedHashMap<>();
        sureness.settings().forEach((part, spread) -> settings.put(FitContent.key(part), spread(spread)));
        Map<String, Object> now = new LinkedHashMap<>();
        sureness.now().forEach((deviation, judged) -> now.put(FitContent.key(deviation), judged(judged)));
        Map<String, Object> proposed = new LinkedHashMap<>();
        sureness.proposed().forEach((deviation, judged) -> proposed.put(FitContent.key(deviation), judged(judged)));
        List<Map<String, Object>> equipment = new ArrayList<>();
        fit.gains().forEach(gain -> equipment.add(equipment(gain)));
        return answer.result("unit", "mm").result("serves", fit.serves()).result("settings", settings).result("deviations_now", now)
                .result("deviations", proposed).result("cost", fit.costProposed()).result("equipment", equipment)
                .result("shortest_list", fit.shortestList().map(this::equipment).orElse(null))
                .result("measure_next", sureness.settling().map(settling -> FitContent.key(settling.measure())).orElse(null))
                .result("draws", sureness.draws());
    }

    private Map<String, Object> equipment(EquipmentGain gain) {
        Map<String, Object> shown = new LinkedHashMap<>();
        List<Map<String, Object>> items = new ArrayList<>();
        gain.items().forEach(item -> items.add(Map.of("piece", FitContent.key(item.equipment()), "size", item.size())));
        shown.put("items", items);
        shown.put("removes", gain.removes());
        shown.put("remains", gain.remains());
        sureness.of(gain.items().stream().map(EquipmentGain.Item::equipment).toList()).ifPresent(recommended -> {
            shown.put("share_needed", recommended.needed());
            shown.put("share_helps", recommended.helps());
            shown.put("share_suffices", recommended.suffices());
        });
        return shown;
    }

    private static Map<String, Object> spread(Spread spread) {
        Map<String, Object> shown = new LinkedHashMap<>();
        shown.put("value", spread.value());
        shown.put("low", spread.low());
        shown.put("high", spread.high());
        return shown;
    }

    private static Map<String, Object> judged(Sureness.Judged judged) {
        Map<String, Object> shown = spread(judged.spread());
        shown.put("verdict", FitContent.key(judged.verdict()));
        shown.put("share", judged.holds());
        return shown;
    }
}
