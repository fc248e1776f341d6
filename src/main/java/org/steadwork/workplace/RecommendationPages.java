package org.steadwork.workplace;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.drawing.desk.DeskView;
import org.steadwork.people.Patient;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;

/** The sheet for the person who buys: what, which range, how many, why. It names no person and nothing clinical. */
@Path("/cases/{id: \\d+}/work-place/recommendation")
@RolesAllowed("clinician")
class RecommendationPages {

    /** Width of the drawing on paper, in its units: as wide as the sheet, so that its letters can be read there. */
    private static final int SHEET = 760;

    @CheckedTemplate(basePath = "workplace", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {

        private Templates() {
        }

        static native TemplateInstance recommendation(Recommendation sheet);
    }

    @Inject
    CaseHeads heads;

    @Inject
    Assessments assessments;

    @Inject
    WorkplaceContent content;

    @Inject
    EquipmentContent equipment;

    @Inject
    DeskDrawing drawing;

    @Inject
    AuditTrail audit;

    @Inject
    Clock clock;

    @GET
    public Response show(@RestPath long id) {
        Patient patient = heads.find(id).patient();
        RecordedWorkplace recorded = assessments.recorded(assessments.latest(id).orElseThrow(NotFoundException::new));
        Recommending recommending = new Recommending(recorded, content, equipment);
        String role = patient.jobTitle() == null || patient.jobTitle().isBlank() ? "A worker at a screen" : WorkplaceWords.capital(patient.jobTitle());
        String hours = recorded.assessment().hoursAtScreen() == null ? ""
                : ", " + Numerals.number(recorded.assessment().hoursAtScreen().doubleValue(), 1) + " h a day at the screen";
        audit.record("printed the equipment recommendation", patient.id(), id, null);
        return Answers.page(Templates.recommendation(new Recommendation(id, recorded.assessment().place(), role + hours,
                Dates.inLetter(LocalDate.now(clock)), recommending.lines(), recommending.estimates(), recommending.settingRows(), recommending.left(),
                drawing(recommending, recorded, SHEET), drawing(recommending, recorded, DeskView.PHONE))));
    }

    private String drawing(Recommending recommending, RecordedWorkplace recorded, int width) {
        return recommending.settings().map(at -> drawing.setTo(recorded, at, recommending.keysApart(), width)).orElse(null);
    }
}
