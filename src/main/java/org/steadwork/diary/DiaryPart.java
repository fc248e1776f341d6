package org.steadwork.diary;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CasePart;
import org.steadwork.web.Dates;

/** Says in the rail of a case when the patient is booked, or that the next review is not; a case with a visit still booked is not closed. */
@ApplicationScoped
class DiaryPart implements CasePart {

    private static final int AFTER_THE_REVIEW = 45;

    @Inject
    Appointments appointments;

    @Inject
    Clock clock;

    @Override
    public List<Fact> facts(CaseFile file) {
        if (!file.open()) {
            return List.of();
        }
        List<Appointment> coming = coming(file);
        if (coming.isEmpty()) {
            return file.nextReviewOn() == null ? List.of() : List.of(new Fact(AFTER_THE_REVIEW, "Booked", "Nothing yet", "See Diary, To be booked", null));
        }
        Appointment next = coming.get(0);
        return List.of(new Fact(AFTER_THE_REVIEW, "Booked", Dates.shownWithDay(next.day()) + ", " + next.from(), coming.size() > 1 ? coming.size() + " visits in all" : null, null));
    }

    @Override
    public List<String> closingBars(CaseFile file) {
        return coming(file).stream().map(one -> "A visit is booked for " + Dates.shownWithDay(one.day()) + ", " + one.from() + ". Cancel it in the diary first.").toList();
    }

    private List<Appointment> coming(CaseFile file) {
        return appointments.toCome(file.id(), LocalDate.now(clock));
    }
}
