package org.steadwork.exercise;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.steadwork.body.BodyRegion;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.exercise.dayplan.Dose;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.exercise.dayplan.Precaution;
import org.steadwork.exercise.dayplan.Range;

/** Makes exercises of the rows of the catalogue; a wrong row stops the start with file, line and reason. */
final class CatalogueReader {

    private final Map<String, Exercise.Kind> kinds;
    private final Map<String, Condition> conditions;

    private CatalogueReader(Map<String, Exercise.Kind> kinds, Map<String, Condition> conditions) {
        this.kinds = kinds;
        this.conditions = conditions;
    }

    static Map<String, Exercise> read(Map<String, Exercise.Kind> kinds, Map<String, Condition> conditions) {
        CatalogueReader reader = new CatalogueReader(kinds, conditions);
        Map<String, Exercise> exercises = new LinkedHashMap<>();
        for (Entry row : Content.csv("exercises/exercises.csv")) {
            Exercise exercise = reader.exercise(row);
            if (exercises.put(exercise.key(), exercise) != null) {
                throw row.problem("exercise '" + exercise.key() + "' stands twice");
            }
        }
        return exercises;
    }

    static Map<String, Exercise.Kind> kinds() {
        Entry file = Content.yaml("exercises/types.yaml");
        file.text("source");
        Map<String, Exercise.Kind> kinds = new LinkedHashMap<>();
        for (Entry entry : file.entries("types")) {
            int ceiling = entry.integer("pain_ceiling");
            if (!(ceiling >= 0 && ceiling <= 10)) {
                throw entry.problem("'pain_ceiling' runs from 0 to 10");
            }
            if (kinds.put(entry.text("key"), new Exercise.Kind(entry.text("key"), entry.text("label"), entry.text("effort"), ceiling)) != null) {
                throw entry.problem("this type stands twice");
            }
        }
        return kinds;
    }

    static Map<String, Condition> conditions() {
        Entry file = Content.yaml("exercises/conditions.yaml");
        file.text("source");
        Map<String, Condition> conditions = new LinkedHashMap<>();
        for (Entry entry : file.entries("conditions")) {
            Condition condition = new Condition(entry.text("key"), entry.text("label"), entry.text("question"), entry.flag("screen"));
            if (conditions.put(condition.key(), condition) != null) {
                throw entry.problem("condition '" + condition.key() + "' stands twice");
            }
        }
        return conditions;
    }

    private Exercise exercise(Entry row) {
        Exercise.Kind kind = kinds.get(row.text("type"));
        if (kind == null) {
            throw row.problem("there is no type '" + row.text("type") + "'");
        }
        List<String> own = new ArrayList<>(row.texts("stop_rules"));
        if (!own.remove("global")) {
            throw row.problem("'stop_rules' must name global: its rules stand on every sheet");
        }
        try {
            return new Exercise(row.text("key"), row.text("name"), kind, regions(row), row.text("purpose"), row.text("position"), steps(row), dose(row),
                    row.optionalText("per").orElse(""), row.has("rep_s") ? row.number("rep_s") : 0, row.optionalText("dose_note").orElse(""),
                    row.text("progression"), row.text("regression"), own, precautions(row), row.flag("desk_ok"), row.text("source"));
        } catch (IllegalArgumentException e) {
            throw row.problem(e.getMessage());
        }
    }

    private static Set<BodyRegion> regions(Entry row) {
        Set<BodyRegion> regions = new LinkedHashSet<>();
        row.texts("regions").forEach(region -> regions.add(BodyRegion.of(region)));
        return regions;
    }

    private static List<String> steps(Entry row) {
        return Arrays.stream(row.text("steps").split("\\|")).map(String::strip).toList();
    }

    static Dose dose(Entry row) {
        return new Dose(range(row, "hold_s"), range(row, "reps"), row.has("sides") ? row.integer("sides") : 1, range(row, "sets"), range(row, "minutes"),
                range(row, "times_per_day"), range(row, "every_hours"), range(row, "days_per_week"));
    }

    static Range range(Entry row, String key) {
        return row.optionalText(key).map(Range::parse).orElse(null);
    }

    private List<Precaution> precautions(Entry row) {
        List<String> written = row.texts("precautions");
        if (written.equals(List.of("none"))) {
            return List.of();
        }
        List<Precaution> precautions = new ArrayList<>();
        Set<String> named = new HashSet<>();
        for (String text : written) {
            Precaution precaution = Precaution.parse(text);
            if (!conditions.containsKey(precaution.condition())) {
                throw row.problem("there is no condition '" + precaution.condition() + "'");
            }
            if (!named.add(precaution.condition())) {
                throw row.problem("condition '" + precaution.condition() + "' stands twice");
            }
            precautions.add(precaution);
        }
        if (precautions.isEmpty()) {
            throw row.problem("'precautions' must name conditions, or say none");
        }
        return precautions;
    }
}
