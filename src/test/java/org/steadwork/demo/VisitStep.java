package org.steadwork.demo;

/** Visits: begins the visit; the first one began with the case. */
final class VisitStep implements WalkStep {

    @Override
    public void walk(WalkedVisit visit) {
        if (visit.number() > 1) {
            visit.guest().open(visit.path("/visits")).expect(200).formWithButton("Begin or plan a visit").set("visitedOn", visit.day().toString())
                    .set("kind", visit.entry().text("kind")).send().expect(200);
        }
    }
}
