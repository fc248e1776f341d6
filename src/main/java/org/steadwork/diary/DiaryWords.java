package org.steadwork.diary;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.util.Locale;
import org.steadwork.casefile.Attendance;
import org.steadwork.diary.rules.ClinicTime;
import org.steadwork.web.Dates;

/** How the diary says things; nothing here is clinical. */
final class DiaryWords {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    private DiaryWords() {
    }

    static String day(DayOfWeek day) {
        return day.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    static String place(Place place) {
        return Dates.shownWithDay(place.day()) + ", " + ClinicTime.shown(place.start()) + " to " + ClinicTime.shown(place.start() + place.minutes())
                + ", " + place.clinician().displayName() + (place.room() == null ? "" : ", " + place.room().name());
    }

    /** How it stands with an appointment: here since when, seen, missed, cancelled by whom. */
    static String state(Appointment appointment, ZoneId zone) {
        if (appointment.attendance() == Attendance.PLANNED) {
            return !appointment.live() ? "to be booked" : appointment.arrivedAt() == null ? "not here yet" : "here since " + time(appointment.arrivedAt(), zone);
        }
        return appointment.attendance() == Attendance.ATTENDED ? "seen" : appointment.attendance().label();
    }

    /** The shape of the status sign. */
    static String mark(Appointment appointment) {
        return switch (appointment.attendance()) {
            case PLANNED -> appointment.arrivedAt() == null ? "none" : "open";
            case ATTENDED -> "done";
            default -> "near";
        };
    }

    static String time(Instant at, ZoneId zone) {
        return TIME.format(at.atZone(zone));
    }
}
