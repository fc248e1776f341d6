package org.steadwork.demo;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.jsoup.nodes.Element;
import org.steadwork.content.Entry;
import org.steadwork.journey.FilledForm;
import org.steadwork.journey.Guest;

/** The visit's page: ratings of the own activities, attendance, work status, next review; then the note, signed or left a draft. */
final class NoteStep implements WalkStep {

    @Override
    public void walk(WalkedVisit visit) {
        Guest guest = visit.guest();
        guest.open(visit.path("/visits/" + visit.number())).expect(200);
        FilledForm review = guest.formWithButton("Save the review").set("kind", visit.entry().text("kind"))
                .set("attendance", visit.entry().text("attendance")).set("nextReviewOn", visit.entry().optionalText("next_review").orElse(""));
        visit.entry().entry("work_status").ifPresent(status -> review.set("wsCode", status.text("status")).set("wsFrom", status.text("from"))
                .set("wsUntil", status.optionalText("to").orElse("")).set("wsBy", status.text("decided_by"))
                .set("wsHours", status.optionalText("hours_per_week").orElse("")).set("wsLimits", status.optionalText("note").orElse("")));
        boolean due = !guest.page().select(".review__activity").isEmpty();
        if (due) {
            rate(visit, guest.page().select(".review__activity"), "b", review);
        }
        review.send().expect(200);
        if (!due) {
            afterwards(visit, guest);
        }
        visit.entry().entry("note").ifPresent(note -> write(visit, guest, note));
        visit.expected().flatMap(expected -> expected.optionalText("counted_as")).ifPresent(state -> assertTrue(
                guest.open(visit.path("/visits")).expect(200).page().select(".timeline .status").eachText().contains(state), visit.where() + guest.words()));
    }

    // own activities that are not due are not asked at the review; what the patient rated all the same is entered on the outcomes
    private static void afterwards(WalkedVisit visit, Guest guest) {
        guest.open(visit.path("/outcomes?on=" + visit.day())).expect(200);
        FilledForm scores = guest.formWithButton("Save scores");
        rate(visit, guest.page().select("tr:has(input[name^=a_])"), "th", scores);
        scores.send().expect(200);
    }

    private static void rate(WalkedVisit visit, List<Element> shown, String name, FilledForm form) {
        List<Entry> ratings = visit.entry().entries("scores").stream().filter(score -> score.text("instrument").equals("psfs")).toList();
        if (ratings.isEmpty()) {
            return;
        }
        List<Entry> goals = visit.demo().entry("case").orElseThrow().entries("goals");
        for (Element activity : shown) {
            for (int i = 0; i < goals.size(); i++) {
                if (activity.selectFirst(name).text().startsWith(goals.get(i).text("activity"))) {
                    form.set(activity.selectFirst("input").attr("name"), ratings.get(0).texts("items").get(i));
                }
            }
        }
    }

    private static void write(WalkedVisit visit, Guest guest, Entry note) {
        guest.open(visit.path("/visits/" + visit.number())).expect(200);
        boolean signed = !visit.entry().text("signed").equals("no");
        FilledForm form = guest.formWithButton(signed ? "Sign the note" : "Save the draft");
        for (String part : List.of("subjective", "objective", "assessment", "plan")) {
            form.set(part, note.optionalText(part).orElse(""));
        }
        form.send().expect(200);
        if (signed) {
            assertTrue(guest.open(visit.path("/visits/" + visit.number())).expect(200).words().contains("Signed note"), visit.where() + guest.words());
        }
    }
}
