package org.steadwork.outcome;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.outcome.scoring.InvalidAnswer;
import org.steadwork.outcome.scoring.Item;
import org.steadwork.outcome.scoring.ItemAnswers;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Naming an activity that the patient finds hard. */
@Path("/cases/{id: \\d+}/own-activities")
@RolesAllowed("clinician")
class OwnActivityPages {

    @Inject
    CaseHeads heads;

    @Inject
    OwnActivityRatings activities;

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
    public Response add(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        LocalDate today = LocalDate.now(clock);
        String words = form.requiredText("newActivity", "The activity", 120);
        LocalDate on = ScoreDay.read(form, file, today);
        Integer rating = null;
        try {
            rating = ItemAnswers.read(new Item(1, "rating", 0, 10), form.value("newRating"));
        } catch (InvalidAnswer refused) {
            form.error("newRating", refused.getMessage().replaceFirst("^Item 1 \\(rating\\)", "The rating"));
        }
        List<OwnActivity> named = activities.activities(id);
        if (named.size() >= OwnActivity.MOST) {
            form.error("newActivity", "Five activities are named already, the most that the scale takes.");
        } else if (words != null && named.stream().anyMatch(activity -> activity.words().equalsIgnoreCase(words))) {
            form.error("newActivity", "This activity is named already.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(OutcomePages.Templates.outcomes(heads.head(file, CaseTab.OUTCOMES), views.of(file, on == null ? today : on, today, form)));
        }
        OwnActivity activity = new OwnActivity(file, words, on);
        activities.persist(activity);
        activities.rate(activity, on, rating);
        audit.record("named an activity", file.patient().id(), id, null);
        return Answers.seeOther(CaseTab.OUTCOMES.href(id) + "?on=" + on);
    }
}
