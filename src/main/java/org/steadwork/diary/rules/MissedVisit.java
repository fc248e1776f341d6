package org.steadwork.diary.rules;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What is known after a missed visit, and the step that follows. Source: practice facts of the clinic, did not attend; common
 * practice, no source.
 *
 * @param missedOn  day of the missed visit
 * @param inARow    how many were missed in a row, this one included
 * @param inEpisode how many were missed in the episode of care
 * @param urgent    whether an open flag of same day or higher, or concern about self-harm, stands in the case
 * @param newDate   whether a later visit is planned
 * @param tries     what was tried since the miss, in order
 */
public record MissedVisit(LocalDate missedOn, int inARow, int inEpisode, boolean urgent, boolean newDate, List<Try> tries) {

    /** One try: by phone or to the contact person or the doctor, by letter, or otherwise. */
    public record Try(LocalDate on, String route, boolean reached) {

        boolean spoke() {
            return reached && (route.equals("phone") || route.equals("contact_person") || route.equals("doctor"));
        }

        boolean letter() {
            return route.equals("letter");
        }
    }

    /** The rule of the clinic. */
    public record Rule(int routesSameDay, int inARow, int inEpisode, int daysToReply) {
    }

    /** What comes next, in the order in which it is asked. */
    public enum Step {
        PHONE_TODAY, CONTACT, LETTER, WAIT, DECIDE, AGAIN, OFFER, DONE
    }

    /** Safety first; then being reached, the letter where the rule asks for it, a new date. */
    public Step next(Rule rule, LocalDate today) {
        if (urgent && tries.stream().noneMatch(Try::spoke)) {
            return Step.PHONE_TODAY;
        }
        if (letterWanted(rule)) {
            return afterLetter(rule, today);
        }
        if (reached()) {
            return newDate ? Step.DONE : Step.OFFER;
        }
        return routes() < rule.routesSameDay() ? Step.CONTACT : newDate ? Step.DONE : Step.AGAIN;
    }

    private Step afterLetter(Rule rule, LocalDate today) {
        Optional<LocalDate> sent = letterSentOn();
        if (sent.isEmpty()) {
            return routes() < rule.routesSameDay() && !reached() ? Step.CONTACT : Step.LETTER;
        }
        boolean replied = tries.stream().anyMatch(one -> one.reached() && !one.on().isBefore(sent.get()));
        if (replied) {
            return newDate ? Step.DONE : Step.OFFER;
        }
        return today.isBefore(sent.get().plusDays(rule.daysToReply())) ? Step.WAIT : Step.DECIDE;
    }

    public boolean letterWanted(Rule rule) {
        return inARow >= rule.inARow() || inEpisode >= rule.inEpisode();
    }

    public boolean reached() {
        return tries.stream().anyMatch(Try::reached);
    }

    /** How many different routes were tried. */
    public int routes() {
        return (int) tries.stream().map(Try::route).distinct().count();
    }

    /** When the latest letter went out. */
    public Optional<LocalDate> letterSentOn() {
        return tries.stream().filter(Try::letter).map(Try::on).max(LocalDate::compareTo);
    }
}
