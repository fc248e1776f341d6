package org.steadwork.casefile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.steadwork.body.BodyChart;
import org.steadwork.body.SymptomKind;
import org.steadwork.body.Zone;
import org.steadwork.web.Initial;

/**
 * Says in words what differs between two reports, without judging it: whether a change is real or important is for the
 * outcome measures, which know their error.
 */
public final class SymptomChanges {

    /** What differs in one zone, or in the pattern. */
    public record Change(String about, List<String> words) {
    }

    private SymptomChanges() {
    }

    /** Returns the differences zone by zone in the order of the chart, then the pattern; empty when nothing differs. */
    public static List<Change> between(SymptomPattern before, List<RegionReading> then, SymptomPattern after, List<RegionReading> now,
            BodyChart chart) {
        Map<String, RegionReading> old = byZone(then);
        Map<String, RegionReading> fresh = byZone(now);
        List<Change> changes = new ArrayList<>();
        for (Zone zone : chart.zones()) {
            RegionReading was = old.get(zone.key());
            RegionReading is = fresh.get(zone.key());
            List<String> words = was == null && is == null ? List.of() : was == null ? newly(is) : is == null
                    ? List.of("no longer marked") : zone(was, is);
            if (!words.isEmpty()) {
                changes.add(new Change(zone.label(), words));
            }
        }
        List<String> pattern = pattern(before, after);
        if (!pattern.isEmpty()) {
            changes.add(new Change("Pattern", pattern));
        }
        return changes;
    }

    private static List<String> newly(RegionReading is) {
        return List.of("newly marked, " + is.mark().words());
    }

    private static List<String> zone(RegionReading was, RegionReading is) {
        List<String> words = new ArrayList<>();
        for (PainScale scale : PainScale.values()) {
            Integer from = scale.of(was);
            Integer to = scale.of(is);
            if (!Objects.equals(from, to)) {
                words.add(scale.label().toLowerCase(Locale.ROOT) + " " + score(from) + " → " + score(to) + difference(from, to));
            }
        }
        if (!was.kinds().equals(is.kinds())) {
            words.add("kind " + kinds(was) + " → " + kinds(is));
        }
        text(words, "since", was.since(), is.since());
        text(words, "behaviour", was.pattern(), is.pattern());
        return words;
    }

    private static List<String> pattern(SymptomPattern before, SymptomPattern after) {
        List<String> words = new ArrayList<>();
        if (before.course() != after.course()) {
            words.add("course over the day " + Initial.small(before.course().label()) + " → " + Initial.small(after.course().label()));
        }
        if (before.nightWaking() != after.nightWaking()) {
            words.add("wakes at night " + before.nightWaking().label() + " → " + after.nightWaking().label());
        }
        if (before.coughOrSneeze() != after.coughOrSneeze()) {
            words.add("cough or sneeze makes it worse " + before.coughOrSneeze().label() + " → " + after.coughOrSneeze().label());
        }
        text(words, "worse with", before.aggravating(), after.aggravating());
        text(words, "eased by", before.easing(), after.easing());
        return words;
    }

    private static void text(List<String> words, String about, String from, String to) {
        if (!Objects.equals(from, to)) {
            words.add(about + " " + quoted(from) + " → " + quoted(to));
        }
    }

    private static String quoted(String text) {
        return text == null ? "not noted" : "“" + text + "”";
    }

    private static String score(Integer score) {
        return score == null ? "not asked" : score.toString();
    }

    /** A difference needs two numbers; from or to "not asked" there is none. */
    private static String difference(Integer from, Integer to) {
        if (from == null || to == null) {
            return "";
        }
        int by = to - from;
        return " (" + (by < 0 ? "−" : "+") + Math.abs(by) + ")";
    }

    private static String kinds(RegionReading reading) {
        return reading.kinds().isEmpty() ? "not said"
                : new TreeSet<>(reading.kinds()).stream().map(SymptomKind::label).collect(Collectors.joining(", "));
    }

    private static Map<String, RegionReading> byZone(List<RegionReading> readings) {
        Map<String, RegionReading> byZone = new LinkedHashMap<>();
        readings.forEach(reading -> byZone.put(reading.zone(), reading));
        return byZone;
    }
}
