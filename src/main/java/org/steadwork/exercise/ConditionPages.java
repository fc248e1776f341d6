package org.steadwork.exercise;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.kernel.Answer;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** The questions about conditions that may bar exercises. */
@Path("/cases/{id: \\d+}/programme/conditions")
@RolesAllowed("clinician")
class ConditionPages {

    @Inject
    CaseHeads heads;

    @Inject
    ConditionRows rows;

    @Inject
    ConditionAnswers answers;

    @Inject
    ExerciseCatalogue catalogue;

    @Inject
    CurrentAccount account;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response conditions(@RestPath long id) {
        List<ConditionRow> shown = rows.ofCase(id);
        return Answers.page(ProgrammePages.Templates.conditions(heads.open(id, CaseTab.PROGRAMME), shown, show(shown)));
    }

    /** Only answers that differ from what stands are stored, so each keeps who gave it and when. */
    @POST
    @Transactional
    public Response answer(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        Map<String, ConditionAnswer> stored = answers.ofForChange(id).stream().collect(Collectors.toMap(ConditionAnswer::condition, Function.identity()));
        List<ConditionRow> shown = rows.ofCase(id);
        for (Condition condition : catalogue.conditions()) {
            form.choice(condition.key(), condition.label(), Answer.class);
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(ProgrammePages.Templates.conditions(heads.head(file, CaseTab.PROGRAMME), shown, form));
        }
        if (form.version() != version(shown)) {
            form.conflictsWith(show(shown), version(shown));
            return Answers.conflict(ProgrammePages.Templates.conditions(heads.head(file, CaseTab.PROGRAMME), shown, form));
        }
        for (Condition condition : catalogue.conditions()) {
            Answer answer = form.choice(condition.key(), condition.label(), Answer.class);
            ConditionAnswer before = stored.get(condition.key());
            if (answer == null || answer == (before == null ? Answer.NOT_ASKED : before.answer())) {
                continue;
            }
            if (before == null) {
                before = new ConditionAnswer(file, condition.key());
                before.answer(answer, account.displayName(), Instant.now(clock));
                answers.persist(before);
            } else {
                before.answer(answer, account.displayName(), Instant.now(clock));
            }
        }
        audit.record("answered exercise conditions", file.patient().id(), id, null);
        return Answers.seeOther("/cases/" + id + "/programme");
    }

    private static Form show(List<ConditionRow> rows) {
        Form form = Form.empty().with("version", version(rows));
        rows.forEach(row -> form.with(row.condition().key(), row.answer().name().toLowerCase(Locale.ROOT)));
        return form;
    }

    /** Counts every save of every answer. */
    private static int version(List<ConditionRow> rows) {
        return rows.stream().filter(row -> row.given() != null).mapToInt(row -> row.given().version() + 1).sum();
    }
}
