package org.steadwork.casefile;

import java.time.LocalDate;
import java.util.Optional;

/** Tells what is most pressing in one case by the rules of Today. */
public interface NextSteps {

    /** Returns the first of what stands in the case on a day, also when somebody has put it off; empty when nothing stands. */
    Optional<NextStep> of(long caseId, LocalDate today);
}
