package org.steadwork.casefile;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/** The work statuses of one case in order of time. */
public record WorkHistory(List<WorkStatus> spells) {

    public WorkHistory {
        spells = List.copyOf(spells);
    }

    /** Returns the spell that holds on a day; empty before the first, and after the end of one that nothing follows: then it is not known. */
    public Optional<WorkStatus> on(LocalDate day) {
        Optional<WorkStatus> begun = spells.stream().filter(spell -> !spell.from().isAfter(day)).reduce((earlier, later) -> later);
        return begun.filter(spell -> spell.until() == null || !spell.until().isBefore(day));
    }

    /** Returns the calendar days off for this problem up to and with a day; days of unknown status are not counted as off or as worked. */
    public long daysOff(LocalDate today) {
        long days = 0;
        for (int i = 0; i < spells.size(); i++) {
            WorkStatus spell = spells.get(i);
            if (spell.code() == WorkStatusCode.OFF) {
                days += Math.max(0, ChronoUnit.DAYS.between(spell.from(), lastDay(i, today)) + 1);
            }
        }
        return days;
    }

    /** Returns the first day of the absence for this problem that a day falls in: spells off that follow one another without a gap are one. */
    public Optional<LocalDate> offSince(LocalDate day) {
        if (on(day).filter(spell -> spell.code() == WorkStatusCode.OFF).isEmpty()) {
            return Optional.empty();
        }
        LocalDate since = null;
        LocalDate end = null;
        for (int i = 0; i < spells.size() && !spells.get(i).from().isAfter(day); i++) {
            WorkStatus spell = spells.get(i);
            boolean off = spell.code() == WorkStatusCode.OFF;
            boolean follows = since != null && end != null && spell.from().equals(end.plusDays(1));
            since = !off ? null : follows ? since : spell.from();
            end = lastDay(i, day);
        }
        return Optional.ofNullable(since);
    }

    /** Returns the spells with the newest first. */
    public List<WorkStatus> newestFirst() {
        return spells.stream().sorted((a, b) -> b.from().compareTo(a.from())).toList();
    }

    /** Returns the last day of a spell up to a day: its own end, the day before the next one, or that day. */
    LocalDate lastDay(int i, LocalDate today) {
        LocalDate last = spells.get(i).until() == null || spells.get(i).until().isAfter(today) ? today : spells.get(i).until();
        if (i + 1 < spells.size() && !spells.get(i + 1).from().isAfter(last)) {
            last = spells.get(i + 1).from().minusDays(1);
        }
        return last;
    }
}
