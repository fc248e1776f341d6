package org.steadwork.workplace;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.workplace.fit.Band;
import org.steadwork.workplace.fit.BodyDimension;
import org.steadwork.workplace.fit.BodyEstimates;
import org.steadwork.workplace.fit.BodyGroup;
import org.steadwork.workplace.fit.BodyMeasure;
import org.steadwork.workplace.fit.ErrorCorrelations;
import org.steadwork.workplace.fit.Population;
import org.steadwork.workplace.fit.Regression;

/** Reads the content about body sizes: equations, how their errors go together, populations. */
final class AnthropometryContent {

    private AnthropometryContent() {
    }

    static BodyEstimates estimates() {
        List<Regression> equations = new ArrayList<>();
        for (Entry row : Content.csv("anthropometry/regressions.csv")) {
            try {
                boolean withMass = row.text("model").equals("stature_mass");
                Regression.Inverse inverse = new Regression.Inverse(row.number("c00"), row.number("c01"), orZero(row, "c02", withMass),
                        row.number("c11"), orZero(row, "c12", withMass), orZero(row, "c22", withMass));
                equations.add(new Regression(row.constant("group", BodyGroup.class), row.constant("dimension", BodyDimension.class), withMass,
                        row.number("intercept"), row.number("slope_stature"), orZero(row, "slope_weight", withMass), row.number("see"),
                        row.number("t0975"), inverse, new Band(row.number("stature_min"), row.number("stature_max")),
                        new Band(row.number("weight_min"), row.number("weight_max"))));
            } catch (IllegalArgumentException e) {
                throw row.problem(e.getMessage());
            }
        }
        return new BodyEstimates(equations);
    }

    private static double orZero(Entry row, String key, boolean there) {
        return there ? row.number(key) : 0;
    }

    /** How the errors of estimates go together, by whose equations and by whether body mass is in them. */
    static Map<BodyGroup, Map<Boolean, ErrorCorrelations>> correlations() {
        List<Entry> rows = Content.csv("anthropometry/residual-correlations.csv");
        Map<BodyGroup, Map<Boolean, ErrorCorrelations>> correlations = new EnumMap<>(BodyGroup.class);
        for (BodyGroup group : BodyGroup.values()) {
            correlations.put(group, new HashMap<>());
            for (boolean withMass : new boolean[] {false, true}) {
                List<Entry> own = rows.stream().filter(row -> row.constant("group", BodyGroup.class) == group
                        && row.text("model").equals(withMass ? "stature_mass" : "stature")).toList();
                correlations.get(group).put(withMass, own.isEmpty() ? ErrorCorrelations.NONE : together(own));
            }
        }
        return correlations;
    }

    private static ErrorCorrelations together(List<Entry> rows) {
        Map<BodyDimension, Map<BodyDimension, Double>> pairs = new EnumMap<>(BodyDimension.class);
        for (Entry row : rows) {
            Map<BodyDimension, Double> others = pairs.computeIfAbsent(row.constant("first", BodyDimension.class), d -> new EnumMap<>(BodyDimension.class));
            if (others.put(row.constant("second", BodyDimension.class), row.number("correlation")) != null) {
                throw row.problem("there are two correlations of this pair");
            }
        }
        try {
            return new ErrorCorrelations(pairs);
        } catch (IllegalArgumentException e) {
            throw rows.get(0).problem(e.getMessage());
        }
    }

    /** The populations by their ids, in the order of the content. */
    static Map<String, PopulationText> populations() {
        Map<BodyGroup, Map<BodyMeasure, Map<BodyMeasure, Double>>> together = new EnumMap<>(BodyGroup.class);
        for (Entry row : Content.csv("anthropometry/population-correlations.csv")) {
            together.computeIfAbsent(row.constant("group", BodyGroup.class), g -> new EnumMap<>(BodyMeasure.class))
                    .computeIfAbsent(row.constant("first", BodyMeasure.class), m -> new EnumMap<>(BodyMeasure.class))
                    .put(row.constant("second", BodyMeasure.class), row.number("correlation"));
        }
        Map<String, PopulationText> populations = new LinkedHashMap<>();
        for (Entry entry : Content.yaml("anthropometry/populations.yaml").entries("populations")) {
            Population population = new Population(group(entry, "women", together.get(BodyGroup.FEMALE)),
                    group(entry, "men", together.get(BodyGroup.MALE)));
            PopulationText text = new PopulationText(entry.text("id"), entry.text("label"), entry.text("note"), entry.text("status"),
                    entry.text("source"), population);
            if (populations.put(text.id(), text) != null) {
                throw entry.problem("there are two populations " + text.id());
            }
        }
        return populations;
    }

    private static Population.Group group(Entry entry, String key, Map<BodyMeasure, Map<BodyMeasure, Double>> together) {
        Entry group = entry.entry(key).orElseThrow(() -> entry.problem("'" + key + "' is missing"));
        Map<BodyMeasure, Population.Size> sizes = new EnumMap<>(BodyMeasure.class);
        try {
            for (String measure : group.keys()) {
                Entry size = group.entry(measure).orElseThrow();
                sizes.put(BodyMeasure.valueOf(measure.toUpperCase(Locale.ROOT)), new Population.Size(size.number("mean"), size.number("sd")));
            }
            return new Population.Group(sizes, together);
        } catch (IllegalArgumentException e) {
            throw group.problem(e.getMessage());
        }
    }
}
