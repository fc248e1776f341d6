package org.steadwork.review;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.VisitKind;
import org.steadwork.casefile.WorkStatus;
import org.steadwork.casefile.WorkStatusCode;
import org.steadwork.casefile.WorkStatusDecider;
import org.steadwork.outcome.RatingForm;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;

/** A review as typed: the visit itself, work status and next review. A work status left empty records none. */
record ReviewForm(LocalDate visitedOn, VisitKind kind, Attendance attendance, WorkStatusCode code, LocalDate from, LocalDate until,
        WorkStatusDecider decidedBy, BigDecimal hours, String limits, LocalDate nextReviewOn) {

    private static final BigDecimal MOST_HOURS = BigDecimal.valueOf(100);

    static ReviewForm read(Form form, CaseFile file, LocalDate today, RatingForm.Ratings ratings) {
        LocalDate visitedOn = visitDay(form, file);
        Attendance attendance = form.requiredChoice("attendance", "Attendance", Attendance.class);
        if (attendance == Attendance.ATTENDED && visitedOn != null && visitedOn.isAfter(today)) {
            form.error("visitedOn", "A visit that took place cannot lie in the future. You entered " + Dates.shown(visitedOn) + ".");
        }
        if (attendance != null && attendance != Attendance.ATTENDED && !ratings.none()) {
            form.error("attendance", "Ratings belong to a visit that took place, but this one is " + attendance.label()
                    + ". Set it to attended, or empty the ratings.");
        }
        LocalDate next = form.date("nextReviewOn", "Next review");
        if (next != null && visitedOn != null && next.isBefore(visitedOn)) {
            form.error("nextReviewOn", "The next review cannot lie before this visit, " + Dates.shown(visitedOn) + ". You entered "
                    + Dates.shown(next) + ".");
        }
        WorkStatusCode code = form.choice("wsCode", "Work status", WorkStatusCode.class);
        LocalDate from = form.date("wsFrom", "Holds from");
        LocalDate until = form.date("wsUntil", "Holds until");
        WorkStatusDecider by = form.choice("wsBy", "Decided by", WorkStatusDecider.class);
        BigDecimal hours = form.decimal("wsHours", "Hours a week", BigDecimal.ZERO, MOST_HOURS, 1, "h");
        String limits = form.text("wsLimits", 200);
        if (code != null) {
            from = from == null ? visitedOn : from;
            if (from != null && from.isBefore(file.patient().birthDate())) {
                form.error("wsFrom", "A work status cannot begin before the patient was born. You entered " + Dates.shown(from) + ".");
            }
            if (until != null && from != null && until.isBefore(from)) {
                form.error("wsUntil", "The work status cannot end before it begins, " + Dates.shown(from) + ". You entered " + Dates.shown(until) + ".");
            }
            if (by == null) {
                form.error("wsBy", "Say who decided on the work status; choose “not known” when it is not.");
            }
        } else if (from != null || until != null || hours != null || limits != null) {
            form.error("wsCode", "Choose the work status that these details belong to.");
        }
        return new ReviewForm(visitedOn, form.requiredChoice("kind", "Kind of visit", VisitKind.class), attendance, code, from, until, by, hours,
                limits, next);
    }

    /** Refuses a next review at a visit which another followed: the case's next review is that visit's to set. */
    void nextReviewOnlyAtTheLatest(Form form, CaseFile file, Optional<Visit> later) {
        if (later.isPresent() && form.fields().contains("nextReviewOn") && !Objects.equals(nextReviewOn, file.nextReviewOn())) {
            form.error("nextReviewOn", "Visit " + later.get().number() + " of " + Dates.shown(later.get().visitedOn())
                    + " is later; the next review is set there.");
        }
    }

    /** Reads the day of a visit; one before the opening of the case is refused. */
    static LocalDate visitDay(Form form, CaseFile file) {
        LocalDate day = form.requiredDate("visitedOn", "Day of the visit");
        if (day != null && day.isBefore(file.openedOn())) {
            form.error("visitedOn", "A visit cannot lie before the case was opened, " + Dates.shown(file.openedOn()) + ". You entered "
                    + Dates.shown(day) + ".");
            return null;
        }
        return day;
    }

    /** Puts what is stored into a form; the work status offered is the one that holds on the day of the visit. */
    static Form show(Visit visit, WorkStatus status) {
        CaseFile file = visit.caseFile();
        Form form = Form.empty().with("version", visit.version()).with("visitedOn", Dates.shown(visit.visitedOn()))
                .with("kind", visit.kind().name().toLowerCase(Locale.ROOT)).with("attendance", visit.attendance().name().toLowerCase(Locale.ROOT))
                .with("nextReviewOn", file.nextReviewOn() == null ? null : Dates.shown(file.nextReviewOn()));
        if (status != null) {
            form.with("wsCode", status.code().name().toLowerCase(Locale.ROOT)).with("wsFrom", Dates.shown(status.from()))
                    .with("wsUntil", status.until() == null ? null : Dates.shown(status.until())).with("wsBy", status.decidedBy().name().toLowerCase(Locale.ROOT))
                    .with("wsHours", status.hoursAWeek() == null ? null : status.hoursAWeek().stripTrailingZeros().toPlainString())
                    .with("wsLimits", status.limits());
        }
        return form;
    }
}
