package org.steadwork.casemap;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CardKey;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.casefile.Link;
import org.steadwork.casefile.LinkDecision;
import org.steadwork.casefile.Links;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.web.PostedForm;

/** Deciding whether two cards of the map are tied, with a reason. */
@Path("/cases/{id: \\d+}/ties")
@RolesAllowed("clinician")
class TiePages {

    @CheckedTemplate(basePath = "casemap", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance tie(CaseHead head, Form form, List<Option> from, List<Option> to, String why);
    }

    @Inject
    CaseHeads heads;

    @Inject
    CaseMaps maps;

    @Inject
    Links links;

    @Inject
    Strengths strengths;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    /** Shows the form, with the cards of the address chosen and what was decided about them before. */
    @GET
    public Response tie(@RestPath long id, @RestQuery String from, @RestQuery String to) {
        CaseHead head = heads.open(id, CaseTab.MAP);
        TieForm typed = TieForm.of(from, to);
        Form form = typed.form(stored(links.of(id), typed));
        return Answers.page(page(head, builder(head.file()), form, typed));
    }

    @POST
    @Transactional
    public Response tiePosted(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        List<Link> stored = links.ofForChange(id);
        MapBuilder map = new MapBuilder(maps.cards(file), stored, strengths);
        TieForm typed = TieForm.of(form.value("from"), form.value("to"));
        Optional<Link> known = stored(stored, typed);
        typed.check(form, map, known);
        String reason = form.requiredText("reason", "The reason", Link.LONGEST_REASON);
        LinkDecision decision = form.requiredChoice("decision", "Decision", LinkDecision.class);
        if (form.hasErrors()) {
            return Answers.unprocessable(page(heads.head(file, CaseTab.MAP), map, form, typed));
        }
        try {
            StaleVersionException.check(form.version(), known.map(Link::version).orElse(-1));
        } catch (StaleVersionException stale) {
            return Answers.conflict(page(heads.head(file, CaseTab.MAP), map, form.conflictsWith(typed.form(known), stale.stored()), typed));
        }
        Link link = known.orElseGet(() -> new Link(file, typed.from(), map.titleOf(typed.from()), typed.to(), map.titleOf(typed.to())));
        link.decide(decision, reason, account.get(), clock.instant());
        links.persist(link);
        audit.record(decision.label() + " a tie on the map", file.patient().id(), id, null);
        return Answers.seeOther(CaseTab.MAP.href(id) + "#ties");
    }

    private MapBuilder builder(CaseFile file) {
        return new MapBuilder(maps.cards(file), links.of(file.id()), strengths);
    }

    private static Optional<Link> stored(List<Link> links, TieForm typed) {
        return links.stream().filter(link -> typed.complete() && link.between(typed.from(), typed.to())).findFirst();
    }

    private static TemplateInstance page(CaseHead head, MapBuilder map, Form form, TieForm typed) {
        String why = typed.complete() ? map.why(typed.from(), typed.to()) : "";
        return Templates.tie(head, form, TieForm.fromOptions(map), TieForm.toOptions(map), why);
    }
}
