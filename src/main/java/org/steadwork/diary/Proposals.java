package org.steadwork.diary;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoField;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.steadwork.account.Account;
import org.steadwork.diary.rules.ClinicTime;
import org.steadwork.diary.rules.SlotSearch;
import org.steadwork.diary.rules.Span;
import org.steadwork.diary.rules.Spans;

/** Offers free times near a wanted one. */
@ApplicationScoped
class Proposals {

    private static final int STEP = 15;

    @Inject
    Clock clock;

    /** What is looked for: for whom, how long, near what. */
    record Search(long patientId, DiaryContent.Length length, LocalDate wantedDay, int wantedStart, int most, int aDay) {
    }

    /** Finds free times with any of these clinicians on these days, none in the past. */
    List<Proposal> of(Openings openings, Collection<Account> clinicians, Collection<LocalDate> days, Search search) {
        List<Proposal> found = new ArrayList<>();
        for (Account clinician : clinicians) {
            Map<LocalDate, List<Span>> free = new LinkedHashMap<>();
            days.stream().filter(day -> !day.isBefore(LocalDate.now(clock))).forEach(day -> free.put(day,
                    ahead(day, openings.fitting(clinician.id(), search.patientId(), search.length().room(), day))));
            SlotSearch.nearest(free, search.length().minutes(), STEP, search.wantedDay(), search.wantedStart(), search.most(), search.aDay()).stream()
                    .filter(slot -> ClinicTime.exists(slot.day(), slot.start(), clock.getZone()))
                    .map(slot -> new Proposal(slot.day(), slot.start(), clinician.id(), clinician.displayName())).forEach(found::add);
        }
        return found.stream().sorted(Comparator.<Proposal>comparingLong(one -> Math.abs(one.day().toEpochDay() - search.wantedDay().toEpochDay()))
                .thenComparing(Proposal::day).thenComparing(one -> Math.abs(one.start() - search.wantedStart())).thenComparing(Proposal::start))
                .limit(search.most()).sorted(Comparator.comparing(Proposal::day).thenComparing(Proposal::start)).toList();
    }

    /** What of a day's free time has not passed, from the next step of the grid on. */
    List<Span> ahead(LocalDate day, List<Span> free) {
        int now = LocalTime.now(clock).get(ChronoField.MINUTE_OF_DAY);
        int next = (now / DiaryContent.GRID + 1) * DiaryContent.GRID;
        return day.equals(LocalDate.now(clock)) && next < Span.DAY ? Spans.without(free, List.of(new Span(0, next))) : free;
    }
}
