package org.steadwork.workplace;

import java.util.Map;
import org.steadwork.workplace.fit.BodyEstimates;
import org.steadwork.workplace.fit.BodyGroup;
import org.steadwork.workplace.fit.Criterion;
import org.steadwork.workplace.fit.ErrorCorrelations;
import org.steadwork.workplace.fit.Targets;

/** The shipped content, for tests of the pure part. */
public final class TestTargets {

    public static final Targets TARGETS = FitContent.targets();
    public static final BodyEstimates ESTIMATES = AnthropometryContent.estimates();
    public static final Map<BodyGroup, Map<Boolean, ErrorCorrelations>> CORRELATIONS = AnthropometryContent.correlations();
    public static final Map<String, PopulationText> POPULATIONS = AnthropometryContent.populations();
    public static final java.util.List<Criterion> CRITERIA = FitContent.criteria();

    private TestTargets() {
    }
}
