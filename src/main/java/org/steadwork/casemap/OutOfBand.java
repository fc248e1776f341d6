package org.steadwork.casemap;

import org.steadwork.workplace.Finding;
import org.steadwork.workplace.fit.Band;
import org.steadwork.workplace.fit.Criterion;
import org.steadwork.workplace.fit.Deviation;
import org.steadwork.workplace.fit.Lenses;
import org.steadwork.workplace.fit.Target;
import org.steadwork.workplace.fit.Targets;
import org.steadwork.workplace.fit.Verdict;

/**
 * How far a finding is out of its band, as a multiple of the width that is only a little off: 1 is the edge to out of range.
 * So millimetres, degrees and minutes can stand in one ranking. Source: a rule of this project, no outside source.
 */
final class OutOfBand {

    /** For what was observed and for bands without a width to measure by. */
    private static final double NEAR = .5;
    private static final double OUT = 1.5;

    private OutOfBand() {
    }

    static double times(Finding finding, Criterion criterion, Targets targets, Lenses lenses) {
        double byGrade = finding.verdict() == Verdict.OUT_OF_RANGE ? OUT : NEAR;
        if (finding.deviation() == null) {
            return byGrade;
        }
        double deviation = finding.deviation().doubleValue();
        double times;
        if (criterion.deviation() != null) {
            Target target = targets.of(criterion.deviation(), lenses);
            times = times(target.aim() + deviation, target.green(), target.amber());
        } else if (criterion.bands() != null) {
            Criterion.Bands bands = criterion.bands();
            double value = !Double.isNaN(bands.aim()) ? bands.aim() + deviation
                    : deviation < 0 ? bands.green().low() + deviation : bands.green().high() + deviation;
            times = times(value, bands.green(), bands.amber());
        } else {
            times = Double.NaN;
        }
        return times > 0 && Double.isFinite(times) ? times : byGrade;
    }

    static double times(double value, Band green, Band amber) {
        double width = value < green.low() ? green.low() - amber.low() : amber.high() - green.high();
        return green.outside(value) / width;
    }

    /** Whether a positive deviation means higher, later or more; a screen drop counts downwards. */
    static boolean upwards(Criterion criterion) {
        return criterion.deviation() != Deviation.SCREEN_DROP;
    }
}
