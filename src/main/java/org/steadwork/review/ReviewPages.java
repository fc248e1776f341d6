package org.steadwork.review;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
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
import java.util.Objects;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.Addendum;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.VisitChanged;
import org.steadwork.casefile.VisitNote;
import org.steadwork.casefile.VisitNotes;
import org.steadwork.casefile.Visits;
import org.steadwork.casefile.WorkStatus;
import org.steadwork.casefile.WorkStatuses;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.outcome.RatingForm;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** The review of one visit: what is recorded while the note is a draft, and the signed note afterwards. */
@Path("/cases/{id: \\d+}/visits/{number: \\d+}")
@RolesAllowed("clinician")
class ReviewPages {

    @CheckedTemplate(basePath = "review", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance review(CaseHead head, ReviewView view);

        static native TemplateInstance signedNote(CaseHead head, VisitNote note, List<Addendum> addenda, boolean late, Form form);
    }

    @Inject
    CaseHeads heads;

    @Inject
    Visits visits;

    @Inject
    VisitNotes notes;

    @Inject
    WorkStatuses statuses;

    @Inject
    ReviewViews views;

    @Inject
    RatingForm ratingForm;

    @Inject
    Surroundings surroundings;

    @Inject
    SigningConditions conditions;

    @Inject
    SignedNotes signed;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    Event<VisitChanged> changed;

    @Inject
    PostedForm posted;

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    @GET
    public Response review(@RestPath long id, @RestPath int number, @RestQuery String draft) {
        CaseHead head = heads.open(id, CaseTab.VISITS);
        Visit visit = find(id, number);
        Optional<VisitNote> note = notes.of(visit).filter(VisitNote::signed);
        if (note.isPresent()) {
            return Answers.page(signed.page(head, note.get(), Form.empty()));
        }
        return Answers.page(Templates.review(head, views.of(visit, null, null, "new".equals(draft), conditions.of(visit))));
    }

    @POST
    @Transactional
    public Response record(@RestPath long id, @RestPath int number) {
        CaseFile file = heads.find(id);
        Visit visit = find(id, number);
        Optional<VisitNote> note = notes.of(visit).filter(VisitNote::signed);
        if (note.isPresent()) {
            return signed.refused(file, note.get());
        }
        Form form = posted.read();
        RatingForm.Ratings ratings = ratingForm.read(form, id);
        ReviewForm typed = ReviewForm.read(form, file, LocalDate.now(clock), ratings);
        typed.nextReviewOnlyAtTheLatest(form, file, typed.visitedOn() == null ? Optional.empty() : visits.latestAfter(id, typed.visitedOn(), number));
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.review(heads.head(file, CaseTab.VISITS), views.of(visit, form, null, false, List.of())));
        }
        try {
            visit.requireVersion(form.version());
        } catch (StaleVersionException stale) {
            form.conflictsWith(views.shown(visit), stale.stored());
            return Answers.conflict(Templates.review(heads.head(file, CaseTab.VISITS), views.of(visit, form, null, false, List.of())));
        }
        visit.moveTo(typed.visitedOn());
        visit.describe(typed.kind());
        visit.attended(typed.attendance());
        changed.fire(new VisitChanged(visit));
        ratingForm.store(file, typed.visitedOn(), ratings);
        surroundings.putRight(file, form, typed.visitedOn());
        workStatus(file, typed);
        if (form.fields().contains("nextReviewOn")) {
            file.reviewOn(typed.nextReviewOn());
        }
        // scores and work status stand elsewhere; the visit's version speaks for the whole review
        db.lock(visit, LockModeType.OPTIMISTIC_FORCE_INCREMENT);
        audit.record("recorded review", file.patient().id(), id, "visit " + number);
        return Answers.seeOther("/cases/" + id + "/visits/" + number + "?draft=new#note");
    }

    private void workStatus(CaseFile file, ReviewForm typed) {
        if (typed.code() == null) {
            return;
        }
        WorkStatus status = statuses.beginning(file.id(), typed.from()).orElseGet(() -> new WorkStatus(file, typed.from()));
        boolean same = status.id() != null && status.code() == typed.code() && Objects.equals(status.until(), typed.until())
                && status.decidedBy() == typed.decidedBy() && Objects.equals(status.limits(), typed.limits())
                && (status.hoursAWeek() == null ? typed.hours() == null : typed.hours() != null && status.hoursAWeek().compareTo(typed.hours()) == 0);
        if (!same) {
            status.describe(typed.code(), typed.until(), typed.decidedBy(), typed.hours(), typed.limits(), account.displayName(), Instant.now(clock));
            statuses.persist(status);
        }
    }

    private Visit find(long id, int number) {
        return visits.numbered(id, number).orElseThrow(NotFoundException::new);
    }
}
