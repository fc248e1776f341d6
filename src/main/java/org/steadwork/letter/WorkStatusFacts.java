package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.WorkHistory;
import org.steadwork.casefile.WorkStatus;
import org.steadwork.casefile.WorkStatusCode;
import org.steadwork.casefile.WorkStatuses;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.web.Dates;

/** What the worker's work status is today, and from when it will change; without one on record it is not established, which is not the same as full. */
@ApplicationScoped
class WorkStatusFacts implements LetterFacts {

    @Inject
    WorkStatuses statuses;

    @Inject
    Clock clock;

    @Override
    public List<LetterFact> of(CaseFile file) {
        LocalDate today = LocalDate.now(clock);
        WorkHistory history = statuses.of(file.id());
        List<LetterFact> facts = new ArrayList<>();
        facts.add(fact(history.on(today).filter(status -> status.code() != WorkStatusCode.UNKNOWN)
                .map(WorkStatusFacts::words).orElse("Work status is not established.")));
        history.spells().stream().filter(status -> status.from().isAfter(today) && status.code() != WorkStatusCode.UNKNOWN)
                .forEach(status -> facts.add(fact(words(status).replaceFirst(" since ", " from "))));
        return facts;
    }

    private static LetterFact fact(String words) {
        return new LetterFact(InformationCategory.FUNCTIONAL_CAPACITY, "work_status", words, "work status");
    }

    private static String words(WorkStatus status) {
        return status.code().label() + " (" + status.code().meaning() + ") since " + Dates.inLetter(status.from())
                + (status.until() == null ? "" : ", until " + Dates.inLetter(status.until()))
                + (status.details().isEmpty() ? "" : ": " + status.details()) + ".";
    }
}
