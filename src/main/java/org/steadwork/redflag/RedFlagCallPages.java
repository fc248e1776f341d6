package org.steadwork.redflag;

import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Recording a call about red flags: who was called, when, and what they answered. */
@Path("/cases/{id: \\d+}/red-flags/calls")
@RolesAllowed("clinician")
class RedFlagCallPages {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("H[:][.]mm", Locale.ROOT);

    @Inject
    CaseHeads heads;

    @Inject
    RedFlagPageBuilder pages;

    @Inject
    FlagActions calls;

    @Inject
    CurrentAccount account;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @POST
    @Transactional
    public Response record(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        String called = form.requiredText("called", "Who was called", 300);
        String role = form.text("calledRole", 300);
        LocalDate day = form.requiredDate("calledOn", "Day of the call");
        LocalTime time = time(form);
        String said = form.requiredText("said", "What was said and answered", 2000);
        if (day != null && time != null && day.atTime(time).isAfter(LocalDateTime.now(clock))) {
            form.error("calledTime", "A call is recorded after it was made, but " + time + " is still to come.");
        }
        if (day != null && day.isBefore(file.openedOn())) {
            form.error("calledOn", "The case was opened later than that day.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(again(file, form));
        }
        calls.persist(new FlagAction(file, called, role, day.atTime(time), said, form.ticked("accepted"), account.get(), clock.instant()));
        audit.record("recorded red-flag call", file.patient().id(), id, null);
        return Answers.seeOther(CaseTab.RED_FLAGS.href(id) + "#calls");
    }

    private static LocalTime time(Form form) {
        String text = form.requiredText("calledTime", "Time of the call", 10);
        try {
            return text == null ? null : LocalTime.parse(text, TIME);
        } catch (DateTimeException e) {
            form.error("calledTime", "Time of the call must be a time, for example 11:40. You entered “" + text + "”.");
            return null;
        }
    }

    /** The answers come from what is stored, the call from what was typed. */
    private TemplateInstance again(CaseFile file, Form typed) {
        Form form = pages.stored(file);
        typed.fields().forEach(field -> {
            if (!field.equals("version")) {
                form.with(field, typed.value(field));
            }
        });
        typed.problems().forEach(problem -> form.error(problem.field(), problem.message()));
        return RedFlagPages.Templates.redFlags(heads.head(file, CaseTab.RED_FLAGS), pages.page(file, form), form, RedFlagPageBuilder.OCCASIONS);
    }
}
