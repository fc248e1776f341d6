package org.steadwork.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import org.steadwork.account.Account;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.Visit;
import org.steadwork.content.Entry;

/**
 * One visit of a demo case while it is loaded.
 *
 * @param demo the whole case as written
 * @param clinic the clinic as written, with its address book
 * @param entry the visit as written
 */
public record DemoVisit(Entry demo, Entry clinic, Entry entry, CaseFile file, Visit visit, Account clinician) {

    public LocalDate day() {
        return visit.visitedOn();
    }

    /** The moment at which the visit began, in the clinic's zone. */
    public Instant moment() {
        return LocalDateTime.of(day(), LocalTime.parse(entry.text("time"))).atZone(ZoneId.systemDefault()).toInstant();
    }

    public Entry described() {
        return demo.entry("case").orElseThrow(() -> demo.problem("'case' is missing"));
    }

    /** Returns an entry of one of the clinic's lists by its key. */
    public Entry known(String list, String key) {
        return DemoPeople.keyed(clinic, list, key);
    }
}
