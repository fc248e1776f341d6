package org.steadwork.workplace;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.AuditTrail;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedFile;
import org.steadwork.web.PostedForm;
import org.steadwork.workplace.photo.Photo;
import org.steadwork.workplace.photo.PhotoIntake;
import org.steadwork.workplace.photo.RefusedPhoto;

/** The photographs of an assessment: adding, looking, saying whether they may leave the clinic, withdrawing. */
@Path("/cases/{id: \\d+}/work-place/photos")
@RolesAllowed("clinician")
class PhotoPages {

    @Inject
    CaseHeads heads;

    @Inject
    Assessments assessments;

    @Inject
    Photos photos;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @GET
    @Path("/new")
    public Response add(@RestPath long id, @RestQuery Long assessment) {
        CaseHead head = heads.open(id, CaseTab.WORK_PLACE);
        WorkplaceAssessment look = look(id, assessment == null ? "" : assessment.toString());
        return Answers.page(WorkplacePages.Templates.photoNew(head, look, Form.empty().with("assessment", look.id())));
    }

    @POST
    @Path("/new")
    @Transactional
    public Response addPosted(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        WorkplaceAssessment look = look(id, form.value("assessment"));
        String caption = form.requiredText("caption", "What it shows", 300);
        Photo taken = taken(form);
        if (form.hasErrors()) {
            return Answers.unprocessable(WorkplacePages.Templates.photoNew(heads.head(file, CaseTab.WORK_PLACE), look, form));
        }
        WorkplacePhoto photo = photos.add(look, taken, caption, form.ticked("mayLeave"));
        audit.record("added photograph", file.patient().id(), id, "photograph " + photo.id());
        return Answers.seeOther("/cases/" + id + "/work-place?assessment=" + look.id() + "#s-photos");
    }

    /** Reads the file that was sent; what is wrong with it is noted at its field. */
    private Photo taken(Form form) {
        Optional<PostedFile> sent = posted.file("photo", PhotoIntake.MOST_BYTES);
        if (sent.isEmpty()) {
            form.error("photo", "Choose a photograph, JPEG or PNG.");
            return null;
        }
        try {
            return PhotoIntake.take(sent.get().bytes());
        } catch (RefusedPhoto refused) {
            form.error("photo", refused.getMessage());
            return null;
        }
    }

    @GET
    @Path("/{photo: \\d+}")
    public Response show(@RestPath long id, @RestPath("photo") long photoId) {
        CaseHead head = heads.open(id, CaseTab.WORK_PLACE);
        WorkplacePhoto photo = find(id, photoId);
        return Answers.page(WorkplacePages.Templates.photo(head, photo, shown(photo)));
    }

    @POST
    @Path("/{photo: \\d+}")
    @Transactional
    public Response change(@RestPath long id, @RestPath("photo") long photoId) {
        CaseFile file = heads.find(id);
        WorkplacePhoto photo = standing(id, photoId);
        Form form = posted.read();
        String caption = form.requiredText("caption", "What it shows", 300);
        if (form.hasErrors()) {
            return Answers.unprocessable(WorkplacePages.Templates.photo(heads.head(file, CaseTab.WORK_PLACE), photo, form));
        }
        try {
            photo.requireVersion(form.version());
        } catch (StaleVersionException stale) {
            form.conflictsWith(shown(photo), stale.stored());
            return Answers.conflict(WorkplacePages.Templates.photo(heads.head(file, CaseTab.WORK_PLACE), photo, form));
        }
        photo.shows(caption, form.ticked("mayLeave"));
        audit.record(photo.mayLeave() ? "let photograph leave the clinic" : "keeps photograph in the clinic", file.patient().id(), id, "photograph " + photoId);
        return Answers.seeOther("/cases/" + id + "/work-place/photos/" + photoId);
    }

    @POST
    @Path("/{photo: \\d+}/withdraw")
    @Transactional
    public Response withdraw(@RestPath long id, @RestPath("photo") long photoId) {
        CaseFile file = heads.find(id);
        WorkplacePhoto photo = standing(id, photoId);
        Form form = posted.read();
        String reason = form.requiredText("reason", "The reason", 300);
        if (form.hasErrors()) {
            Form again = shown(photo).with("reason", form.value("reason")).errorsOf(form);
            return Answers.unprocessable(WorkplacePages.Templates.photo(heads.head(file, CaseTab.WORK_PLACE), photo, again));
        }
        photos.withdraw(photo, reason);
        audit.record("withdrew photograph", file.patient().id(), id, "photograph " + photoId);
        return Answers.seeOther("/cases/" + id + "/work-place/photos/" + photoId);
    }

    @GET
    @Path("/{photo: \\d+}/picture")
    @Transactional
    public Response picture(@RestPath long id, @RestPath("photo") long photoId) {
        CaseFile file = heads.find(id);
        WorkplacePhoto photo = standing(id, photoId);
        audit.record("viewed photograph", file.patient().id(), id, "photograph " + photoId);
        return image(photos.picture(photo));
    }

    @GET
    @Path("/{photo: \\d+}/thumbnail")
    public Response thumbnail(@RestPath long id, @RestPath("photo") long photoId) {
        return image(photos.thumbnail(standing(id, photoId)));
    }

    private static Response image(Optional<byte[]> bytes) {
        return Response.ok(bytes.orElseThrow(NotFoundException::new), "image/jpeg").header("Cache-Control", "no-store")
                .header("Content-Disposition", "inline").build();
    }

    private static Form shown(WorkplacePhoto photo) {
        Form form = Form.empty().with("version", photo.version()).with("caption", photo.caption());
        return photo.mayLeave() ? form.with("mayLeave", "yes") : form;
    }

    private WorkplaceAssessment look(long id, String number) {
        List<WorkplaceAssessment> looks = assessments.of(id);
        return looks.stream().filter(look -> number.isEmpty() || look.id().toString().equals(number)).findFirst().orElseThrow(NotFoundException::new);
    }

    private WorkplacePhoto find(long id, long photoId) {
        return photos.find(id, photoId).orElseThrow(NotFoundException::new);
    }

    /** Finds a photograph that was not withdrawn; of a withdrawn one nothing but its record is left. */
    private WorkplacePhoto standing(long id, long photoId) {
        return photos.find(id, photoId).filter(photo -> !photo.withdrawn()).orElseThrow(NotFoundException::new);
    }
}
