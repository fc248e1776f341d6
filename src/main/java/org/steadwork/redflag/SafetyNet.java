package org.steadwork.redflag;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.redflag.rules.Catalogue;

/** What a worker is told to watch for, by region, in plain words. */
public final class SafetyNet {

    /** What to call the emergency number for at once, and what to phone about the same day. */
    public record Warnings(List<String> now, List<String> today) {
    }

    private final String core;
    private final Warnings general;
    private final Map<String, Warnings> byRegion;
    private final Map<String, String> labels;

    private SafetyNet(String core, Warnings general, Map<String, Warnings> byRegion, Map<String, String> labels) {
        this.core = core;
        this.general = general;
        this.byRegion = byRegion;
        this.labels = labels;
    }

    static SafetyNet read(Catalogue catalogue) {
        Entry file = Content.yaml("red-flags/safety-net.yaml");
        file.text("source");
        Map<String, Warnings> byRegion = new LinkedHashMap<>();
        Map<String, String> labels = new LinkedHashMap<>();
        for (Entry entry : file.entries("regions")) {
            byRegion.put(entry.text("region"), warnings(entry, catalogue));
            labels.put(entry.text("region"), entry.text("label"));
        }
        if (!byRegion.keySet().containsAll(catalogue.regions())) {
            throw file.problem("every region needs its words: " + catalogue.regions());
        }
        Entry general = file.entry("general").orElseThrow(() -> file.problem("'general' is missing"));
        return new SafetyNet(file.text("core"), warnings(general, catalogue), byRegion, labels);
    }

    private static Warnings warnings(Entry entry, Catalogue catalogue) {
        return new Warnings(lines(entry, "now", catalogue), lines(entry, "today", catalogue));
    }

    private static List<String> lines(Entry entry, String key, Catalogue catalogue) {
        List<String> lines = new ArrayList<>();
        for (Entry line : entry.entries(key)) {
            if (line.texts("from").isEmpty() || !line.texts("from").stream().allMatch(from -> catalogue.question(from).isPresent())) {
                throw line.problem("'from' must name the questions that stand behind the line");
            }
            lines.add(line.text("words"));
        }
        return lines;
    }

    String core() {
        return core;
    }

    /** Returns what to watch for with a complaint of these regions: theirs first, then what holds for everyone; each line once. */
    Warnings warnings(Collection<String> regions) {
        Set<String> now = new LinkedHashSet<>();
        Set<String> today = new LinkedHashSet<>();
        for (String region : regions) {
            now.addAll(byRegion.get(region).now());
            today.addAll(byRegion.get(region).today());
        }
        now.addAll(general.now());
        today.addAll(general.today());
        return new Warnings(List.copyOf(now), List.copyOf(today));
    }

    String label(String region) {
        return labels.getOrDefault(region, region);
    }
}
