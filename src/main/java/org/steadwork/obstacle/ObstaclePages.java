package org.steadwork.obstacle;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.casefile.WorkStatuses;
import org.steadwork.kernel.Answer;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** What stands in the way, and what it changes in the plan. */
@Path("/cases/{id: \\d+}/obstacles")
@RolesAllowed("clinician")
class ObstaclePages {

    @CheckedTemplate(basePath = "obstacle", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance obstacles(CaseHead head, ObstacleView view);
    }

    /** More than this many days off in all counts as long (practice: four weeks). */
    private static final int LONG_OFF_DAYS = 28;

    @Inject
    CaseHeads heads;

    @Inject
    Obstacles obstacles;

    @Inject
    ObstacleAnswers answers;

    @Inject
    Screening screening;

    @Inject
    WorkStatuses statuses;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response show(@RestPath long id) {
        CaseHead head = heads.open(id, CaseTab.PROGRAMME);
        List<ObstacleAnswer> given = answers.of(id);
        return Answers.page(Templates.obstacles(head, view(id, given, ObstacleView.show(given))));
    }

    @POST
    @Transactional
    public Response save(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        List<ObstacleAnswer> given = answers.of(id);
        Map<String, ObstacleAnswer> stored = byKey(given);
        List<Runnable> changes = new ArrayList<>();
        for (Obstacle obstacle : obstacles.all()) {
            Answer answer = ObstacleView.read(form, obstacle.key());
            String words = form.text("n_" + obstacle.key(), 300);
            ObstacleAnswer now = stored.get(obstacle.key());
            boolean changed = now == null ? answer != Answer.NOT_ASKED || words != null : now.answer() != answer || !Objects.equals(now.words(), words);
            if (changed) {
                changes.add(() -> keep(now == null ? new ObstacleAnswer(file, obstacle.key()) : now, answer, words));
            }
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.obstacles(heads.head(file, CaseTab.PROGRAMME), view(id, given, form)));
        }
        int version = ObstacleView.version(given);
        if (form.version() != version) {
            form.conflictsWith(ObstacleView.show(given), version);
            return Answers.conflict(Templates.obstacles(heads.head(file, CaseTab.PROGRAMME), view(id, given, form)));
        }
        changes.forEach(Runnable::run);
        audit.record("answered obstacles", file.patient().id(), id, null);
        return Answers.seeOther(ObstacleView.path(id));
    }

    private void keep(ObstacleAnswer answer, Answer given, String words) {
        answer.answer(given, words, LocalDate.now(clock), account.displayName(), Instant.now(clock));
        answers.persist(answer);
    }

    private ObstacleView view(long id, List<ObstacleAnswer> given, Form form) {
        return new ObstacleView(id, form, obstacles.all(), byKey(given), screening.of(id).orElse(null),
                statuses.of(id).daysOff(LocalDate.now(clock)) > LONG_OFF_DAYS);
    }

    private static Map<String, ObstacleAnswer> byKey(List<ObstacleAnswer> given) {
        return given.stream().collect(Collectors.toMap(ObstacleAnswer::obstacle, answer -> answer));
    }
}
