package org.steadwork.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Map;
import org.steadwork.content.Entry;
import org.steadwork.journey.FilledForm;
import org.steadwork.journey.Guest;

/** Work place: enters every measure the page asks for, saves, and finds the measures stored as entered. */
final class WorkPlaceStep implements WalkStep {

    @Override
    public void walk(WalkedVisit visit) {
        Entry told = visit.entry().entry("workplace").orElse(null);
        if (told == null) {
            return;
        }
        Guest guest = visit.guest();
        guest.open(visit.path("/work-place/edit")).expect(200);
        FilledForm form = guest.formWithButton("Save the assessment").set("assessedOn", visit.day().toString());
        told.optionalText("place").ifPresent(place -> form.set("place", place));
        told.optionalText("notes").ifPresent(notes -> form.set("notes", notes));
        told.entry("person").ifPresent(person -> person.keys().forEach(key -> form.set(key, person.text(key))));
        enter(form, told, "seat", DemoWorkPlaces.SEAT);
        enter(form, told, "keyboard", DemoWorkPlaces.KEYBOARD);
        enter(form, told, "pointer", DemoWorkPlaces.POINTER);
        enter(form, told, "light", DemoWorkPlaces.LIGHT);
        told.entry("desk").ifPresent(desk -> desk(form, desk, told.entry("screen").orElseThrow()));
        form.send().expect(200);
        told.entry("person").ifPresent(person -> {
            FilledForm stored = guest.open(visit.path("/work-place/edit")).expect(200).formWithButton("Save the assessment");
            person.keys().forEach(key -> assertEquals(0, new BigDecimal(person.text(key)).compareTo(new BigDecimal(stored.value(key))),
                    visit.where() + key + " is " + stored.value(key)));
        });
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
        form.set("SC-5", screen.text("side_angle"));
        if (screen.flag("laptop")) {
            form.set("laptopAlone", "yes").set("laptop_top", screen.text("top_above_desk"));
        }
    }
}
