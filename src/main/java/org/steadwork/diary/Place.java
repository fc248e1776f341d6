package org.steadwork.diary;

import java.time.LocalDate;
import org.steadwork.account.Account;
import org.steadwork.diary.rules.Span;

/**
 * With whom, where and when: what is booked.
 *
 * @param room  null where no room of the clinic is needed
 * @param start local minutes since midnight, on the grid of the diary
 */
record Place(Account clinician, ClinicRoom room, LocalDate day, int start, int minutes) {

    Span span() {
        return new Span(start, start + minutes);
    }
}
