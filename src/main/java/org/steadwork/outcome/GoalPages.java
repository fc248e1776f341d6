package org.steadwork.outcome;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Setting goals and saying where the patient is with them. */
@Path("/cases/{id: \\d+}/goals")
@RolesAllowed("clinician")
class GoalPages {

    @Inject
    CaseHeads heads;

    @Inject
    Goals goals;

    @Inject
    OutcomeViews views;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @POST
    @Transactional
    public Response save(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        LocalDate today = LocalDate.now(clock);
        String words = form.text("newGoal", 200);
        boolean stale = false;
        List<Runnable> reviews = new ArrayList<>();
        for (Goal goal : goals.of(id)) {
            String suffix = String.valueOf(goal.id());
            if (!form.has("state_" + suffix)) {
                continue;
            }
            GoalState state = form.choice("state_" + suffix, "State", GoalState.class);
            String where = form.text("where_" + suffix, 200);
            boolean changed = state != goal.state() || !Objects.equals(where, goal.whereNow());
            stale |= changed && !form.value("v_" + suffix).equals(String.valueOf(goal.version()));
            if (changed && state != null) {
                reviews.add(() -> goal.review(state, where, today));
            }
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(OutcomePages.Templates.outcomes(heads.head(file, CaseTab.OUTCOMES), views.of(id, today, form)));
        }
        if (stale) {
            form.conflictsWith(views.goals(id), 0);
            return Answers.conflict(OutcomePages.Templates.outcomes(heads.head(file, CaseTab.OUTCOMES), views.of(id, today, form)));
        }
        reviews.forEach(Runnable::run);
        if (words != null) {
            goals.persist(new Goal(file, words, today));
        }
        audit.record("changed goals", file.patient().id(), id, null);
        return Answers.seeOther(CaseTab.OUTCOMES.href(id) + "#goals");
    }
}
