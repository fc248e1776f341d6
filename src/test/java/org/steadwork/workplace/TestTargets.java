package org.steadwork.workplace;

import org.steadwork.workplace.fit.BodyEstimates;
import org.steadwork.workplace.fit.Criterion;
import org.steadwork.workplace.fit.Targets;

/** The shipped content, for tests of the pure part. */
public final class TestTargets {

    public static final Targets TARGETS = FitContent.targets();
    public static final BodyEstimates ESTIMATES = FitContent.estimates();
    public static final java.util.List<Criterion> CRITERIA = FitContent.criteria();

    private TestTargets() {
    }
}
