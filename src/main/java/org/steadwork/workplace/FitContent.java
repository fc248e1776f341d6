package org.steadwork.workplace;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.steadwork.body.BodyRegion;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.workplace.fit.Band;
import org.steadwork.workplace.fit.BodyMeasure;
import org.steadwork.workplace.fit.Criterion;
import org.steadwork.workplace.fit.Deviation;
import org.steadwork.workplace.fit.Evidence;
import org.steadwork.workplace.fit.Lenses;
import org.steadwork.workplace.fit.Target;
import org.steadwork.workplace.fit.Targets;
import org.steadwork.workplace.fit.Travel;

/** Turns the content about work places into what the fit works with, and refuses what cannot be right. */
final class FitContent {

    private static final Pattern BAND = Pattern.compile("(-?\\d+(?:\\.\\d+)?)?\\.\\.(-?\\d+(?:\\.\\d+)?)?");

    private FitContent() {
    }

    static Targets targets() {
        Entry file = Content.yaml("workplace/targets.yaml");
        Map<Deviation, Target> targets = new EnumMap<>(Deviation.class);
        for (Entry entry : file.entries("targets")) {
            if (targets.put(entry.constant("deviation", Deviation.class), target(entry)) != null) {
                throw entry.problem("there are two targets for it");
            }
        }
        Entry allowances = nested(file, "allowances");
        Entry obtainable = nested(file, "obtainable");
        try {
            return new Targets(targets, target(nested(file, "progressive_drop")),
                    new Targets.Allowances(mm(allowances, "shoe"), mm(allowances, "slump"), mm(allowances, "home_row"),
                            mm(allowances, "top_thickness"), mm(allowances, "distance"), mm(allowances, "footrest_above")),
                    new Targets.Obtainable(travel(obtainable, "footrest"), mm(obtainable, "platform"), travel(obtainable, "screen"),
                            travel(obtainable, "desk"), mm(obtainable, "blocks"), travel(obtainable, "seat"), travel(obtainable, "seat_depth"),
                            mm(obtainable, "cushion"), mm(obtainable, "tray"), mm(obtainable, "thin_top"), mm(obtainable, "flat_keyboard")));
        } catch (IllegalArgumentException e) {
            throw file.problem(e.getMessage());
        }
    }

    private static Target target(Entry entry) {
        entry.text("source");
        entry.text("status");
        try {
            return new Target(entry.number("aim"), band(entry, "green"), band(entry, "amber"), entry.number("weight"));
        } catch (IllegalArgumentException e) {
            throw entry.problem(e.getMessage());
        }
    }

    private static double mm(Entry entry, String key) {
        Entry value = nested(entry, key);
        value.text("source");
        return value.number("mm");
    }

    private static Travel travel(Entry entry, String key) {
        Entry value = nested(entry, key);
        value.text("source");
        return Travel.of(value.number("low"), value.number("high"));
    }

    private static Entry nested(Entry entry, String key) {
        return entry.entry(key).orElseThrow(() -> entry.problem("'" + key + "' is missing"));
    }

    static Band band(Entry entry, String key) {
        String text = entry.text(key);
        Matcher match = BAND.matcher(text);
        if (!match.matches()) {
            throw entry.problem("'" + key + "' must be a band such as -30..10, 20.. or ..60, but is '" + text + "'");
        }
        return new Band(match.group(1) == null ? Double.NEGATIVE_INFINITY : Double.parseDouble(match.group(1)),
                match.group(2) == null ? Double.POSITIVE_INFINITY : Double.parseDouble(match.group(2)));
    }

    static List<Criterion> criteria() {
        List<Criterion> criteria = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (Entry entry : Content.yaml("workplace/criteria.yaml").entries("criteria")) {
            if (!ids.add(entry.text("id"))) {
                throw entry.problem("there are two criteria " + entry.text("id"));
            }
            try {
                entry.texts("regions").forEach(BodyRegion::of);
                criteria.add(criterion(entry));
            } catch (IllegalArgumentException e) {
                throw entry.problem(e.getMessage());
            }
        }
        return List.copyOf(criteria);
    }

    private static Criterion criterion(Entry entry) {
        Criterion.Kind kind = entry.constant("kind", Criterion.Kind.class);
        Criterion.Bands bands = entry.has("green")
                ? new Criterion.Bands(entry.has("aim") ? entry.number("aim") : Double.NaN, band(entry, "green"), band(entry, "amber")) : null;
        if (kind != Criterion.Kind.OBSERVED) {
            entry.text("unit");
            entry.text("status");
        }
        return new Criterion(entry.text("id"), entry.text("group"), entry.text("label"), kind, entry.text("measured"), entry.text("target"),
                entry.optionalText("unit").orElse(""), entry.has("deviation") ? entry.constant("deviation", Deviation.class) : null,
                entry.has("lenses") ? entry.constant("lenses", Lenses.class) : null, entry.optionalText("reads").orElse(entry.text("id")), bands,
                entry.optionalText("status").orElse(""), entry.texts("regions"), entry.optionalText("also").orElse(""),
                Evidence.valueOf(entry.text("evidence")), entry.optionalText("evidence_note").orElse(""), entry.text("adjustment"),
                entry.text("source"));
    }

    static Map<BodyMeasure, MeasureText> measures() {
        Map<BodyMeasure, MeasureText> measures = new EnumMap<>(BodyMeasure.class);
        Entry file = Content.yaml("workplace/measures.yaml");
        for (Entry entry : file.entries("measures")) {
            BodyMeasure key = entry.constant("key", BodyMeasure.class);
            MeasureText text = new MeasureText(key, entry.text("label"), entry.text("how"), entry.text("unit"), band(entry, "range"),
                    entry.number("give_or_take"), entry.text("source"));
            if (measures.put(key, text) != null) {
                throw entry.problem("there are two measures " + key);
            }
        }
        for (BodyMeasure measure : BodyMeasure.values()) {
            if (!measures.containsKey(measure)) {
                throw file.problem("the measure " + measure + " is missing");
            }
        }
        return measures;
    }

    static String key(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
