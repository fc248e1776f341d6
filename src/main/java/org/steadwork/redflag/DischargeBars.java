package org.steadwork.redflag;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.Visits;
import org.steadwork.web.Dates;
import org.steadwork.web.Initial;

/**
 * Says what has to be done about red flags before a patient is discharged: the questions are asked again, and no flag of two weeks or
 * more urgent is open unless its receiver took the patient over. Source: red-flag safety rule 8; discharge criteria of the clinic's
 * practice (common practice, no source).
 */
@ApplicationScoped
public class DischargeBars {

    @Inject
    Flags flags;

    @Inject
    FlagActions calls;

    @Inject
    RedFlagScreens screens;

    @Inject
    Visits visits;

    /** Returns a sentence for each thing that stands in the way; empty when the patient can be discharged. */
    public List<String> of(CaseFile file) {
        return of(file, visits.lastAttended(file.id()), flags.of(file.id()), screens.latest(file.id()));
    }

    List<String> of(CaseFile file, Optional<LocalDate> lastAttended, List<Flag> all, Optional<RedFlagScreen> latest) {
        List<String> bars = new ArrayList<>();
        lastAttended.flatMap(day -> screen(day, latest)).ifPresent(bars::add);
        Instant accepted = calls.latestAccepted(file.id());
        List<Flag> holding = all.stream().filter(flag -> flag.holdsDischarge(accepted)).sorted(Comparator.comparing(Flag::urgency).reversed()).toList();
        if (!holding.isEmpty()) {
            bars.add("Not closed yet: " + holding.stream().map(DischargeBars::words).collect(Collectors.joining("; "))
                    + ". Close each red flag, or record the call in which the receiver took the patient over.");
        }
        return bars;
    }

    private static String words(Flag flag) {
        return Initial.small(flag.name()) + (flag.certain() ? "" : ", not known") + " (" + flag.urgency().label() + ")";
    }

    /** Nobody can be asked after the last visit, so its screen counts. */
    private static Optional<String> screen(LocalDate lastVisit, Optional<RedFlagScreen> latest) {
        if (latest.isEmpty() || latest.get().screenedOn().isBefore(lastVisit)) {
            return Optional.of("Ask the red-flag questions again before the discharge: at the last visit, " + Dates.shown(lastVisit)
                    + ", they were not asked" + latest.map(screen -> "; the last time was " + Dates.shown(screen.screenedOn())).orElse("") + ".");
        }
        return latest.get().signed() ? Optional.empty()
                : Optional.of("Sign the red-flag screen of " + Dates.shown(latest.get().screenedOn()) + " before the discharge.");
    }
}
