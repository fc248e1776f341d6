package org.steadwork.meeting;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.Account;
import org.steadwork.account.Accounts;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Decisions and actions on a case, written in the meeting; put right or taken out until it is closed. */
@Path("/meetings/{meeting: \\d+}/cases/{caseFile: \\d+}/outcome")
@RolesAllowed("clinician")
class CaseOutcomePages {

    private static final String TAKE_OUT = "remove";

    @Inject
    MeetingDesk desk;

    @Inject
    Meetings meetings;

    @Inject
    CaseOutcomes outcomes;

    @Inject
    CaseSheet sheet;

    @Inject
    Accounts accounts;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @POST
    @Path("/decisions")
    @Transactional
    public Response decide(@RestPath long meeting, @RestPath long caseFile) {
        return write(meeting, caseFile, (open, file, form) -> {
            Decision.Terms terms = CaseOutcomeForm.decision(form, CaseOutcomeForm.NEW_DECISION, people(), open.heldOn());
            if (!form.hasErrors()) {
                Decision decision = new Decision(open, file);
                decision.decide(terms, account.displayName(), Instant.now(clock));
                meetings.add(decision);
            }
            return "recorded decision of review meeting";
        });
    }

    @POST
    @Path("/decisions/{decision: \\d+}")
    @Transactional
    public Response changeDecision(@RestPath long meeting, @RestPath long caseFile, @RestPath long decision) {
        return write(meeting, caseFile, (open, file, form) -> {
            Decision stored = outcomes.decision(caseFile, decision).filter(one -> one.meeting().id().equals(meeting)).orElseThrow(NotFoundException::new);
            String prefix = CaseOutcomeForm.prefix(stored);
            if (stale(form, prefix, stored.version(), CaseOutcomeForm.show(stored, Form.empty()))) {
                return "";
            }
            if (outcomes.answered(stored)) {
                form.error(prefix + "words", "The treating clinician has answered this decision already, so it stays as it is. Record another.");
            } else if (form.is("do", TAKE_OUT)) {
                meetings.remove(stored);
                return "took decision of review meeting out";
            }
            Decision.Terms terms = CaseOutcomeForm.decision(form, prefix, people(), open.heldOn());
            if (!form.hasErrors()) {
                stored.decide(terms, account.displayName(), Instant.now(clock));
            }
            return "changed decision of review meeting";
        });
    }

    @POST
    @Path("/actions")
    @Transactional
    public Response act(@RestPath long meeting, @RestPath long caseFile) {
        return write(meeting, caseFile, (open, file, form) -> {
            CaseOutcomeForm.ActionTerms terms = CaseOutcomeForm.action(form, CaseOutcomeForm.NEW_ACTION, people(), open.heldOn());
            if (!form.hasErrors()) {
                MeetingAction action = new MeetingAction(open, file);
                action.agree(terms.words(), terms.who(), terms.due(), account.displayName(), Instant.now(clock));
                meetings.add(action);
            }
            return "recorded action of review meeting";
        });
    }

    @POST
    @Path("/actions/{action: \\d+}")
    @Transactional
    public Response changeAction(@RestPath long meeting, @RestPath long caseFile, @RestPath long action) {
        return write(meeting, caseFile, (open, file, form) -> {
            MeetingAction stored = outcomes.action(caseFile, action).filter(one -> one.meeting().id().equals(meeting)).orElseThrow(NotFoundException::new);
            String prefix = CaseOutcomeForm.prefix(stored);
            if (stale(form, prefix, stored.version(), CaseOutcomeForm.show(stored, Form.empty()))) {
                return "";
            }
            if (!stored.steps().isEmpty()) {
                form.error(prefix + "words", "Something became of this action already, so it stays as it is. Record another.");
            } else if (form.is("do", TAKE_OUT)) {
                meetings.remove(stored);
                return "took action of review meeting out";
            }
            CaseOutcomeForm.ActionTerms terms = CaseOutcomeForm.action(form, prefix, people(), open.heldOn());
            if (!form.hasErrors()) {
                stored.agree(terms.words(), terms.who(), terms.due(), account.displayName(), Instant.now(clock));
            }
            return "changed action of review meeting";
        });
    }

    /** One change on a case: notes what is wrong in the form, and returns what was done for the audit trail. */
    private interface Change {
        String make(ReviewMeeting open, CaseFile file, Form form);
    }

    private Response write(long meeting, long caseFile, Change change) {
        ReviewMeeting open = desk.forChange(meeting);
        CaseFile file = desk.file(caseFile);
        Form form = posted.read();
        Optional<Response> shut = Shut.answer(desk, open, form);
        if (shut.isPresent()) {
            return shut.get();
        }
        String back = CaseOutcomeForm.back(form.value("back"));
        String done = change.make(open, file, form);
        if (form.conflict() || form.hasErrors()) {
            // the form beside it, of question and minutes, keeps the version of what is stored
            form.with("version", meetings.caseOf(meeting, caseFile).map(item -> item.version() + 1).orElse(0));
            return sheet.answer(form.conflict() ? 409 : 422, open, file, form, back);
        }
        desk.touch(open, file);
        desk.changed(open);
        audit.record(done, file.patient().id(), caseFile, null);
        return Answers.seeOther("/meetings/" + meeting + (back.isEmpty() ? "/cases/" : "/show/") + caseFile + "#decided");
    }

    private static boolean stale(Form form, String prefix, int stored, Form now) {
        boolean stale = CaseOutcomeForm.version(form, prefix) != stored;
        if (stale) {
            form.conflictsWith(now, 0);
            form.with(prefix + "version", stored);
        }
        return stale;
    }

    private Map<String, Account> people() {
        return accounts.all().stream().filter(Account::active).collect(Collectors.toMap(one -> String.valueOf(one.id()), Function.identity()));
    }
}
