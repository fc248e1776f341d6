package org.steadwork.caseload;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;

/** For tests of other packages that store cases past Hibernate. */
@ApplicationScoped
public class SummedUp {

    @Inject
    OutcomeStart start;

    public void everyCase() {
        start.rebuild();
    }
}
