package org.steadwork.exercise;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/** The programme of a case: what the patient does. */
@Path("/cases/{id: \\d+}/programme")
@RolesAllowed("clinician")
class ProgrammePages {

    @CheckedTemplate(basePath = "exercise", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {

        private Templates() {
        }

        static native TemplateInstance programme(CaseHead head, Programme programme, ConditionRows.Known conditions, StopRules rules);

        static native TemplateInstance choose(CaseHead head, Choice choice);

        static native TemplateInstance prescribe(CaseHead head, Offer offer, Form form, List<Option> sides);

        static native TemplateInstance prescription(CaseHead head, ProgrammeItem item, Forms forms, List<Option> sides, List<Option> mornings);

        static native TemplateInstance conditions(CaseHead head, List<ConditionRow> rows, Form form);
    }

    /** The three forms that stand on the page of one exercise; those not sent are as stored. */
    record Forms(Form dose, Form report, Form end) {
    }

    @Inject
    CaseHeads heads;

    @Inject
    Programmes programmes;

    @Inject
    ConditionRows conditions;

    @Inject
    ExerciseCatalogue catalogue;

    @GET
    public Response programme(@RestPath long id) {
        CaseHead head = heads.open(id, CaseTab.PROGRAMME);
        Programme programme = programmes.of(head.file());
        return Answers.page(Templates.programme(head, programme, conditions.thatMatter(id, programme), catalogue.stopRules()));
    }
}
