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
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.Account;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.Addendum;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.casefile.VisitNote;
import org.steadwork.casefile.VisitNotes;
import org.steadwork.casefile.Visits;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Adding to a signed note. */
@Path("/cases/{id: \\d+}/visits/{number: \\d+}/addenda")
@RolesAllowed("clinician")
class AddendumPages {

    @Inject
    CaseHeads heads;

    @Inject
    Visits visits;

    @Inject
    VisitNotes notes;

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
    public Response add(@RestPath long id, @RestPath int number) {
        CaseFile file = heads.find(id);
        VisitNote note = visits.numbered(id, number).flatMap(notes::of).filter(VisitNote::signed).orElseThrow(NotFoundException::new);
        Form form = posted.read();
        String words = form.requiredText("words", "The addendum", VisitNote.LONGEST);
        if (form.hasErrors()) {
            return Answers.unprocessable(signed.page(heads.head(file, CaseTab.VISITS), note, form));
        }
        Account author = account.get();
        notes.add(new Addendum(note, words, author.fullName() + (author.profession() == null ? "" : ", " + author.profession()), Instant.now(clock)));
        audit.record("added to a signed note", file.patient().id(), id, "visit " + number);
        return Answers.seeOther(CaseTab.VISITS.href(id) + "/" + number);
    }
}
