package org.steadwork.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.steadwork.content.Entry;
import org.steadwork.journey.FilledForm;
import org.steadwork.journey.Guest;

/** Graded return: agrees the plans of a visit, and holds the hours week by week and those not worked to what the file says. */
final class WorkPlanStep implements WalkStep {

    private static final double TO_THE_MINUTE = 1 / 60.0;

    @Override
    public void walk(WalkedVisit visit) {
        List<Entry> plans = visit.entry().entries("return_plans");
        for (Entry plan : plans) {
            Guest guest = visit.guest().open(visit.path("/work-plan/edit")).expect(200);
            FilledForm form = guest.formWithButton("Show the weeks").set("startsOn", plan.text("from")).set("normalHours", plan.text("normal_hours"))
                    .set("startPercent", plan.text("start_percent")).set("weeks", plan.text("weeks"))
                    .set("restrictions", plan.optionalText("restrictions").orElse("")).set("agreedWith", plan.text("agreed_with"))
                    .set("agreedOn", plan.optionalText("agreed_on").orElse(visit.day().toString()));
            if (form.offers("whyChanged")) {
                form.set("whyChanged", plan.text("why_changed"));
            }
            form.send().expect(200);
            if (plan == plans.get(plans.size() - 1)) {
                visit.expected().filter(expected -> expected.has("plan_hours")).ifPresent(expected -> check(visit, guest, expected));
            }
            guest.formWithButton("Keep this plan").send().expect(200);
        }
    }

    private static void check(WalkedVisit visit, Guest guest, Entry expected) {
        List<Double> shown = guest.page().select("section[aria-labelledby=weeks-shown] tbody td.n > b").eachText().stream().map(WorkPlanStep::hours).toList();
        List<Double> wanted = expected.texts("plan_hours").stream().map(Double::valueOf).toList();
        assertEquals(wanted.size(), shown.size(), visit.where() + "weeks of the plan: " + shown);
        for (int i = 0; i < wanted.size(); i++) {
            assertEquals(wanted.get(i), shown.get(i), TO_THE_MINUTE, visit.where() + "hours of week " + (i + 1));
        }
        assertTrue(guest.words().contains(expected.text("plan_hours_lost") + "\u00a0h not worked") || guest.words().contains(expected.text("plan_hours_lost") + " h not worked"),
                visit.where() + "hours not worked: " + guest.words());
    }

    private static double hours(String shown) {
        return Double.parseDouble(shown.replaceAll("[\\s\u00a0]*h$", ""));
    }
}
