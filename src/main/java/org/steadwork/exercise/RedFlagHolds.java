package org.steadwork.exercise;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.steadwork.body.BodyRegion;
import org.steadwork.casefile.CaseFile;
import org.steadwork.redflag.Suspensions;

/** What the red-flag screen of a case holds back. */
@ApplicationScoped
class RedFlagHolds implements ExerciseHolds {

    @Inject
    Suspensions suspensions;

    @Inject
    ExerciseCatalogue catalogue;

    @Override
    public List<Hold> inForce(long caseId) {
        return suspensions.inForce(caseId).stream().map(this::hold).toList();
    }

    @Override
    public List<Hold> beside(CaseFile file) {
        return suspensions.shownBesideThePage(file).stream().map(this::hold).toList();
    }

    /** A token for one region carries it, as in {@code region_all:knee}. */
    Hold hold(String suspension) {
        int colon = suspension.indexOf(':');
        String token = colon < 0 ? suspension : suspension.substring(0, colon);
        String words = catalogue.suspension(token).words();
        if (colon < 0) {
            return new Hold(token, Set.of(), words);
        }
        BodyRegion region = BodyRegion.of(suspension.substring(colon + 1));
        return new Hold(token, Set.of(region), words + " (" + region.label().toLowerCase(Locale.ROOT) + ")");
    }
}
