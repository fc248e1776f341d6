package org.steadwork.diary;

import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.Accounts;
import org.steadwork.account.AuditTrail;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** One entry of the waiting list: changed, taken off, or booked into a gap. */
@Path("/diary/waiting/{waiting: \\d+}")
@RolesAllowed("staff")
class WaitingEntryPages {

    @Inject
    WaitingLists lists;

    @Inject
    BookViews views;

    @Inject
    BookingDesk desk;

    @Inject
    Accounts accounts;

    @Inject
    DiaryContent content;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response edit(@RestPath long waiting) {
        WaitingEntry entry = find(waiting);
        return Answers.page(page(entry, WaitingForm.show(entry)));
    }

    @POST
    @Transactional
    public Response save(@RestPath long waiting) {
        WaitingEntry entry = find(waiting);
        Form form = posted.read();
        WaitingForm typed = WaitingForm.read(form, accounts.clinicians(), content, entry.sinceOn());
        if (form.hasErrors()) {
            return Answers.unprocessable(page(entry, form));
        }
        try {
            entry.requireVersion(form.version());
        } catch (StaleVersionException stale) {
            return Answers.conflict(page(entry, form.conflictsWith(WaitingForm.show(entry), stale.stored())));
        }
        typed.fill(entry);
        return Answers.seeOther("/diary/waiting");
    }

    @POST
    @Path("/off")
    @Transactional
    public Response takeOff(@RestPath long waiting) {
        WaitingEntry entry = find(waiting);
        Form form = posted.read();
        try {
            entry.requireVersion(form.version());
        } catch (StaleVersionException stale) {
            return Answers.conflict(page(entry, form.conflictsWith(WaitingForm.show(entry), stale.stored())));
        }
        entry.takeOff(Instant.now(clock));
        audit.record("took off the waiting list", entry.patient().id(), entry.caseFile() == null ? null : entry.caseFile().id(), null);
        return Answers.seeOther("/diary/waiting");
    }

    /** Books the entry into a gap, or into a time offered; where that fails the booking page opens with all of it filled in. */
    @POST
    @Path("/book")
    public Response book(@RestPath long waiting) {
        WaitingEntry entry = find(waiting);
        Form form = posted.read();
        form.with("patient", entry.patient().id()).with("waiting", entry.id()).with("kind", BookForm.value(entry.kind()))
                .with("caseId", entry.caseFile() == null ? null : entry.caseFile().id());
        BookForm.When when = BookForm.when(form, entry.kind(), content);
        if (form.hasErrors() || !when.complete()) {
            return Answers.unprocessable(BookPages.Templates.book(views.of(form, entry.patient(), null)));
        }
        try {
            long id = desk.book(new Wish(entry.patient().id(), entry.caseFile() == null ? null : entry.caseFile().id(), null, entry.id(), entry.kind(), when.minutes(),
                    when.clinicianId(), when.room(), when.day(), when.start()));
            return Answers.seeOther("/diary?day=" + when.day() + "&done=" + id + "#a-" + id);
        } catch (Refused refused) {
            form.error(refused.field(), refused.getMessage());
            TemplateInstance page = BookPages.Templates.book(views.of(form, entry.patient(), null));
            return refused.taken() ? Answers.conflict(page) : Answers.unprocessable(page);
        }
    }

    private WaitingEntry find(long id) {
        return lists.whole(id).filter(entry -> !entry.ended()).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(WaitingEntry entry, Form form) {
        return WaitingPages.Templates.waitingEdit(new WaitingView(entry, entry.patient(), List.of(), form, accounts.clinicians(), content.partOptions()));
    }
}
