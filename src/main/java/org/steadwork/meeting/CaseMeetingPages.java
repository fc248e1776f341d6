package org.steadwork.meeting;

import io.quarkus.qute.CheckedTemplate;
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
import java.time.LocalDate;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.meeting.agenda.AskKind;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.web.PostedForm;

/** What review meetings have to do with a case: ask for one, answer what it advised, say what became of actions. */
@Path("/cases/{id: \\d+}/meetings")
@RolesAllowed("clinician")
class CaseMeetingPages {

    @CheckedTemplate(basePath = "meeting", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance caseMeetings(CaseHead head, View view, Form form);
    }

    /** What the page shows. */
    record View(List<CaseAsk> asks, List<CaseOutcomes.Decided> decisions, List<MeetingAction> actions, PlannedVisits planned, ReviewMeeting next,
            LocalDate today) {

        public List<Option> kinds() {
            return Option.of(AskKind.class, AskKind::label);
        }

        public List<Option> answers() {
            return List.of(new Option("accepted", "Accept"), new Option("declined", "Decline"));
        }

        public List<Option> states(MeetingAction action) {
            return action.open() ? List.of(new Option("done", "Done"), new Option("dropped", "Dropped, with a reason"))
                    : List.of(new Option("open", "Open again, with a reason"));
        }
    }

    @Inject
    CaseHeads heads;

    @Inject
    CaseOutcomes outcomes;

    @Inject
    Meetings meetings;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response show(@RestPath long id) {
        CaseHead head = heads.open(id, CaseTab.VISITS);
        return Answers.page(page(head, null));
    }

