package org.steadwork.diary;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.steadwork.diary.rules.ClinicTime;
import org.steadwork.web.Dates;

/** A free time offered for booking with one press. */
record Proposal(LocalDate day, int start, long clinicianId, String clinician) {

    private static final Pattern SENT = Pattern.compile("(\\d{4}-\\d{2}-\\d{2}) (\\d{2}:\\d{2}) (\\d{1,15})");

    /** A proposal as it comes back from a button. */
    record Taken(LocalDate day, int start, long clinicianId) {
    }

    public String value() {
        return day + " " + ClinicTime.shown(start) + " " + clinicianId;
    }

    public String label() {
        return Dates.shownWithDay(day) + ", " + ClinicTime.shown(start);
    }

    static Optional<Taken> read(String sent) {
        Matcher parts = SENT.matcher(sent);
        if (!parts.matches()) {
            return Optional.empty();
        }
        try {
            OptionalInt start = ClinicTime.read(parts.group(2));
            return start.isEmpty() ? Optional.empty() : Optional.of(new Taken(LocalDate.parse(parts.group(1)), start.getAsInt(), Long.parseLong(parts.group(3))));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
