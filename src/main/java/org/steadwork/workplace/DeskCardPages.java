package org.steadwork.workplace;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.AuditTrail;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.workplace.fit.FitResult;

/** A card with the settings in mm, to print and stick to the desk. It names nobody: the person chooses a mark. */
@Path("/cases/{id: \\d+}/work-place/card")
@RolesAllowed("clinician")
class DeskCardPages {

    @CheckedTemplate(basePath = "workplace", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {

        private Templates() {
        }

        static native TemplateInstance deskCard(DeskCardSheet sheet);
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

    /**
     * Shows the card.
     *
     * @param mark initials or a sign, at most 12 characters, the rest is cut off; it is not stored
     * @param with "bought" for the settings with what should be bought
     */
    @GET
    public Response show(@RestPath long id, @RestQuery String mark, @RestQuery String with) {
        long patientId = heads.find(id).patient().id();
        RecordedWorkplace recorded = assessments.recorded(assessments.latest(id).orElseThrow(NotFoundException::new));
        Recommending recommending = new Recommending(recorded, content, equipment);
        boolean choosing = recommending.wanted().isPresent();
        boolean bought = choosing && "bought".equals(with);
        String sign = mark == null ? "" : mark.strip().substring(0, Math.min(DeskSharer.LONGEST_MARK, mark.strip().length()));
        var settings = bought ? recommending.settings() : recorded.fit().map(FitResult::best);
        List<DeskCardSheet.Card> cards = settings.map(at -> List.of(new DeskCardSheet.Card(sign, recorded.assessment().place(),
                Dates.shown(recorded.assessment().assessedOn()), Recommending.rows(at),
                drawing.card(recorded, at, bought && recommending.keysApart()), !recommending.estimates().isEmpty()))).orElse(List.of());
        audit.record("printed the card for the desk", patientId, id, null);
        return Answers.page(Templates.deskCard(new DeskCardSheet(id, sign, bought, choosing, cards)));
    }
}
