package org.steadwork.exercise;

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
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.web.PostedForm;

/** Giving a ready set: what is ticked of it in one save, or nothing when anything in it is wrong. */
@Path("/cases/{id: \\d+}/programme/sets/{key: [a-z0-9_]+}")
@RolesAllowed("clinician")
class SetPages {

    private static final String GIVE = "give";

    @CheckedTemplate(basePath = "exercise", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {

        private Templates() {
        }

        static native TemplateInstance readySet(CaseHead head, SetOffer offer, Form form, List<Option> sides);
    }

    @Inject
    CaseHeads heads;

    @Inject
    ExerciseCatalogue catalogue;

    @Inject
    CaseSafeties safeties;

    @Inject
    Prescriptions prescriptions;

    @Inject
    Giving giving;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response offer(@RestPath long id, @RestPath String key) {
        ReadySet set = set(key);
        CaseHead head = heads.open(id, CaseTab.PROGRAMME);
        SetOffer offer = offer(id, set);
        Form form = Form.empty();
        for (SetOffer.Row row : offer.rows()) {
            Form part = DoseForm.proposal(row.exercise(), row.exercise().dose(), LocalDate.now(clock)).with(GIVE, row.offered() ? "yes" : null);
            form.withPart(row.prefix(), part);
        }
        return Answers.page(Templates.readySet(head, offer, form, DoseForm.SIDES));
    }

    @POST
    @Transactional
    public Response give(@RestPath long id, @RestPath String key) {
        CaseFile file = heads.find(id);
        SetOffer offer = offer(id, set(key));
        Form form = posted.read();
        Set<String> given = prescriptions.given(id);
        Map<SetOffer.Row, DoseForm> chosen = new LinkedHashMap<>();
        for (SetOffer.Row row : offer.rows()) {
            Form part = form.part(row.prefix());
            if (part.ticked(GIVE)) {
                chosen.put(row, giving.read(part, file, row.exercise(), row.verdict(), given));
                form.withPart(row.prefix(), part);
            }
        }
        if (chosen.isEmpty()) {
            form.error(offer.rows().get(0).prefix() + GIVE, "Tick at least one exercise to give.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.readySet(heads.head(file, CaseTab.PROGRAMME), offer, form, DoseForm.SIDES));
        }
        chosen.forEach((row, dose) -> giving.give(file, row.exercise(), dose, row.verdict()));
        return Answers.seeOther(CaseTab.PROGRAMME.href(id));
    }

    private ReadySet set(String key) {
        return catalogue.sets().stream().filter(set -> set.key().equals(key)).findFirst().orElseThrow(NotFoundException::new);
    }

    private SetOffer offer(long caseId, ReadySet set) {
        CaseSafety safety = safeties.of(caseId);
        Set<String> given = prescriptions.given(caseId);
        return new SetOffer(set, set.now().stream()
                .map(exercise -> new SetOffer.Row(exercise, safety.of(exercise), given.contains(exercise.key()))).toList());
    }
}
