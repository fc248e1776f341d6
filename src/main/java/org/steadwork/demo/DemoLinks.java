package org.steadwork.demo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import org.steadwork.body.BodyChart;
import org.steadwork.casefile.CardKey;
import org.steadwork.casefile.CardKind;
import org.steadwork.casefile.Link;
import org.steadwork.casefile.LinkDecision;
import org.steadwork.casefile.Links;
import org.steadwork.content.Entry;
import org.steadwork.workplace.WorkplaceContent;

/** What the clinician tied on the map, at each visit that looks at a work place. */
@ApplicationScoped
class DemoLinks implements DemoVisitPart {

    @Inject
    Links links;

    @Inject
    BodyChart chart;

    @Inject
    WorkplaceContent content;

    @Override
    public int order() {
        return 35;
    }

    @Override
    public void load(DemoVisit visit) {
        visit.entry().entry("workplace").ifPresent(place -> place.entries("links").forEach(tied -> tie(visit, tied)));
    }

    private void tie(DemoVisit visit, Entry tied) {
        String zone = tied.text("zone");
        String finding = tied.text("finding");
        Link link = new Link(visit.file(), new CardKey(CardKind.SYMPTOM, zone), chart.zone(zone).label(), new CardKey(CardKind.FINDING, finding),
                content.criterion(finding).orElseThrow(() -> tied.problem("there is no criterion '" + finding + "'")).label());
        link.decide(LinkDecision.CONFIRMED, tied.text("reason"), visit.clinician(), visit.moment());
        links.persist(link);
    }
}
