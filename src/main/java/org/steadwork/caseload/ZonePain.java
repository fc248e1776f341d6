package org.steadwork.caseload;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;

/** Mean worst pain of the linked and of the unlinked zones of a case, first report against last, over zones rated in both; null where there is none. */
record ZonePain(Double linkedFirst, Double linkedLast, Double unlinkedFirst, Double unlinkedLast) {

    static ZonePain of(NavigableMap<LocalDate, List<CaseFacts.Reported>> reports, Set<String> linked) {
        if (reports.size() < 2) {
            return new ZonePain(null, null, null, null);
        }
        List<CaseFacts.Reported> last = reports.lastEntry().getValue();
        Map<String, Integer> later = new HashMap<>();
        last.stream().filter(zone -> zone.zone() != null && zone.worst() != null).forEach(zone -> later.put(zone.zone(), zone.worst()));
        List<int[]> withLink = new ArrayList<>();
        List<int[]> without = new ArrayList<>();
        for (CaseFacts.Reported zone : reports.firstEntry().getValue()) {
            Integer now = last.get(0).symptomFree() ? Integer.valueOf(0) : later.get(zone.zone());
            if (zone.zone() != null && zone.worst() != null && now != null) {
                (linked.contains(zone.zone()) ? withLink : without).add(new int[] {zone.worst(), now});
            }
        }
        return new ZonePain(mean(withLink, 0), mean(withLink, 1), mean(without, 0), mean(without, 1));
    }

    private static Double mean(List<int[]> pairs, int which) {
        return pairs.isEmpty() ? null : Double.valueOf(pairs.stream().mapToInt(pair -> pair[which]).average().orElseThrow());
    }
}
