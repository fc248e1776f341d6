package org.steadwork.meeting;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import org.steadwork.meeting.agenda.CaseFacts;
import org.steadwork.web.Dates;
import org.steadwork.workplace.Finding;
import org.steadwork.workplace.WorkplaceContent;
import org.steadwork.workplace.fit.Criterion;

/** Says findings of the work place in the words of their criteria. */
@ApplicationScoped
class FindingWords {

    @Inject
    WorkplaceContent content;

    /** What was advised or agreed and is not in place, with the day it was asked last. */
    List<CaseFacts.Change> waiting(List<Finding> findings) {
        return findings.stream().map(finding -> new CaseFacts.Change(change(finding), asked(finding), finding.agreedWith())).toList();
    }

    /** The change that goes with a finding. */
    String change(Finding finding) {
        return content.criterion(finding.criterionId()).map(Criterion::adjustment).orElse(finding.criterionId());
    }

    /** What was found, and what came of it. */
    String course(Finding finding) {
        String what = content.criterion(finding.criterionId()).map(Criterion::label).orElse(finding.criterionId());
        return what + ": " + finding.stage().label() + " " + Dates.shown(finding.stageOn())
                + (finding.agreedWith() != null && finding.doneOn() == null && finding.checkedOn() == null ? " with " + finding.agreedWith() : "");
    }

    static LocalDate asked(Finding finding) {
        return finding.agreedOn() != null ? finding.agreedOn() : finding.advisedOn();
    }
}
