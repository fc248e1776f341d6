package org.steadwork.outcome;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.steadwork.body.BodyChart;
import org.steadwork.body.BodyRegion;
import org.steadwork.casefile.RegionReading;
import org.steadwork.casefile.SymptomReport;

/**
 * What a symptom report says about pain as one number each: the highest of its zones, 0 for a report without symptoms, null
 * for what was not asked.
 */
public record ReportedPain(Integer now, Integer average, Integer worst) {

    /** Reads a report. */
    public static ReportedPain of(SymptomReport report) {
        if (report.symptomFree()) {
            return new ReportedPain(0, 0, 0);
        }
        List<RegionReading> readings = report.readings();
        return new ReportedPain(highest(readings, RegionReading::now), highest(readings, RegionReading::average),
                highest(readings, RegionReading::worst));
    }

    /** Returns the rating that an instrument asks for, by the ending of its key; null for any other. */
    Integer rating(String instrument) {
        return switch (instrument) {
            case "nprs_now" -> now;
            case "nprs_average" -> average;
            case "nprs_worst" -> worst;
            default -> null;
        };
    }

    /** Returns the regions of a report, the one with the highest worst pain first. */
    static List<BodyRegion> regions(SymptomReport report, BodyChart chart) {
        return report.regions(chart).stream().sorted(java.util.Comparator.comparingInt((BodyRegion region) -> -report.readings().stream()
                .filter(reading -> chart.zone(reading.zone()).region() == region).map(RegionReading::worst).filter(Objects::nonNull)
                .mapToInt(Integer::intValue).max().orElse(-1)).thenComparing(region -> region)).toList();
    }

    private static Integer highest(List<RegionReading> readings, Function<RegionReading, Integer> rating) {
        return readings.stream().map(rating).filter(Objects::nonNull).max(Integer::compare).orElse(null);
    }
}
