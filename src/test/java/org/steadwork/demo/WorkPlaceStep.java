package org.steadwork.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.journey.FilledForm;
import org.steadwork.journey.Guest;

/** Work place: enters every measure and what was seen, saves, finds them stored as entered, and finds and misses what the file says. */
final class WorkPlaceStep implements WalkStep {

    private static final Map<String, String> DAY = Map.of("screen_hours", "hoursAtScreen", "longest_run_minutes", "longestSpell", "breaks", "breaks");
    private static final List<String> OFF = List.of("status--out", "status--near");

    private final Map<String, String> labels = Content.yaml("workplace/criteria.yaml").entries("criteria").stream()
            .collect(Collectors.toMap(criterion -> criterion.text("id"), criterion -> criterion.text("label")));

    @Override
    public void walk(WalkedVisit visit) {
        Entry told = visit.entry().entry("workplace").orElse(null);
        if (told == null) {
            return;
        }
        Guest guest = visit.guest();
        boolean again = visit.demo().entries("visits").stream().anyMatch(earlier -> earlier.integer("number") < visit.number() && earlier.has("workplace"));
        guest.open(visit.path("/work-place/edit" + (again ? "?again=true" : ""))).expect(200);
        FilledForm form = guest.formWithButton("Save the assessment").set("assessedOn", visit.day().toString());
        if (again) {
            // what belonged to a laptop stands in the form from the last look
            form.untickAll("laptopAlone").set("laptop_top", "").set(DemoWorkPlaces.LAPTOP_HOURS, "");
        }
        told.optionalText("place").ifPresent(place -> form.set("place", place));
        String notes = Stream.of(told.optionalText("notes"), DemoWorkPlaces.agreedBesides(told)).flatMap(Optional::stream).collect(Collectors.joining("\n"));
        if (!notes.isEmpty()) {
            form.set("notes", notes);
        }
        told.entry("person").ifPresent(person -> person.keys().forEach(key -> form.set(key, person.text(key))));
        enter(form, told, "seat", DemoWorkPlaces.SEAT);
        enter(form, told, "keyboard", DemoWorkPlaces.KEYBOARD);
        enter(form, told, "pointer", DemoWorkPlaces.POINTER);
        enter(form, told, "light", DemoWorkPlaces.LIGHT);
        told.entry("desk").ifPresent(desk -> desk(form, desk, told.entry("screen").orElseThrow()));
        enter(form, told, "day", DAY);
        if (told.entry("screen").filter(screen -> screen.flag("laptop")).isPresent()) {
            form.set(DemoWorkPlaces.LAPTOP_HOURS, told.entry("day").orElseThrow().text("screen_hours"));
        }
        DemoWorkPlaces.grades(told, id -> form.offers(id, "fits")).forEach((id, grade) -> form.set(id, grade.name().toLowerCase(Locale.ROOT)));
        form.send().expect(200);
        told.entry("person").ifPresent(person -> {
            FilledForm stored = guest.open(visit.path("/work-place/edit")).expect(200).formWithButton("Save the assessment");
            person.keys().forEach(key -> assertEquals(0, new BigDecimal(person.text(key)).compareTo(new BigDecimal(stored.value(key))),
                    visit.where() + key + " is " + stored.value(key)));
        });
        check(visit, told.texts("findings"), visit.expected().map(expected -> expected.texts("findings_gone")).orElse(List.of()));
    }

    /** What the file calls a finding is off on the page; what it calls gone is not. */
    private void check(WalkedVisit visit, List<String> found, List<String> gone) {
        Guest guest = visit.guest().open(visit.path("/work-place")).expect(200);
        Map<String, String> words = new HashMap<>();
        guest.page().select(".finding:not(.finding--head)").forEach(finding -> words.put(finding.selectFirst(".finding__what").ownText(),
                finding.selectFirst(".status").className()));
        for (String id : found) {
            assertTrue(OFF.stream().anyMatch(off -> words.getOrDefault(labels.get(id), "").endsWith(off)), visit.where() + id + " is not found: " + words);
        }
        for (String id : gone) {
            assertTrue(words.getOrDefault(labels.get(id), "").endsWith("status--in"), visit.where() + id + " is not gone: " + words);
        }
    }

    private static void enter(FilledForm form, Entry told, String part, Map<String, String> fields) {
        told.entry(part).ifPresent(written -> fields.forEach((key, field) -> {
            if (written.has(key)) {
                form.set(field, written.text(key));
            }
        }));
    }

    private static void desk(FilledForm form, Entry desk, Entry screen) {
        form.set("desk_now", desk.text("height")).set("desk_low", desk.optionalText("height_min").orElse(desk.text("height")))
                .set("desk_high", desk.optionalText("height_max").orElse(desk.text("height"))).set("top_thickness", desk.text("thickness"))
                .set("screen_top_now", String.valueOf(desk.integer("height") + screen.integer("top_above_desk")));
        DemoWorkPlaces.SCREEN.forEach((key, field) -> {
            if (screen.has(key)) {
                form.set(field, screen.text(key));
            }
        });
        BigDecimal aside = new BigDecimal(screen.text("side_angle"));
        form.set("SC-5", (screen.optionalText("side").filter("left"::equals).isPresent() ? aside.negate() : aside).toPlainString());
        form.set("lenses", screen.optionalText("lenses").filter("progressive"::equals).isPresent() ? "progressive" : "single_or_none");
        if (screen.flag("laptop")) {
            form.set("laptopAlone", "yes").set("laptop_top", screen.text("top_above_desk"));
        }
    }
}
