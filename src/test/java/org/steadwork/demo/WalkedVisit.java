package org.steadwork.demo;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Optional;
import java.util.function.Function;
import org.steadwork.content.Entry;
import org.steadwork.journey.Guest;

/**
 * One visit while its case is walked through the pages.
 *
 * @param guest the clinician, signed in at the beginning of the visit
 * @param later opens the clinic at a later moment for the same clinician
 * @param caseId number of the case in the addresses
 */
record WalkedVisit(Guest guest, Function<LocalDateTime, Guest> later, long caseId, Entry demo, Entry clinic, Entry entry) {

    LocalDate day() {
        return LocalDate.parse(entry.text("date"));
    }

    /** The clinician at the working hour of a later day, or at the visit's own hour of its day. */
    Guest on(LocalDate day) {
        return later.apply(LocalDateTime.of(day, day.equals(day()) ? LocalTime.parse(entry.text("time")).plusMinutes(30) : LocalTime.of(16, 0)));
    }

    int number() {
        return entry.integer("number");
    }

    String path(String tab) {
        return "/cases/" + caseId + tab;
    }

    Optional<Entry> expected() {
        return entry.entry("expected");
    }

    /** Begins the message of a failed expectation: which case, which visit. */
    String where() {
        return demo.text("key") + ", visit " + number() + ": ";
    }
}
