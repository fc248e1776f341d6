package org.steadwork.caseload;

import java.util.List;
import org.steadwork.body.BodyChart;
import org.steadwork.outcome.scoring.Instrument;

/**
 * What the sum of a case depends on besides its records. Rows summed up by another rule are summed up anew at the next start.
 *
 * @param instruments all outcome measures of a region, in the clinic's order
 * @param sustainedDays how long full duties must last, 1 or more
 */
record SummaryRule(BodyChart chart, List<Instrument> instruments, int sustainedDays) {

    /** To be raised with every change of {@link CaseSummary} or of what is read for it. */
    private static final int VERSION = 1;

    SummaryRule {
        instruments = instruments.stream().filter(instrument -> instrument.outcome() && !instrument.regions().isEmpty()).toList();
    }

    /** Returns a number that is the same for the same rule, never 0, which stands for "not summed up yet". */
    int number() {
        int number = 31 * VERSION + sustainedDays;
        for (Instrument instrument : instruments) {
            number = 31 * number + (instrument.key() + instrument.regions()).hashCode();
        }
        return number == 0 ? 1 : number;
    }
}
