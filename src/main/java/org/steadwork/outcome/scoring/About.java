package org.steadwork.outcome.scoring;

import java.util.List;

/**
 * What stands beside every way of measuring: its names, its unit, when it is due, who allows its use and where it comes from.
 *
 * @param key name in content and in stored results, unique
 * @param version of the method; results of two versions never make one series
 * @param unit written after a value
 * @param decimals how many decimals a value is shown with, 0 to 2; results are kept with full precision
 * @param regions keys of the body regions it is meant for; empty for any
 * @param everyDays how often it is due, in days; 0 for once at the start of care
 * @param method how it is done, in words
 */
public record About(String key, String name, String label, String version, String unit, int decimals, List<String> regions,
        int everyDays, String scheduleWords, String method, String permission, String source, List<String> notes) {

    public About {
        regions = List.copyOf(regions);
        notes = List.copyOf(notes);
    }
}
