package org.steadwork.demo;

/** Closes the case where its file does; until then it stays open. */
final class CloseStep implements WalkStep {

    @Override
    public void walk(WalkedVisit visit) {
        visit.entry().entry("close").ifPresent(end -> visit.guest().open(visit.path("/close")).expect(200).formWithButton("Close the case")
                .set("closedOn", end.text("on")).set("reason", end.text("reason")).set("note", end.optionalText("note").orElse("")).send().expect(200));
    }
}
