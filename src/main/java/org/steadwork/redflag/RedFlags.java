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

    /**
     * Says how a case stood at the end of a day: what was asked, reported, raised or closed later does not count. The level of a flag,
     * and whether it is certain, are those of now, since neither is taken back when it gets worse.
     */
    public CaseStatus status(long caseId, LocalDate day) {
        if (!day.isBefore(LocalDate.now(clock))) {
            return status(caseId);
        }
        Optional<RedFlagScreen> latest = screens.latest(caseId, day);
        return status(flags.of(caseId).stream().filter(flag -> flag.openOn(day)).toList(), latest,
                latest.map(screen -> reported.notAskedIn(screen, day)).orElse(Set.of()), day);
    }

    /** @param notAsked regions reported since the newest screen was signed */
    CaseStatus status(List<Flag> all, Optional<RedFlagScreen> latest, Set<String> notAsked) {
        return status(all.stream().filter(Flag::open).toList(), latest, notAsked, LocalDate.now(clock));
    }

    private CaseStatus status(List<Flag> open, Optional<RedFlagScreen> latest, Set<String> notAsked, LocalDate on) {
        Optional<Urgency> highestOpen = Urgency.highest(open.stream().map(Flag::urgency).toList());
        Verdict verdict = latest.map(RedFlagScreen::verdict).orElse(Verdict.INCOMPLETE);
        if (open.stream().anyMatch(Flag::certain)) {
            verdict = Verdict.POSITIVE;
        } else if (verdict == Verdict.CLEAR && (highestOpen.isPresent() || !notAsked.isEmpty() || !latest.orElseThrow().signed())) {
            verdict = Verdict.INCOMPLETE;
        }
        return new CaseStatus(verdict, latest.map(RedFlagScreen::screenedOn), latest.map(RedFlagScreen::signed).orElse(false),
                latest.map(screen -> outOfDate(screen.screenedOn(), on)).orElse(false), highestOpen);
    }

    boolean outOfDate(LocalDate screenedOn) {
        return outOfDate(screenedOn, LocalDate.now(clock));
    }

    private boolean outOfDate(LocalDate screenedOn, LocalDate on) {
        return screenedOn.plusDays(validDays).isBefore(on);
    }

    int validDays() {
        return validDays;
    }
}
