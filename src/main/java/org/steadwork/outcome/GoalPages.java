package org.steadwork.outcome;

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
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Setting goals, saying where the patient is with them, and how far they are attained. */
@Path("/cases/{id: \\d+}/goals")
@RolesAllowed("clinician")
class GoalPages {

    @CheckedTemplate(basePath = "outcome", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance goals(CaseHead head, GoalsView view);
    }

    private static final int LONGEST_GOAL = 200;

    @Inject
    CaseHeads heads;

    @Inject
    Goals goals;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response show(@RestPath long id) {
        CaseHead head = heads.open(id, CaseTab.OUTCOMES);
        return Answers.page(Templates.goals(head, view(id, stored(id))));
    }

    @POST
    @Transactional
    public Response save(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        LocalDate today = LocalDate.now(clock);
        boolean stale = false;
        List<Runnable> changes = new ArrayList<>();
        for (Goal goal : goals.of(id)) {
            String key = String.valueOf(goal.id());
            if (goal.state() != GoalState.GIVEN_UP && form.has("state_" + key)) {
                stale |= read(form, goal, key, today, changes) && !form.value("v_" + key).equals(String.valueOf(goal.version()));
            }
        }
        Goal fresh = readNew(form, file, today);
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.goals(heads.head(file, CaseTab.OUTCOMES), view(id, form)));
        }
        if (stale) {
            Form now = stored(id);
            form.conflictsWith(now, 0);
            goals.of(id).forEach(goal -> form.with("v_" + goal.id(), goal.version()));
            return Answers.conflict(Templates.goals(heads.head(file, CaseTab.OUTCOMES), view(id, form)));
        }
        changes.forEach(Runnable::run);
        if (fresh != null) {
            goals.persist(fresh);
        }
        audit.record("changed goals", file.patient().id(), id, null);
        return Answers.seeOther("/cases/" + id + "/goals");
    }

    /** Reads the row of one goal; true when something of the goal itself changes. */
    private boolean read(Form form, Goal goal, String key, LocalDate today, List<Runnable> changes) {
        GoalState state = form.choice("state_" + key, "State", GoalState.class);
        String where = form.text("where_" + key, LONGEST_GOAL);
        Integer attained = form.integer("x_" + key, "Attainment", -2, 2);
        boolean giveUp = form.ticked("give_" + key);
        String why = form.text("why_" + key, 300);
        if (giveUp && why == null) {
            form.error("why_" + key, "Say in a few words why the goal is given up.");
        }
        if (state == GoalState.GIVEN_UP) {
            form.error("state_" + key, "State: choose one of the answers offered.");
        }
        if (form.has("x_" + key)) {
            changes.add(() -> goals.rate(goal, today, attained));
        }
        boolean changed = state != goal.state() || !Objects.equals(where, goal.whereNow()) || giveUp;
        if (giveUp) {
            changes.add(() -> goal.giveUp(why, today));
        } else if (changed && state != null) {
            changes.add(() -> goal.review(state, where, today));
        }
        return changed;
    }

    private static Goal readNew(Form form, CaseFile file, LocalDate today) {
        String words = form.text("newGoal", LONGEST_GOAL);
        String expected = form.text("newExpected", LONGEST_GOAL);
        Integer importance = form.integer("newImportance", "Importance", 1, 3);
        Integer difficulty = form.integer("newDifficulty", "Difficulty", 1, 3);
        Integer baseline = form.integer("newBaseline", "The start", -2, -1);
        if (words == null) {
            if (expected != null) {
                form.error("newGoal", "The goal itself is missing.");
            }
            return null;
        }
        if (form.hasErrors()) {
            return null;
        }
        Goal goal = new Goal(file, words, today);
        goal.scale(expected, importance, difficulty, baseline);
        return goal;
    }

    private Form stored(long id) {
        Form form = Form.empty();
        goals.of(id).forEach(goal -> form.with("state_" + goal.id(), goal.state().name().toLowerCase(Locale.ROOT))
                .with("where_" + goal.id(), goal.whereNow()).with("v_" + goal.id(), goal.version()));
        return form;
    }

    private GoalsView view(long id, Form form) {
        return new GoalsView(id, form, LocalDate.now(clock), goals.of(id), goals.ratings(id));
    }
}
