package org.steadwork.exposure.method;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Computes a composite index from limits given as such, as the manual's illustration does. */
public final class CompositeVectors {

    private CompositeVectors() {
    }

    public static double index(FrequencyTable table, double[] firwl, double[] loads, double[] perMinute, LiftingDuration duration) {
        List<CompositeLifting.Line> lines = new ArrayList<>();
        for (int i = 0; i < firwl.length; i++) {
            double strwl = firwl[i] * table.at(perMinute[i], duration, false);
            lines.add(new CompositeLifting.Line(i + 1, firwl[i], strwl, loads[i] / firwl[i], loads[i] / strwl, perMinute[i], false));
        }
        lines.sort(Comparator.comparingDouble(CompositeLifting.Line::stli).reversed());
        return CompositeLifting.index(table, lines, duration).getAsDouble();
    }
}
