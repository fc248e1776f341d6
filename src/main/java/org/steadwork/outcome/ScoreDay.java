package org.steadwork.outcome;

import java.time.LocalDate;
import org.steadwork.casefile.CaseFile;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;

/** The day that scores are entered for: between the opening of the case and today. */
final class ScoreDay {

    private ScoreDay() {
    }

    /** Reads the field {@code on}; notes an error and returns null for a day that cannot be. */
    static LocalDate read(Form form, CaseFile file, LocalDate today) {
        LocalDate on = form.requiredDate("on", "Day of the scores");
        if (on == null || allowed(on, file, today)) {
            return on;
        }
        form.error("on", "Scores lie between the opening of the case, " + Dates.shown(file.openedOn()) + ", and today. You entered "
                + Dates.shown(on) + ".");
        return null;
    }

    /** Reads the day of an address; anything that cannot be is today. */
    static LocalDate of(String text, CaseFile file, LocalDate today) {
        try {
            LocalDate on = Dates.parse(text == null ? "" : text);
            return allowed(on, file, today) ? on : today;
        } catch (java.time.DateTimeException e) {
            return today;
        }
    }

    private static boolean allowed(LocalDate on, CaseFile file, LocalDate today) {
        return !on.isBefore(file.openedOn()) && !on.isAfter(today);
    }
}
