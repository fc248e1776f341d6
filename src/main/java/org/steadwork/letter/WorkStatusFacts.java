package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.WorkStatus;
import org.steadwork.casefile.WorkStatusCode;
import org.steadwork.casefile.WorkStatuses;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.web.Dates;

/** What the worker's work status is today; without one on record it is not established, which is not the same as full. */
@ApplicationScoped
class WorkStatusFacts implements LetterFacts {

    @Inject
    WorkStatuses statuses;

    @Inject
    Clock clock;

    @Override
    public List<LetterFact> of(CaseFile file) {
        String words = statuses.of(file.id()).on(LocalDate.now(clock)).filter(status -> status.code() != WorkStatusCode.UNKNOWN)
                .map(WorkStatusFacts::words).orElse("Work status is not established.");
        return List.of(new LetterFact(InformationCategory.FUNCTIONAL_CAPACITY, "work_status", words, "work status"));
    }

    private static String words(WorkStatus status) {
        return status.code().label() + " (" + status.code().meaning() + ") since " + Dates.inLetter(status.from())
                + (status.until() == null ? "" : ", until " + Dates.inLetter(status.until()))
                + (status.details().isEmpty() ? "" : ": " + status.details()) + ".";
    }
}
