package org.steadwork.redflag;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.steadwork.redflag.rules.Urgency;
import org.steadwork.redflag.rules.Verdict;

/** Says how a case stands with its red flags, for other features. */
@ApplicationScoped
public class RedFlags {

    @Inject
    Flags flags;

    @Inject
    RedFlagScreens screens;

    @Inject
    ReportedRegions reported;

    @Inject
    Clock clock;

    @ConfigProperty(name = "steadwork.red-flag-screen-days")
    int validDays;

    public CaseStatus status(long caseId) {
        Optional<RedFlagScreen> latest = screens.latest(caseId);
        return status(flags.of(caseId), latest, latest.map(reported::notAskedIn).orElse(Set.of()));
    }

    /** @param notAsked regions reported since the newest screen was signed */
    CaseStatus status(List<Flag> all, Optional<RedFlagScreen> latest, Set<String> notAsked) {
        Optional<Urgency> highestOpen = Urgency.highest(all.stream().filter(Flag::open).map(Flag::urgency).toList());
        Verdict verdict = latest.map(RedFlagScreen::verdict).orElse(Verdict.INCOMPLETE);
        if (all.stream().anyMatch(flag -> flag.open() && flag.certain())) {
            verdict = Verdict.POSITIVE;
        } else if (verdict == Verdict.CLEAR && (highestOpen.isPresent() || !notAsked.isEmpty() || !latest.orElseThrow().signed())) {
            verdict = Verdict.INCOMPLETE;
        }
        return new CaseStatus(verdict, latest.map(RedFlagScreen::screenedOn), latest.map(RedFlagScreen::signed).orElse(false),
                latest.map(screen -> outOfDate(screen.screenedOn())).orElse(false), highestOpen);
    }

    boolean outOfDate(LocalDate screenedOn) {
        return screenedOn.plusDays(validDays).isBefore(LocalDate.now(clock));
    }

    int validDays() {
        return validDays;
    }
}
