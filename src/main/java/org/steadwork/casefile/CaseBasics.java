package org.steadwork.casefile;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.steadwork.people.Patient;
import org.steadwork.web.Dates;

/** The case's own lines of the rail: complaint, work, next review. */
@ApplicationScoped
class CaseBasics implements CasePart {

    @Inject
    Clock clock;

    @Override
    public List<Fact> facts(CaseFile file) {
        Patient patient = file.patient();
        String since = (file.onsetOn() == null ? "" : "since " + Dates.shown(file.onsetOn()) + "; ") + "first seen " + Dates.shown(file.openedOn());
        String job = (patient.jobTitle() == null ? "Job not noted" : patient.jobTitle())
                + (patient.hoursAWeek() == null ? "" : ", " + patient.hoursAWeek().stripTrailingZeros().toPlainString() + "\u00a0h");
        String employer = patient.employer() == null ? "employer not noted"
                : patient.employer().name() + (patient.department() == null ? "" : ", " + patient.department());
        return List.of(new Fact(10, "What", file.complaint(), since, null), new Fact(20, "Work", job, employer, null),
                new Fact(40, "Next review", CaseHeads.nextReview(file), overdue(file), null));
    }

    private String overdue(CaseFile file) {
        LocalDate today = LocalDate.now(clock);
        if (file.nextReviewOn() == null || !file.nextReviewOn().isBefore(today)) {
            return null;
        }
        long days = today.toEpochDay() - file.nextReviewOn().toEpochDay();
        return "overdue by " + days + (days == 1 ? " day" : " days");
    }
}
