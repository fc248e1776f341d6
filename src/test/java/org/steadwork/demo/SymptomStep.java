package org.steadwork.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.steadwork.content.Entry;
import org.steadwork.journey.FilledForm;

/** Symptoms: adds each zone, gives its scores and kinds, saves, and finds them stored as given. */
final class SymptomStep implements WalkStep {

    private static final List<String> SCALES = List.of("now", "worst", "average", "at_work");

    @Override
    public void walk(WalkedVisit visit) {
        Entry told = visit.entry().entry("symptoms").orElse(null);
        if (told == null) {
            return;
        }
        visit.guest().open(visit.path("/symptoms/new")).expect(200);
        List<Entry> zones = told.entries("zones");
        for (Entry zone : zones) {
            visit.guest().formWithButton("Add the zone").set("add", zone.text("zone")).send().expect(200);
        }
        FilledForm form = visit.guest().formWithButton("Save symptoms");
        for (Entry zone : zones) {
            fill(form, told, zone);
        }
        told.optionalText("pattern").ifPresent(words -> form.set("ownWords", words));
        form.send().expect(200);
        for (Entry zone : zones) {
            FilledForm stored = visit.guest().formWithButton("Save symptoms");
            SCALES.forEach(scale -> assertEquals(zone.optionalText(scale).orElse("not_asked"), stored.value(scale + "-" + zone.text("zone")),
                    visit.where() + scale + " of " + zone.text("zone")));
        }
    }

    private static void fill(FilledForm form, Entry told, Entry zone) {
        String key = zone.text("zone");
        SCALES.forEach(scale -> zone.optionalText(scale).ifPresent(value -> form.set(scale + "-" + key, value)));
        zone.texts("kinds").forEach(kind -> form.set(kind + "-" + key, kind));
        told.optionalText("since").ifPresent(since -> form.set("since-" + key, since));
        zone.optionalText("note").ifPresent(note -> form.set("pattern-" + key, note));
    }
}