    @POST
    @Path("/asks")
    @Transactional
    public Response ask(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        AskKind kind = form.requiredChoice("kind", "The kind of reason", AskKind.class);
        String words = form.requiredText("words", "The reason", 500);
        if (!file.open()) {
            form.error("kind", "The case is closed. Open it again before asking for it to be discussed.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(page(file, form));
        }
        meetings.add(new CaseAsk(file, kind, words, account.displayName(), Instant.now(clock)));
        return done(file, "asked for case to be discussed");
    }

    /** Takes back what was asked. */
    @POST
    @Path("/asks/{ask: \\d+}")
    @Transactional
    public Response takeBack(@RestPath long id, @RestPath long ask) {
        CaseFile file = heads.find(id);
        CaseAsk asked = outcomes.asks(id).stream().filter(one -> one.id() == ask).findFirst().orElseThrow(NotFoundException::new);
        Form form = posted.read();
        String field = "settle" + ask;
        if (!asked.open()) {
            String typed = form.value(field).strip();
            form.error("settled", "It was settled already: " + asked.settledHow() + "." + (typed.isEmpty() ? "" : " You typed: “" + typed + "”"));
            return Answers.conflict(page(file, form));
        }
        String why = form.requiredText(field, "The reason", 500);
        if (form.hasErrors()) {
            return Answers.unprocessable(page(file, form));
        }
        asked.settle(account.displayName(), Instant.now(clock), "Taken back: " + why);
        return done(file, "took back that case be discussed");
    }

    @POST
    @Path("/planned-visits")
    @Transactional
    public Response plan(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        Integer visits = form.integer("visits", "Planned visits", 1, PlannedVisits.MOST);
        if (form.hasErrors()) {
            return Answers.unprocessable(page(file, form));
        }
        PlannedVisits planned = outcomes.planned(id).orElseGet(() -> new PlannedVisits(id));
        int version = outcomes.planned(id).map(one -> one.version() + 1).orElse(0);
        if (form.version() != version) {
            form.conflictsWith(Form.empty().with("visits", planned.visits()), version);
            return Answers.conflict(page(file, form));
        }
        planned.agree(visits, account.displayName(), Instant.now(clock));
        meetings.add(planned);
        return done(file, "agreed planned visits");
    }

    /** The treating clinician accepts or declines what a meeting advised, with a word why. */
    @POST
    @Path("/decisions/{decision: \\d+}")
    @Transactional
    public Response answer(@RestPath long id, @RestPath long decision) {
        CaseFile file = heads.find(id);
        Decision advised = outcomes.decision(id, decision).orElseThrow(NotFoundException::new);
        Form form = posted.read();
        String answer = form.value("answer" + decision).strip();
        String why = form.text("why" + decision, 1000);
        if (outcomes.answered(advised)) {
            form.error("answer" + decision, "This decision was answered already; the answer stays as it is. You typed: " + form.value("why" + decision));
            return Answers.conflict(page(file, form));
        }
        if (!answer.equals("accepted") && !answer.equals("declined")) {
            form.error("answer" + decision, "The answer is missing. Choose one.");
        }
        if (why == null) {
            form.error("why" + decision, "A word why is missing.");
        }
        if (!file.clinician().id().equals(account.id())) {
            form.error("answer" + decision, "The treating clinician, " + file.clinician().displayName() + ", answers what the meeting advised.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(page(file, form));
        }
        meetings.add(new DecisionAnswer(advised, answer.equals("accepted"), why, account.get(), Instant.now(clock)));
        return done(file, "answered decision of review meeting");
    }

    /** What became of an action: done, dropped with a reason, or opened again with one. */
    @POST
    @Path("/actions/{action: \\d+}")
    @Transactional
    public Response act(@RestPath long id, @RestPath long action) {
        CaseFile file = heads.find(id);
        MeetingAction agreed = outcomes.action(id, action).orElseThrow(NotFoundException::new);
        Form form = posted.read();
        ActionStep.State state = form.requiredChoice("state" + action, "What became of it", ActionStep.State.class);
        String reason = form.text("reason" + action, 500);
        LocalDate today = LocalDate.now(clock);
        LocalDate day = form.requiredDate("day" + action, "Day");
        if (day != null && (day.isAfter(today) || day.isBefore(agreed.meeting().heldOn()))) {
            form.error("day" + action, "The day lies between the meeting, " + Dates.shown(agreed.meeting().heldOn()) + ", and today. You entered "
                    + Dates.shown(day) + ".");
        }
        if (state != null && agreed.open() == (state == ActionStep.State.OPEN)) {
            form.error("state" + action, "It is recorded as " + agreed.state(today).label() + " already"
                    + (agreed.last() == null ? "." : ", by " + agreed.last().recordedBy() + "."));
            return Answers.conflict(page(file, form));
        }
        if (state != null && state != ActionStep.State.DONE && reason == null && form.error("reason" + action) == null) {
            form.error("reason" + action, "A reason is missing: an action is dropped or opened again with one.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(page(file, form));
        }
        ActionStep step = new ActionStep(agreed, state, reason, day, account.displayName(), Instant.now(clock));
        meetings.add(step);
        agreed.add(step);
        return done(file, "recorded what became of action of review meeting");
    }

    private Response done(CaseFile file, String action) {
        audit.record(action, file.patient().id(), file.id(), null);
        return Answers.seeOther("/cases/" + file.id() + "/meetings");
    }

    private TemplateInstance page(CaseFile file, Form typed) {
        return page(heads.head(file, CaseTab.VISITS), typed);
    }

    private TemplateInstance page(CaseHead head, Form typed) {
        long id = head.id();
        LocalDate today = LocalDate.now(clock);
        View view = new View(outcomes.asks(id), outcomes.decisions(id), outcomes.actions(id), outcomes.planned(id).orElse(null),
                meetings.next().map(meetings::whole).orElse(null), today);
        Form form = Form.empty().with("version", view.planned() == null ? 0 : view.planned().version() + 1)
                .with("visits", view.planned() == null ? null : view.planned().visits());
        view.actions().forEach(action -> form.with("day" + action.id(), Dates.shown(today)));
        if (typed != null) {
            form.fields().stream().filter(field -> !typed.fields().contains(field)).forEach(field -> typed.with(field, form.value(field)));
        }
        return Templates.caseMeetings(head, view, typed == null ? form : typed);
    }
}
