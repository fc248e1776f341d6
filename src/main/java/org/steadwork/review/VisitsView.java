package org.steadwork.review;

import java.util.List;
import org.steadwork.casefile.Addendum;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.VisitKind;
import org.steadwork.casefile.VisitNote;
import org.steadwork.casefile.WorkStatus;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/** What the page of the visits shows, the newest visit first. */
record VisitsView(Form form, List<Row> rows, List<WorkStatus> statuses, long daysOff) {

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
