package org.steadwork.redflag;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.LinkedHashSet;
import java.util.Set;
import org.steadwork.casefile.CaseFile;
import org.steadwork.redflag.rules.PermanentBar;

/** Says which kinds of treatment and exercise are suspended in a case. */
@ApplicationScoped
public class Suspensions {

    @Inject
    RedFlagContent content;

    @Inject
    Flags flags;

    @Inject
    RedFlagScreens screens;

    @Inject
    RedFlagRail rail;

    /**
     * Returns the tokens in force: of open flags, of due questions that the newest screen has not asked, and the bars that stay
     * for good. A token for one region carries it, for example {@code region_all:knee}; the tokens and what they block stand in
     * the content. A case without a screen has none: its screen is incomplete, which is another matter.
     */
    public Set<String> inForce(long caseId) {
        return inForce(flags.of(caseId), screens.latest(caseId).orElse(null));
    }

    /** As {@link #inForce(long)}, as this request read them for the rail of its page: costs no query more. */
    public Set<String> shownBesideThePage(CaseFile file) {
        return inForce(rail.flags(file), rail.latest(file).orElse(null));
    }

    /** @param latest the newest screen of the case, or null */
    Set<String> inForce(Iterable<Flag> all, RedFlagScreen latest) {
        Set<String> tokens = new LinkedHashSet<>();
        for (Flag flag : all) {
            if (flag.open()) {
                tokens.addAll(flag.suspends());
            }
            tokens.addAll(barredForGood(flag));
        }
        if (latest != null) {
            tokens.addAll(latest.suspendedUntilAsked());
        }
        return tokens;
    }

    /** A flag that rested on an unknown answer and was closed leaves no bar behind. */
    Set<String> barredForGood(Flag flag) {
        Set<String> tokens = new LinkedHashSet<>();
        for (PermanentBar bar : content.catalogue().bars()) {
            if (bar.after().contains(flag.origin()) && (flag.certain() || flag.open())) {
                tokens.add(bar.token());
            }
        }
        return tokens;
    }
}
