package org.steadwork.outcome;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.outcome.scoring.Band;
import org.steadwork.outcome.scoring.ChangeRating;
import org.steadwork.outcome.scoring.Direction;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.Item;
import org.steadwork.outcome.scoring.MeanOfParts;
import org.steadwork.outcome.scoring.Part;
import org.steadwork.outcome.scoring.PhoneWords;
import org.steadwork.outcome.scoring.RegionCounts;
import org.steadwork.outcome.scoring.RiskGroups;
import org.steadwork.outcome.scoring.ScaledMean;
import org.steadwork.outcome.scoring.ScoringRule;
import org.steadwork.outcome.scoring.SumOfItems;
import org.steadwork.outcome.scoring.SumOfParts;
import org.steadwork.outcome.scoring.SumPercent;

/** Reads the instruments from the content and checks them; a wrong entry stops the start with file, line and reason. */
final class InstrumentContent {

    private InstrumentContent() {
    }

    /** Returns the instruments by key, in the order in which they are offered. */
    static Map<String, Instrument> read() {
        Map<String, Instrument> instruments = new LinkedHashMap<>();
        Entry index = Content.yaml("instruments/index.yaml");
        for (String name : index.texts("instruments")) {
            for (Instrument instrument : instruments(Content.yaml("instruments/" + name + ".yaml"))) {
                if (instruments.put(instrument.key(), instrument) != null) {
                    throw index.problem("the key '" + instrument.key() + "' is used twice");
                }
            }
        }
        return instruments;
    }

    /** Makes the instruments of one file: one, or one for each variant that shares items and thresholds. */
    static List<Instrument> instruments(Entry entry) {
        List<Entry> variants = entry.entries("variants");
        if (variants.isEmpty()) {
            return List.of(instrument(entry, entry.text("key"), entry.text("label")));
        }
        return variants.stream().map(variant -> instrument(entry, entry.text("key") + "_" + variant.text("key"), variant.text("label"))).toList();
    }

    private static Instrument instrument(Entry entry, String key, String label) {
        double lowest = entry.number("lowest");
        double highest = entry.number("highest");
        if (!(lowest < highest)) {
            throw entry.problem("'lowest' must be below 'highest'");
        }
        List<Item> items = items(entry);
        Entry rule = entry.entry("rule").orElseThrow(() -> entry.problem("'rule' is missing"));
        Instrument instrument = AboutContent.checked(entry, () -> new Instrument(key, entry.text("name"), label, entry.text("version"), entry.optionalText("unit").orElse(""),
                entry.texts("regions"), items, rule(rule), entry.constant("direction", Direction.class), lowest, highest,
                entry.constant("use", Instrument.Use.class), AboutContent.decimals(entry), entry.constant("form", Instrument.Form.class), changeRating(entry),
                bands(entry), AboutContent.thresholds(entry), optional(entry, "cannot_improve_below"), optional(entry, "cannot_worsen_above"),
                entry.integer("every_days"), entry.text("schedule"), entry.text("permission"), entry.text("source"),
                entry.optionalText("loinc").orElse(""), entry.texts("notes"), onPhone(entry)));
        checkUse(entry, instrument);
        checkEnds(entry, instrument);
        return instrument;
    }

    private static void checkUse(Entry entry, Instrument instrument) {
        if ((instrument.use() == Instrument.Use.CHANGE_RATING) != instrument.changeRating().isPresent()) {
            throw entry.problem("'change_rating' belongs to a rating of change, and to nothing else");
        }
        if ((instrument.use() == Instrument.Use.SURVEY) == instrument.rule().hasTotal()) {
            throw entry.problem("a survey, and nothing else, has a rule without a total");
        }
        if (instrument.form() == Instrument.Form.LICENSED_FORM && instrument.items().stream().anyMatch(item -> !item.topic().isEmpty())) {
            throw entry.problem("items of a licensed form have numbers only");
        }
    }

    private static Optional<ChangeRating> changeRating(Entry entry) {
        return entry.entry("change_rating").map(rating -> AboutContent.checked(rating, () -> new ChangeRating(rating.integer("better_from"),
                rating.integer("worse_to"), rating.text("source"), AboutContent.tag(rating))));
    }

