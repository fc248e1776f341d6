package org.steadwork.demo;

import java.time.LocalDateTime;
import org.steadwork.content.Entry;

/** Red flags: records the calls that were made, each at its time. */
final class FlagCallStep implements WalkStep {

    @Override
    public void walk(WalkedVisit visit) {
        for (Entry action : visit.entry().entries("flag_actions")) {
            if (action.text("act").equals("call")) {
                LocalDateTime at = LocalDateTime.parse(action.text("at"));
                visit.later().apply(at).open(visit.path("/red-flags")).expect(200).formWithButton("Record the call")
                        .set("called", action.text("person"))
                        .set("calledRole", DemoPeople.keyed(visit.clinic(), "correspondents", action.text("to")).text("role"))
                        .set("calledOn", at.toLocalDate().toString()).set("calledTime", at.toLocalTime().toString())
                        .set("said", action.text("outcome")).send().expect(200);
            }
        }
    }
}
