package org.steadwork.ownpage;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import org.steadwork.casefile.CaseFile;
import org.steadwork.web.Form;

/** The day that a phone tells about: what was kept without reception arrives later. */
@ApplicationScoped
class OwnDays {

    /** Days for which what was kept on a phone may still be sent. */
    static final int BACK = 7;

    @Inject
    Clock clock;

    /** Returns the day in the field {@code day}; today where it is not one of the last week, or lies before the case. */
    LocalDate told(CaseFile file, Form form) {
        LocalDate today = LocalDate.now(clock);
        try {
            LocalDate day = LocalDate.parse(form.value("day"));
            return day.isAfter(today) || day.isBefore(today.minusDays(BACK)) || day.isBefore(file.openedOn()) ? today : day;
        } catch (DateTimeException e) {
            return today;
        }
    }
}