    // The scale must be what the rule makes of the lowest and the highest answers.
    private static void checkEnds(Entry entry, Instrument instrument) {
        if (!instrument.rule().hasTotal()) {
            return;
        }
        double low = end(instrument, Item::min, Item::max);
        double high = end(instrument, Item::max, Item::min);
        if (Math.abs(low - instrument.lowest()) > 1e-9 || Math.abs(high - instrument.highest()) > 1e-9) {
            throw entry.problem("the rule reaches " + low + " to " + high + ", not " + instrument.lowest() + " to " + instrument.highest());
        }
    }

    private static double end(Instrument instrument, Function<Item, Integer> plain, Function<Item, Integer> turned) {
        Set<Integer> reversed = instrument.rule() instanceof SumOfItems sum ? sum.reversed() : Set.of();
        List<Integer> answers = instrument.items().stream()
                .map(item -> reversed.contains(item.number()) ? turned.apply(item) : plain.apply(item)).toList();
        return instrument.score(answers).value().orElse(Double.NaN);
    }

    private static Optional<PhoneWords> onPhone(Entry entry) {
        return entry.entry("phone").map(phone -> new PhoneWords(phone.text("heading"), phone.texts("asks"), phone.text("low"), phone.text("high")));
    }

    private static List<Item> items(Entry entry) {
        List<Item> items = new ArrayList<>();
        for (Entry item : entry.entries("items")) {
            if (item.integer("number") != items.size() + 1) {
                throw item.problem("items must be numbered 1, 2, 3 in order");
            }
            items.add(AboutContent.checked(item, () -> new Item(item.integer("number"), item.optionalText("topic").orElse(""), item.integer("min"), item.integer("max"))));
        }
        if (items.isEmpty()) {
            throw entry.problem("'items' is missing");
        }
        return items;
    }

    private static ScoringRule rule(Entry rule) {
        return switch (rule.text("name")) {
            case "sum_percent" -> new SumPercent(rule.integer("minimum_answered"));
            case "scaled_mean" -> new ScaledMean(rule.number("offset"), rule.number("factor"), rule.integer("minimum_answered"),
                    rule.flag("as_many_as_named"));
            case "sum_of_items" -> new SumOfItems(rule.texts("reversed").stream().map(Integer::valueOf).collect(Collectors.toSet()),
                    rule.integer("minimum_answered"), rule.constant("missing", SumOfItems.Missing.class));
            case "mean_of_parts" -> new MeanOfParts(parts(rule, false), rule.integer("may_miss"));
            case "sum_of_parts" -> new SumOfParts(parts(rule, true));
            case "risk_groups" -> AboutContent.checked(rule, () -> riskGroups(rule));
            case "region_counts" -> new RegionCounts(rule.texts("questions"));
            default -> throw rule.problem("'name' must be one of sum_percent, scaled_mean, sum_of_items, mean_of_parts, sum_of_parts, "
                    + "risk_groups, region_counts, but is '"
                    + rule.text("name") + "'");
        };
    }

    private static RiskGroups riskGroups(Entry rule) {
        Map<Integer, List<Integer>> steps = new LinkedHashMap<>();
        rule.entries("steps").forEach(step -> steps.put(step.integer("item"), step.texts("from").stream().map(Integer::valueOf).toList()));
        List<RiskGroups.Group> groups = rule.entries("groups").stream().map(group -> new RiskGroups.Group(group.text("label"),
                group.has("total_from") ? group.integer("total_from") : 0, group.has("subscale_from") ? group.integer("subscale_from") : 0)).toList();
        return rule.entry("subscale").map(part -> new RiskGroups(steps, part.text("name"), part.integer("first"), part.integer("last"), groups))
                .orElseGet(() -> new RiskGroups(steps, "", 0, -1, groups));
    }

    private static List<Part> parts(Entry rule, boolean summed) {
        return rule.entries("parts").stream().map(part -> AboutContent.checked(part, () -> new Part(part.text("name"), part.integer("first"),
                part.integer("last"), summed ? part.number("weight") : 1, summed ? part.integer("may_miss") : 0))).toList();
    }

    private static List<Band> bands(Entry entry) {
        List<Band> bands = new ArrayList<>();
        for (Entry band : entry.entries("bands")) {
            double highest = band.has("highest") ? band.number("highest") : Double.POSITIVE_INFINITY;
            if (!bands.isEmpty() && !(highest > bands.get(bands.size() - 1).highest())) {
                throw band.problem("bands must rise");
            }
            bands.add(new Band(highest, band.text("label"), band.text("source")));
        }
        return bands;
    }

    private static OptionalDouble optional(Entry entry, String key) {
        return entry.has(key) ? OptionalDouble.of(entry.number(key)) : OptionalDouble.empty();
    }
}
