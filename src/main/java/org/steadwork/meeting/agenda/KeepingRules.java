package org.steadwork.meeting.agenda;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** Visits kept and missed, exercises done, visits beyond what was planned. */
final class KeepingRules {

    private static final int DAYS_A_WEEK = 7;
    /** A report older than this says nothing about now, in days. */
    private static final int STALE_DAYS = 14;

    private KeepingRules() {
    }

    static List<Reason> missed(Criterion criterion, CaseFacts facts) {
        int inARow = criterion.number("in_a_row");
        int size = facts.contacts().size();
        List<CaseFacts.Contact> last = facts.contacts().subList(Math.max(0, size - inARow), size);
        return last.size() == inARow && last.stream().allMatch(CaseFacts.Contact::missed)
                ? List.of(criterion.holds("Missed the last " + Days.counted(inARow, "visit") + "; how things are since is unknown.",
                        last.stream().map(contact -> new Figure("Missed", Days.shown(contact.on()))).toList())) : List.of();
    }

    /** Less than so many per cent of the sessions in each of the last so many weeks; a week without a report is not known. */
    static List<Reason> adherence(Criterion criterion, CaseFacts facts) {
        if (!facts.programme().given()) {
            return List.of();
        }
        List<CaseFacts.Week> reported = facts.programme().weeks();
        if (reported.isEmpty()) {
            return List.of(criterion.unknown("Nothing was reported of the exercises."));
        }
        LocalDate latest = reported.get(reported.size() - 1).to();
        if (Days.between(latest, facts.today()) > STALE_DAYS) {
            return List.of(criterion.unknown("Nothing was reported of the exercises since " + Days.shown(latest) + "."));
        }
        int weeks = criterion.number("weeks");
        List<Figure> figures = new ArrayList<>();
        boolean unknown = false;
        for (int back = 0; back < weeks; back++) {
            LocalDate end = latest.minusDays((long) DAYS_A_WEEK * back);
            OptionalInt kept = percent(reported.stream().filter(week -> !week.to().isAfter(end) && week.to().isAfter(end.minusDays(DAYS_A_WEEK))).toList());
            if (kept.isPresent() && kept.getAsInt() >= criterion.number("percent")) {
                return List.of();
            }
            unknown |= kept.isEmpty();
            figures.add(0, new Figure("Week to " + Days.shown(end), kept.isPresent() ? kept.getAsInt() + "\u00a0%" : "not known"));
        }
        return unknown ? List.of(criterion.unknown("Exercises were kept under " + criterion.number("percent")
                + "\u00a0% where it is known, but not every one of the last " + Days.counted(weeks, "week") + " was reported."))
                : List.of(criterion.holds("Exercises kept under " + criterion.number("percent") + "\u00a0% " + Days.counted(weeks, "week") + " running.", figures));
    }

    static List<Reason> visitsOver(Criterion criterion, CaseFacts facts) {
        int planned = facts.plannedVisits() == null ? criterion.number("usual_visits") : facts.plannedVisits();
        return facts.attended() > planned ? List.of(criterion.holds(Days.counted(facts.attended(), "visit") + ", " + (facts.plannedVisits() == null
                ? "more than the usual " : "more than the planned ") + planned + ".", new Figure("Attended", String.valueOf(facts.attended())),
                new Figure(facts.plannedVisits() == null ? "Usual number; none was agreed for this case" : "Planned", String.valueOf(planned)))) : List.of();
    }

    /** Whole per cent of all sessions whose number was reported, rounded down so that just under stays under; empty when none was. */
    private static OptionalInt percent(List<CaseFacts.Week> weeks) {
        List<CaseFacts.Week> known = weeks.stream().filter(week -> week.done() != null && week.planned() > 0).toList();
        int planned = known.stream().mapToInt(CaseFacts.Week::planned).sum();
        return planned == 0 ? OptionalInt.empty() : OptionalInt.of(100 * known.stream().mapToInt(CaseFacts.Week::done).sum() / planned);
    }
}
