package org.steadwork.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jsoup.nodes.Element;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.exercise.dayplan.PainRule;
import org.steadwork.journey.FilledForm;
import org.steadwork.journey.Guest;

/** Programme: answers the conditions, notes the week, gives or changes exercises; what is refused must not be on offer. */
final class ProgrammeStep implements WalkStep {

    private static final Map<String, String> DOSE = Map.of("hold_s", "hold", "reps", "repetitions", "sets", "sets", "minutes", "minutes",
            "every_hours", "everyHours", "times_per_day", "timesADay", "days_per_week", "daysAWeek");

    private final Map<String, String> names = Content.csv("exercises/exercises.csv").stream()
            .collect(Collectors.toMap(exercise -> exercise.text("key"), exercise -> exercise.text("name")));

    @Override
    public void walk(WalkedVisit visit) {
        if (visit.number() == 1) {
            conditions(visit);
        }
        visit.entry().entry("conditions").ifPresent(now -> {
            FilledForm form = visit.guest().open(visit.path("/programme/conditions")).expect(200).formWithButton("Save the answers");
            now.keys().forEach(key -> form.set(key, now.text(key)));
            form.send().expect(200);
        });
        visit.entry().entries("adherence").forEach(week -> note(visit, week));
        visit.entry().entries("prescriptions").forEach(given -> give(visit, given));
        visit.expected().ifPresent(expected -> check(visit, expected));
    }

    private static void conditions(WalkedVisit visit) {
        Guest guest = visit.guest();
        guest.open(visit.path("/programme/conditions")).expect(200);
        FilledForm form = guest.formWithButton("Save the answers");
        visit.demo().entry("case").orElseThrow().texts("conditions").stream().filter(form::offers).forEach(key -> form.set(key, "yes"));
        form.send().expect(200);
    }

    private void note(WalkedVisit visit, Entry week) {
        open(visit, week.text("exercise"));
        FilledForm form = visit.guest().formWithButton("Note the week").set("weekTo", week.text("to")).set("done", week.text("done"));
        week.optionalText("pain_during").ifPresent(pain -> form.set("painDuring", pain));
        week.optionalText("next_morning").ifPresent(morning -> form.set("nextMorning", morning));
        form.send().expect(200);
    }

    private void give(WalkedVisit visit, Entry given) {
        Guest guest = visit.guest();
        guest.open(visit.path("/programme")).expect(200);
        boolean known = guest.offersLink(names.get(given.text("exercise")));
        FilledForm form;
        if (known) {
            open(visit, given.text("exercise"));
            form = guest.formWithButton("Save the dose");
        } else {
            guest.open(visit.path("/programme/add/" + given.text("exercise"))).expect(200);
            form = guest.formWithButton("Give this exercise");
        }
        DOSE.forEach((key, field) -> form.set(field, given.optionalText(key).orElse("")));
        given.optionalText("side").filter(side -> !side.equals("both")).ifPresent(side -> form.set("side", side));
        given.optionalText("load_kg").ifPresent(load -> form.set("effort", load + " kg"));
        given.optionalText("note").ifPresent(note -> form.set("note", note));
        if (form.offers("considered")) {
            form.tickEach("considered");
        }
        form.send().expect(200);
    }

    private void open(WalkedVisit visit, String exercise) {
        visit.guest().open(visit.path("/programme")).expect(200).follow(names.get(exercise)).expect(200);
    }

    private void check(WalkedVisit visit, Entry expected) {
        Guest guest = visit.guest();
        for (String key : expected.texts("refused")) {
            assertEquals(false, offered(visit, guest, key), visit.where() + key + " is on offer");
        }
        for (String key : expected.texts("offered")) {
            assertEquals(true, offered(visit, guest, key), visit.where() + key + " is not on offer: " + guest.words());
        }
        expected.optionalText("load_rule").ifPresent(rule -> {
            String words = PainRule.Advice.valueOf(rule.toUpperCase(Locale.ROOT)).label();
            assertTrue(guest.open(visit.path("/programme")).expect(200).page().select("li.exercise b").eachText().contains(words + "."), visit.where() + guest.words());
        });
        expected.entry("adherence").ifPresent(kept -> {
            guest.open(visit.path("/programme")).expect(200);
            for (String key : kept.keys()) {
                Element item = guest.page().select("li.exercise").stream().filter(li -> li.selectFirst("h3").text().equals(names.get(key)))
                        .findFirst().orElseThrow(() -> guest.missing(names.get(key) + " is not in the programme"));
                String words = item.select(".exercise__kept").text().replace('\u00a0', ' ');
                assertTrue(words.contains(kept.text(key) + " %"), visit.where() + key + " was kept: " + words);
            }
        });
    }

    private boolean offered(WalkedVisit visit, Guest guest, String key) {
        guest.open(visit.path("/programme")).expect(200);
        if (guest.offersLink(names.get(key))) {
            return guest.follow(names.get(key)).expect(200).offersButton("Save the dose");
        }
        return guest.open(visit.path("/programme/add/" + key)).expect(200).offersButton("Give this exercise");
    }
}
