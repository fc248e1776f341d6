package org.steadwork.demo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Comparator;
import org.steadwork.content.Entry;
import org.steadwork.workplace.Finding;
import org.steadwork.workplace.FindingLives;
import org.steadwork.workplace.FindingStage;
import org.steadwork.workplace.Findings;

/** What was agreed with the worker about the findings of a work place, and what of it is in place. */
@ApplicationScoped
class DemoActions implements DemoVisitPart {

    /** With whom the demo's actions are agreed: whoever is in the room. */
    static final String WITH = "the worker";

    @Inject
    Findings findings;

    @Inject
    FindingLives lives;

    @Override
    public int order() {
        return 33;
    }

    @Override
    public void load(DemoVisit visit) {
        visit.entry().entry("workplace").ifPresent(told -> {
            told.entries("actions").stream().filter(action -> action.has("finding")).forEach(action -> {
                Finding finding = finding(visit, action);
                lives.record(finding, FindingStage.AGREED, visit.day(), WITH, visit.clinician().displayName());
                finding.note(action.text("action"));
            });
            told.entries("actions_done").forEach(done -> lives.record(finding(visit, done), FindingStage.DONE, LocalDate.parse(done.text("on")), null,
                    visit.clinician().displayName()));
        });
    }

    private Finding finding(DemoVisit visit, Entry action) {
        return findings.of(visit.file().id()).stream().filter(finding -> finding.criterionId().equals(action.text("finding")))
                .max(Comparator.comparing(Finding::foundOn)).orElseThrow(() -> action.problem("there is no finding of this criterion"));
    }
}
