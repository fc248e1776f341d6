package org.steadwork.review;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.VisitNote;
import org.steadwork.casefile.VisitNotes;
import org.steadwork.casefile.Visits;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Writing and signing the note of a visit. */
@Path("/cases/{id: \\d+}/visits/{number: \\d+}/note")
@RolesAllowed("clinician")
class NotePages {

    @Inject
    CaseHeads heads;

    @Inject
    Visits visits;

    @Inject
    VisitNotes notes;

    @Inject
    ReviewViews views;

    @Inject
    SigningConditions conditions;

    @Inject
    SignedNotes signed;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @POST
    @Transactional
    public Response write(@RestPath long id, @RestPath int number) {
        CaseFile file = heads.find(id);
        Visit visit = visits.numbered(id, number).orElseThrow(NotFoundException::new);
        Optional<VisitNote> stored = notes.of(visit);
        if (stored.isPresent() && stored.get().signed()) {
            return signed.refused(file, stored.get(), posted.read());
        }
        Form form = posted.read();
        boolean signing = form.is("do", "sign");
        String subjective = form.text("subjective", VisitNote.LONGEST);
        String objective = form.text("objective", VisitNote.LONGEST);
        String assessment = form.text("assessment", VisitNote.LONGEST);
        String plan = form.text("plan", VisitNote.LONGEST);
        if (signing) {
            require(form, "assessment", assessment, "The assessment is missing. A signed note says what you make of the findings.");
            require(form, "plan", plan, "The plan is missing. A signed note says what happens next.");
            conditions.of(visit).forEach(bar -> form.error("sign", bar));
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(ReviewPages.Templates.review(heads.head(file, CaseTab.VISITS),
                    views.of(visit, null, form, false, conditions.of(visit))));
        }
        int version = stored.map(note -> note.version() + 1).orElse(ReviewViews.NOT_STORED);
        if (form.version() != version) {
            form.conflictsWith(ReviewViews.show(stored.orElseGet(() -> new VisitNote(visit))), version);
            return Answers.conflict(ReviewPages.Templates.review(heads.head(file, CaseTab.VISITS), views.of(visit, null, form, false, List.of())));
        }
        VisitNote note = stored.orElseGet(() -> new VisitNote(visit));
        note.draft(subjective, objective, assessment, plan, account.displayName(), Instant.now(clock));
        if (signing) {
            note.sign(account.get(), Instant.now(clock));
        }
        notes.persist(note);
        audit.record(signing ? "signed note" : "saved note draft", file.patient().id(), id, "visit " + number);
        return Answers.seeOther(signing ? CaseTab.VISITS.href(id) + "/" + number : CaseTab.VISITS.href(id) + "/" + number + "#note");
    }

    private static void require(Form form, String field, String text, String message) {
        if (text == null && form.error(field) == null) {
            form.error(field, message);
        }
    }
}
