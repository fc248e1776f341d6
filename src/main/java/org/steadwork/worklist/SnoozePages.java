package org.steadwork.worklist;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/**
 * Putting an entry off: with a reason and a day, no longer than its rule allows, and back on the list before that when it became worse.
 * What is for now cannot be put off at all.
 */
@Path("/today/entries/{entry: \\d+}/snooze")
@RolesAllowed("clinician")
class SnoozePages {

    @CheckedTemplate(basePath = "worklist", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance entrySnooze(EntryView view, Form form, String hint);
    }

    private static final int LONGEST_REASON = 300;

    @Inject
    Worklists worklists;

    @Inject
    EntityManager db;

    @Inject
    CurrentAccount account;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response show(@RestPath long entry) {
        EntryView view = view(entry);
        audit.record("viewed why on Today", view.entry().caseFile().patient().id(), view.entry().caseFile().id(), "entry " + entry);
        return Answers.page(page(view, stored(view)));
    }

    @POST
    @Transactional
    public Response putOff(@RestPath long entry) {
        EntryView view = view(entry);
        WorklistEntry found = view.entry();
        Form form = posted.read();
        LocalDate back = form.requiredDate("backOn", "Back on the list on");
        String reason = form.requiredText("reason", "Why it can wait", LONGEST_REASON);
        requireAllowed(view, form, back);
        if (form.hasErrors()) {
            return Answers.unprocessable(page(view, form));
        }
        try {
            found.requireVersion(form.version());
        } catch (StaleVersionException stale) {
            return Answers.conflict(page(view, form.conflictsWith(Form.empty(), stale.stored())));
        }
        // it changes the entry too: two who put it off at once, or a look that finds it worse, collide
        db.persist(new Snooze(found, back, reason, account.get(), Instant.now(clock)));
        audit.record("put off on Today", found.caseFile().patient().id(), found.caseFile().id(), "entry " + entry + " until " + back);
        return Answers.seeOther("/");
    }

    @POST
    @Path("/end")
    @Transactional
    public Response end(@RestPath long entry) {
        EntryView view = view(entry);
        Form form = posted.read();
        Snooze snooze = view.snooze();
        if (snooze != null) {
            try {
                snooze.requireVersion(form.version());
            } catch (StaleVersionException stale) {
                return Answers.conflict(EntryPages.Templates.entryWhy(view));
            }
            snooze.end(Instant.now(clock), account.displayName(), "Taken back");
            audit.record("took back on Today", view.entry().caseFile().patient().id(), view.entry().caseFile().id(), "entry " + entry);
        }
        return Answers.seeOther("/today/entries/" + entry);
    }

    private EntryView view(long entry) {
        return EntryView.of(worklists.find(entry).orElseThrow(NotFoundException::new), worklists);
    }

    private void requireAllowed(EntryView view, Form form, LocalDate back) {
        if (!view.entry().stands()) {
            form.error("backOn", "This entry has left the list. There is nothing to put off.");
        } else if (view.snooze() != null) {
            form.error("backOn", "This entry is put off already, until " + Dates.shown(view.snooze().backOn()) + ".");
        } else if (!view.snoozable()) {
            form.error("backOn", "This entry cannot be put off: it is cleared by its one action alone.");
        } else if (back != null && (!back.isAfter(today()) || back.isAfter(latest(view)))) {
            form.error("backOn", "Choose a day " + (latest(view).equals(today().plusDays(1)) ? "no later than tomorrow, "
                    : "from tomorrow to ") + Dates.shown(latest(view)) + ". You entered " + Dates.shown(back) + ".");
        }
    }

    private Form stored(EntryView view) {
        return Form.empty().with("version", view.entry().version()).with("backOn", view.snoozable() ? Dates.shown(today().plusDays(1)) : null);
    }

    private TemplateInstance page(EntryView view, Form form) {
        String hint = "At most until " + Dates.shown(latest(view)) + (view.rule() != null && view.rule().snoozeDays() == 1 ? ": off the list for the rest of today." : ".");
        return Templates.entrySnooze(view, form, hint);
    }

    private LocalDate latest(EntryView view) {
        return today().plusDays(view.rule() == null ? 0 : view.rule().snoozeDays());
    }

    private LocalDate today() {
        return LocalDate.now(clock);
    }
}
