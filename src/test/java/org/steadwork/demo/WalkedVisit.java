package org.steadwork.demo;

import java.time.LocalDate;
import java.util.Optional;
import org.steadwork.content.Entry;
import org.steadwork.journey.Guest;

/**
 * One visit while its case is walked through the pages.
 *
 * @param guest the clinician, signed in on the day of the visit
 * @param caseId number of the case in the addresses
 */
record WalkedVisit(Guest guest, long caseId, Entry demo, Entry clinic, Entry entry) {

    LocalDate day() {
        return LocalDate.parse(entry.text("date"));
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
