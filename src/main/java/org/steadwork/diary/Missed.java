package org.steadwork.diary;

import java.time.LocalDate;
import java.util.List;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.Visit;
import org.steadwork.diary.rules.MissedVisit;
import org.steadwork.people.Patient;

/**
 * A missed visit with what follows.
 *
 * @param visit       null for somebody without a case, whose appointment it is
 * @param facts       what is known
 * @param step        what comes next
 * @param label       the step in a word or two
 * @param words       the step in words fit for who asks
 * @param tries       what was tried, the newest first
 */
record Missed(Patient patient, Visit visit, Appointment appointment, LocalDate day, MissedVisit facts, MissedVisit.Step step, String label, String words,
        List<ContactAttempt> tries) {

    /** How an address names it. */
    public String key() {
        return visit == null ? "a" + appointment.id() : "v" + visit.id();
    }

    public CaseFile caseFile() {
        return visit == null ? null : visit.caseFile();
    }

    public boolean done() {
        return step == MissedVisit.Step.DONE;
    }

    /** The modifier of the status sign: what cannot wait, what is late, what is to do. */
    public String mark() {
        return switch (step) {
            case PHONE_TODAY -> "out";
            case CONTACT, LETTER, DECIDE -> "near";
            default -> "open";
        };
    }

    public String count() {
        return facts.inARow() > 1 ? ordinal(facts.inARow()) + " missed in a row" : facts.inEpisode() > 1 ? ordinal(facts.inEpisode()) + " missed in this case" : "First missed";
    }

    static String ordinal(int number) {
        return switch (number) {
            case 1 -> "First";
            case 2 -> "Second";
            case 3 -> "Third";
            default -> number + "th";
        };
    }

    public String bookAddress() {
        return "/diary/book?patient=" + patient.id() + (visit == null ? "" : "&caseId=" + visit.caseFile().id());
    }
}
