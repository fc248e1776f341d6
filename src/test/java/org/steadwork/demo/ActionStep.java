package org.steadwork.demo;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Map;
import java.util.stream.Collectors;
import org.jsoup.nodes.Element;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.journey.Guest;
import org.steadwork.web.Dates;

/** Work place: records what was agreed about a finding and what of it is in place, and finds each on the map, tied to its finding. */
final class ActionStep implements WalkStep {

    private final Map<String, Entry> criteria = Content.yaml("workplace/criteria.yaml").entries("criteria").stream()
            .collect(Collectors.toMap(criterion -> criterion.text("id"), criterion -> criterion));

    @Override
    public void walk(WalkedVisit visit) {
        visit.entry().entry("workplace").ifPresent(place -> {
            place.entries("actions").stream().filter(action -> action.has("finding")).forEach(action -> {
                record(visit, action, "agreed", visit.day(), action.text("action"));
                onTheMap(visit, action, "Agreed with " + DemoActions.WITH + ", " + Dates.shown(visit.day()));
            });
            place.entries("actions_done").forEach(done -> {
                LocalDate on = LocalDate.parse(done.text("on"));
                record(visit, done, "done", on, null);
                onTheMap(visit, done, "In place since " + Dates.shown(on));
            });
        });
    }

    private void record(WalkedVisit visit, Entry action, String stage, LocalDate on, String note) {
        Guest guest = visit.guest().open(visit.path("/work-place")).expect(200);
        Element link = guest.page().select(".finding:not(.finding--head)").stream()
                .filter(row -> row.selectFirst(".finding__what").ownText().equals(criteria.get(action.text("finding")).text("label")))
                .map(row -> row.selectFirst("a[href*=/findings/]")).findFirst()
                .orElseThrow(() -> guest.missing("no finding " + action.text("finding")));
        var form = guest.open(link.attr("href")).expect(200).formWithButton("Record the step").set("stage", stage).set("on", on.toString())
                .set("agreedWith", stage.equals("agreed") ? DemoActions.WITH : "");
        if (note != null) {
            form.set("note", note);
        }
        form.send().expect(200);
    }

    private void onTheMap(WalkedVisit visit, Entry action, String line) {
        Guest guest = visit.guest().open(visit.path("")).expect(200);
        String adjustment = criteria.get(action.text("finding")).text("adjustment");
        assertTrue(guest.page().select(".card").stream().anyMatch(card -> card.selectFirst("h4").text().contains(adjustment) && plain(card.text()).contains(plain(line))
                && card.selectFirst(".card__ties").text().startsWith("For ")), visit.where() + adjustment + ": " + line + " is not on the map: " + guest.words());
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }
}
