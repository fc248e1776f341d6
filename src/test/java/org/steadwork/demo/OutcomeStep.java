package org.steadwork.demo;

import java.util.List;
import org.steadwork.content.Entry;
import org.steadwork.journey.FilledForm;
import org.steadwork.journey.Guest;

/** Outcomes: names the activities at the first visit, enters the items of each questionnaire that was filled in. */
final class OutcomeStep implements WalkStep {

    @Override
    public void walk(WalkedVisit visit) {
        Guest guest = visit.guest();
        if (visit.number() == 1) {
            for (Entry goal : visit.demo().entry("case").orElseThrow().entries("goals")) {
                guest.open(visit.path("/outcomes")).expect(200).formWithButton("Add the activity").set("newActivity", goal.text("activity")).send().expect(200);
                guest.open(visit.path("/goals")).expect(200).formWithButton("Save goals").set("newGoal", goal.text("activity")).send().expect(200);
            }
        }
        for (Entry score : visit.entry().entries("scores")) {
            String instrument = score.text("instrument");
            if (score.has("items") && !instrument.equals("psfs")) {
                guest.open(visit.path("/outcomes/" + instrument)).expect(200);
                FilledForm form = guest.formWithButton("Save the answers").set("on", visit.day().toString());
                List<String> fields = form.fields().stream().filter(field -> field.matches(".*\\d+")).toList();
                List<String> answers = score.texts("items");
                for (int i = 0; i < answers.size(); i++) {
                    form.set(fields.get(i), answers.get(i));
                }
                form.send().expect(200);
            }
        }
    }
}
