package org.steadwork.demo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.steadwork.content.Entry;
import org.steadwork.workplace.Assessments;
import org.steadwork.workplace.DeskPlans;
import org.steadwork.workplace.Taken;
import org.steadwork.workplace.WorkplaceAssessment;
import org.steadwork.workplace.WorkplaceContent;
import org.steadwork.workplace.fit.Criterion;
import org.steadwork.workplace.fit.Grade;
import org.steadwork.workplace.fit.Lenses;

/** The work place, as it was measured, seen or told at a visit. */
@ApplicationScoped
class DemoWorkPlaces implements DemoVisitPart {

    static final Map<String, String> SEAT = Map.of("height", "seat_now", "height_min", "seat_low", "height_max", "seat_high", "depth",
            "seat_depth_now", "depth_min", "seat_depth_low", "depth_max", "seat_depth_high", "armrest", "armrest_now", "armrest_min",
            "armrest_low", "armrest_max", "armrest_high");
    static final Map<String, String> SCREEN = Map.of("top_above_desk_min", "screen_low", "top_above_desk_max", "screen_high",
            "visible_height", "screen_height", "distance", "distance_now");
    static final Map<String, String> KEYBOARD = Map.of("home_row", "home_row", "from_edge", "KB-3", "slope", "KB-2", "wrist_extension",
            "KB-4");
    static final Map<String, String> POINTER = Map.of("outward", "MS-1", "hours", "MS-4");
    static final Map<String, String> LIGHT = Map.of("lux", "LI-1", "window_angle", "LI-4");

    /** The criterion of a laptop used alone: then all hours at the screen are hours at the laptop. */
    static final String LAPTOP_HOURS = "SC-10";

    /** Degrees of bending back at the mouse that the criterion allows. */
    private static final int BENT_BACK = 20;

    @Inject
    Assessments assessments;

    @Inject
    DeskPlans plans;

    @Inject
    WorkplaceContent content;

    @Inject
    DemoRegister register;

    @Override
    public int order() {
        return 30;
    }

    @Override
    public void load(DemoVisit visit) {
        Entry told = visit.entry().entry("workplace").orElse(null);
        if (told == null) {
            return;
        }
        Entry screen = told.entry("screen").orElse(told);
        WorkplaceAssessment assessment = new WorkplaceAssessment(visit.file(), visit.day());
        Lenses lenses = screen.optionalText("lenses").filter("progressive"::equals).map(any -> Lenses.PROGRESSIVE).orElse(Lenses.SINGLE_OR_NONE);
        List<String> notes = notes(told);
        told.optionalText("notes").ifPresent(notes::add);
        agreedBesides(told).ifPresent(notes::add);
        told.optionalText("obtained").filter("told"::equals).ifPresent(any -> notes.add("Told, not measured by us."));
        assessment.looksAt(told.optionalText("place").orElse(null), lenses, screen.flag("laptop"), notes.isEmpty() ? null : String.join("\n", notes));
        Optional<Entry> day = told.entry("day");
        assessment.dayIs(day.filter(d -> d.has("screen_hours")).map(d -> number(d, "screen_hours")).orElse(null),
                day.filter(d -> d.has("longest_run_minutes")).map(d -> d.integer("longest_run_minutes")).orElse(null),
                day.flatMap(d -> d.optionalText("breaks")).orElse(null));
        told.entry("registered").ifPresent(place -> assessment.standsAt(place.optionalText("desk").map(key -> register.piece(visit, key)).orElse(null),
                place.optionalText("chair").map(key -> register.piece(visit, key)).orElse(null)));
        Map<String, Taken> taken = taken(told, screen);
        if (told.optionalText("obtained").filter("told"::equals).isPresent()) {
            taken.replaceAll((key, value) -> value.told());
        }
        assessments.record(assessment, taken, grades(told, this::observed));
        told.entry("plan").ifPresent(plan -> plans.add(assessment, plan.text("second"), plan.keys().stream().filter(key -> !key.equals("second"))
                .collect(Collectors.toMap(Function.identity(), key -> number(plan, key)))));
    }

