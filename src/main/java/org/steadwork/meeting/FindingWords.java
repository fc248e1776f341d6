package org.steadwork.meeting;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
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

    /** What was found, one line for all that have come equally far on the same day: "Found 11 Mar 2030: ...". */
    List<String> courses(List<Finding> findings) {
        Map<String, List<String>> byState = findings.stream().collect(Collectors.groupingBy(FindingWords::state, LinkedHashMap::new,
                Collectors.mapping(finding -> content.criterion(finding.criterionId()).map(Criterion::label).orElse(finding.criterionId()), Collectors.toList())));
        return byState.entrySet().stream().map(one -> one.getKey() + ": " + String.join("; ", one.getValue())).toList();
    }

    private static String state(Finding finding) {
        String stage = finding.stage().label();
        return stage.substring(0, 1).toUpperCase(Locale.ROOT) + stage.substring(1) + " " + Dates.shown(finding.stageOn())
                + (finding.agreedWith() != null && finding.doneOn() == null && finding.checkedOn() == null ? " with " + finding.agreedWith() : "");
    }

    static LocalDate asked(Finding finding) {
        return finding.agreedOn() != null ? finding.agreedOn() : finding.advisedOn();
    }
}
