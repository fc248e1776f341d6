package org.steadwork.review;

import java.time.LocalDate;
import java.util.List;
import org.steadwork.casefile.Addendum;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.VisitKind;
import org.steadwork.casefile.VisitNote;
import org.steadwork.casefile.WorkStatus;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/** What the page of the visits shows, the newest visit first. */
record VisitsView(Form form, List<Row> rows, List<Spell> spells, long daysOff) {

    /** One work status; {@code replacedOn} is the day from which a later one held, null for the latest. */
    record Spell(WorkStatus status, LocalDate replacedOn) {

        /** Until when it held, in words. */
        public String until() {
            boolean ranOut = status.until() != null && (replacedOn == null || status.until().isBefore(replacedOn));
            return ranOut ? Dates.shown(status.until()) : replacedOn == null ? "open" : "replaced " + Dates.shown(replacedOn);
        }
    }

    /** One visit with its note, which may be null. */
    record Row(Visit visit, VisitNote note, List<Addendum> addenda, boolean late) {

        public boolean signed() {
            return note != null && note.signed();
        }

        public boolean tookPlace() {
            return visit.attendance() == Attendance.ATTENDED;
        }

        public boolean planned() {
            return visit.attendance() == Attendance.PLANNED;
        }

        /** The modifier of the status sign. */
        public String mark() {
            return tookPlace() ? "done" : planned() ? "open" : "near";
        }
    }

    public List<Option> kinds() {
        return Option.of(VisitKind.class, VisitKind::label);
    }

    public long missed() {
        return rows.stream().filter(row -> row.visit().attendance() == Attendance.MISSED).count();
    }
}
