package org.steadwork.demo;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.jsoup.nodes.Element;
import org.steadwork.content.Entry;
import org.steadwork.journey.FilledForm;
import org.steadwork.journey.Guest;

/** Map: ties a symptom with a finding, with the reason, and finds the line on the map and in its table. */
final class MapStep implements WalkStep {

    @Override
    public void walk(WalkedVisit visit) {
        visit.entry().entry("workplace").ifPresent(place -> place.entries("links").forEach(link -> tie(visit, link)));
    }

    private static void tie(WalkedVisit visit, Entry link) {
        Guest guest = visit.guest();
        guest.open(visit.path("/ties")).expect(200);
        FilledForm form = guest.formWithButton("Confirm the tie");
        form.set("from", "symptom:" + link.text("zone")).set("to", "finding:" + link.text("finding")).set("reason", link.text("reason")).send().expect(200);
        Element row = guest.page().select("#ties tr").stream().filter(tr -> tr.text().contains("\u201c" + link.text("reason") + "\u201d")).findFirst()
                .orElseThrow(() -> guest.missing("no tie because of '" + link.text("reason") + "'"));
        assertTrue(row.select("td[data-label=Decision]").text().startsWith("confirmed"), visit.where() + row.text());
        String from = row.select("td[data-label=From]").text().split(" ")[0];
        String to = row.select("td[data-label=To]").text().split(" ")[0];
        assertTrue(guest.page().select(".card").stream().anyMatch(card -> card.selectFirst("h4").text().startsWith(from + " ")
                && card.selectFirst(".card__ties").text().matches("With (.*, )?" + to + "\\b.*")), visit.where() + from + " is not drawn with " + to);
    }
}
