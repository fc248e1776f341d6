package org.steadwork.review;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.VisitKind;
import org.steadwork.redflag.DischargeBars;
import org.steadwork.redflag.SigningBars;

/** What must be done before the note of a visit can be signed, a sentence each; empty when it can. */
@ApplicationScoped
class SigningConditions {

    @Inject
    SigningBars redFlags;

    @Inject
    DischargeBars discharge;

    List<String> of(Visit visit) {
        List<String> bars = new ArrayList<>();
        if (visit.attendance() == Attendance.PLANNED) {
            bars.add("Say whether the visit took place, and save the review, before signing.");
        }
        bars.addAll(redFlags.forVisit(visit.caseFile().id()));
        if (visit.kind() == VisitKind.DISCHARGE && visit.attendance() == Attendance.ATTENDED) {
            bars.addAll(discharge.of(visit.caseFile()));
        }
        return bars;
    }
}