    private Map<String, Taken> taken(Entry told, Entry screen) {
        Map<String, Taken> taken = new LinkedHashMap<>();
        told.entry("person").ifPresent(person -> person.keys().forEach(key -> take(taken, key.equals("arm_length") ? "arm_reach" : key, person, key)));
        told.entry("seat").ifPresent(seat -> takeAll(taken, SEAT, seat));
        told.entry("keyboard").ifPresent(keyboard -> takeAll(taken, KEYBOARD, keyboard));
        told.entry("pointer").ifPresent(pointer -> takeAll(taken, POINTER, pointer));
        told.entry("light").ifPresent(light -> takeAll(taken, LIGHT, light));
        told.entry("desk").ifPresent(desk -> {
            take(taken, "desk_now", desk, "height");
            take(taken, "desk_low", desk, desk.has("height_min") ? "height_min" : "height");
            take(taken, "desk_high", desk, desk.has("height_max") ? "height_max" : "height");
            take(taken, "top_thickness", desk, "thickness");
            if (screen.has("top_above_desk")) {
                put(taken, "screen_top_now", number(desk, "height").add(number(screen, "top_above_desk")));
            }
        });
        if (told.entry("feet").isPresent()) {
            put(taken, "footrest_now", BigDecimal.ZERO);
        }
        if (screen.has("top_above_desk")) {
            takeAll(taken, SCREEN, screen);
            BigDecimal aside = number(screen, "side_angle");
            put(taken, "SC-5", screen.optionalText("side").filter("left"::equals).isPresent() ? aside.negate() : aside);
        }
        if (screen.flag("laptop")) {
            told.entry("day").ifPresent(day -> take(taken, LAPTOP_HOURS, day, "screen_hours"));
            take(taken, "laptop_top", screen, "top_above_desk");
            told.entry("keyboard").ifPresent(keyboard -> take(taken, "laptop_home_row", keyboard, "home_row"));
        }
        return taken;
    }

    private void takeAll(Map<String, Taken> taken, Map<String, String> keys, Entry from) {
        keys.forEach((written, key) -> {
            if (from.has(written)) {
                take(taken, key, from, written);
            }
        });
    }

    private void take(Map<String, Taken> taken, String key, Entry from, String written) {
        put(taken, key, number(from, written));
    }

    private void put(Map<String, Taken> taken, String key, BigDecimal amount) {
        taken.put(key, content.measured(key, amount));
    }

    private static BigDecimal number(Entry from, String key) {
        return new BigDecimal(from.text(key));
    }

    private static List<String> notes(Entry told) {
        List<String> notes = new ArrayList<>();
        for (Entry seen : told.entries("observed")) {
            String words = seen.optionalText("task").map(task -> task + amounts(seen)).orElse("");
            String note = seen.optionalText("note").orElse("");
            if (!words.isEmpty() || !note.isEmpty()) {
                notes.add(words.isEmpty() || note.isEmpty() ? words + note : words + ". " + note);
            }
        }
        return notes;
    }

    /** What was agreed that answers no finding, as a note. */
    static Optional<String> agreedBesides(Entry told) {
        List<String> actions = told.entries("actions").stream().filter(action -> !action.has("finding")).map(action -> action.text("action")).toList();
        return actions.isEmpty() ? Optional.empty() : Optional.of("Agreed: " + String.join("; ", actions) + ".");
    }

    private boolean observed(String criterionId) {
        return content.criterion(criterionId).filter(criterion -> criterion.kind() == Criterion.Kind.OBSERVED).isPresent();
    }

    /** @param observed whether a criterion is judged by looking; one that is measured has no grade, what was seen of it is a note */
    static Map<String, Grade> grades(Entry told, Predicate<String> observed) {
        Map<String, Grade> grades = new LinkedHashMap<>();
        told.entry("feet").filter(feet -> feet.text("support").equals("floor")).ifPresent(feet -> grades.put("FT-1", Grade.FITS));
        told.entry("pointer").filter(pointer -> pointer.has("wrist_extension") && pointer.integer("wrist_extension") > BENT_BACK)
                .ifPresent(pointer -> grades.put("MS-3", Grade.PARTLY));
        for (Entry seen : told.entries("observed")) {
            seen.optionalText("criterion").filter(observed).ifPresent(id -> grades.put(id, seen.flag("met") ? Grade.FITS
                    : seen.optionalText("grade").filter("some"::equals).isPresent() ? Grade.PARTLY : Grade.DOES_NOT_FIT));
        }
        return grades;
    }

    /** The numbers that stand with a task: ", load kg 18, per hour 25". */
    private static String amounts(Entry seen) {
        return seen.keys().stream().filter(key -> !List.of("task", "note").contains(key))
                .map(key -> ", " + key.replace('_', ' ') + seen.optionalText(key).map(value -> " " + value).orElse("")).collect(Collectors.joining());
    }
}
