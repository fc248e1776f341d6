package org.steadwork.ownpage;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import org.steadwork.outcome.Instruments;

/** Tells whether pain rose by more than the error of the pain scale. */
@ApplicationScoped
public class PainRise {

    private static final String SCALE = "nprs_now";
    private static final String ANY_REGION = "";

    @Inject
    Instruments instruments;

    /** False when either was not said: a missing number is no alarm and no all-clear. */
    public boolean beyondError(Integer before, Integer after) {
        if (before == null || after == null) {
            return false;
        }
        return instruments.find(SCALE).flatMap(scale -> scale.error(ANY_REGION, before)).filter(error -> after - before >= error.points(before)).isPresent();
    }
}
