package org.steadwork.diary;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.VisitKind;
import org.steadwork.web.Dates;

/**
 * A visit that has no time yet: one planned in its case, or the next review of a case.
 *
 * @param visit null when it is a review day without a planned visit
 * @param on    the day planned, or of the review
 */
record ToBook(CaseFile caseFile, Visit visit, LocalDate on, List<Proposal> proposals) {

    public VisitKind kind() {
        return visit == null ? VisitKind.FOLLOW_UP : visit.kind();
    }

    public String kindValue() {
        return BookForm.value(kind());
    }

    public String why() {
        return visit == null ? "Next review set for " + Dates.shownWithDay(on) : visit.kind().label() + " planned for " + Dates.shownWithDay(on);
    }

    public boolean overdue(LocalDate today) {
        return on.isBefore(today);
    }

    public String address() {
        return "/diary/book?patient=" + caseFile.patient().id() + "&caseId=" + caseFile.id() + (visit == null ? "" : "&visit=" + visit.id())
                + "&kind=" + kind().name().toLowerCase(Locale.ROOT) + "&day=" + on;
    }
}
