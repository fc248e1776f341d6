package org.steadwork.diary;

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
import java.util.List;
import java.util.OptionalInt;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.diary.rules.ClinicTime;
import org.steadwork.diary.rules.Span;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.web.PostedForm;

/** After a missed visit: the step that follows, and the record of who was tried by which route. The front desk sees no clinical reason. */
@Path("/diary/missed")
@RolesAllowed("staff")
class MissedPages {

    @CheckedTemplate(basePath = "diary", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance missed(List<Missed> rows);

        static native TemplateInstance missedOne(Missed one, MissedView view, Form form);
    }

    /** What the page of one missed visit offers, and the words of what was tried. */
    record MissedView(List<Option> routes, List<Option> outcomes, List<Option> reasons) {

        public String route(ContactAttempt one) {
            return MissedContent.label(routes, one.route());
        }

        public String outcome(ContactAttempt one) {
            return MissedContent.label(outcomes, one.outcome());
        }

        public String reason(ContactAttempt one) {
            return one.reason() == null ? "" : MissedContent.label(reasons, one.reason());
        }
    }

    @Inject
    FollowUps missed;

    @Inject
    MissedContent content;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    PostedForm posted;

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    @GET
    public Response list() {
        return Answers.page(Templates.missed(missed.open()));
    }

    @GET
    @Path("/{missed: [av]\\d+}")
    public Response one(@RestPath("missed") String key) {
        Missed one = find(key);
        audit.record("viewed contacts after a missed visit", one.patient().id(), one.caseFile() == null ? null : one.caseFile().id(), null);
        return Answers.page(page(one, form()));
    }

    @POST
    @Path("/{missed: [av]\\d+}")
    @Transactional
    public Response record(@RestPath("missed") String key) {
        Missed one = find(key);
        Form form = posted.read();
        String route = among(form, "route", "Route", content.routes(), true);
        String outcome = among(form, "outcome", "What came of it", content.outcomes(), true);
        String reason = among(form, "reason", "Reason for not coming", content.reasons(), false);
        Instant at = at(form, one.day());
        if (form.hasErrors()) {
            return Answers.unprocessable(page(one, form));
        }
        db.persist(new ContactAttempt(one.visit(), one.visit() == null ? one.appointment() : null, at, route, outcome, reason, account.displayName()));
        audit.record("recorded contact after a missed visit", one.patient().id(), one.caseFile() == null ? null : one.caseFile().id(), route);
        return Answers.seeOther("/diary/missed/" + key);
    }

    private Instant at(Form form, LocalDate missedOn) {
        LocalDate day = form.requiredDate("triedOn", "Day");
        OptionalInt time = ClinicTime.read(form.value("time"));
        if (time.isEmpty() || time.getAsInt() >= Span.DAY) {
            form.error("time", "Time must be a time of day, for example 16:05.");
        }
        if (day == null || form.error("time") != null) {
            return null;
        }
        Instant at = ClinicTime.at(day, time.getAsInt(), clock.getZone());
        if (day.isBefore(missedOn)) {
            form.error("triedOn", "The visit was missed on " + Dates.shown(missedOn) + "; a contact about it cannot lie before.");
        } else if (at.isAfter(Instant.now(clock).plusSeconds(60))) {
            form.error("time", "A contact cannot lie in the future.");
        }
        return at;
    }

    private static String among(Form form, String field, String label, List<Option> options, boolean required) {
        String value = form.value(field).strip();
        if (options.stream().anyMatch(one -> one.value().equals(value))) {
            return value;
        }
        if (required || !value.isEmpty()) {
            form.error(field, value.isEmpty() ? label + " is missing. Choose one." : label + ": choose one of the answers offered.");
        }
        return null;
    }

    private Form form() {
        return Form.empty().with("triedOn", Dates.shown(LocalDate.now(clock))).with("time", DiaryWords.time(Instant.now(clock), clock.getZone()));
    }

    private Missed find(String key) {
        return missed.find(key).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(Missed one, Form form) {
        return Templates.missedOne(one, new MissedView(content.routes(), content.outcomes(), content.reasons()), form);
    }
}
