package org.steadwork.casemap;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.steadwork.body.BodyChart;
import org.steadwork.body.Zone;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseTab;
import org.steadwork.casefile.MapCard;
import org.steadwork.casefile.MapPart;
import org.steadwork.casefile.RegionReading;
import org.steadwork.casefile.SymptomReport;
import org.steadwork.casefile.SymptomReports;
import org.steadwork.web.Dates;

/** Lays the zones of the latest symptom report on the map, the worst first, and those of the first report that are gone. */
@ApplicationScoped
class SymptomCards implements MapPart {

    @Inject
    SymptomReports reports;

    @Inject
    BodyChart chart;

    @Override
    public List<MapCard> cards(CaseFile caseFile) {
        List<SymptomReport> all = reports.of(caseFile.id());
        if (all.isEmpty()) {
            return List.of();
        }
        SymptomReport latest = all.get(0);
        SymptomReport first = all.get(all.size() - 1);
        List<RegionReading> now = new ArrayList<>(latest.readings());
        now.sort(Comparator.comparing((RegionReading r) -> score(r).orElse(-1)).reversed()
                .thenComparing(r -> chart.zone(r.zone()).order()));
        Set<String> zones = new LinkedHashSet<>(now.stream().map(RegionReading::zone).toList());
        first.readings().stream().map(RegionReading::zone).sorted(Comparator.comparing(zone -> chart.zone(zone).order())).forEach(zones::add);
        String href = CaseTab.SYMPTOMS.href(caseFile.id());
        return zones.stream().map(key -> card(chart.zone(key), latest, first, href)).toList();
    }

    private static MapCard card(Zone zone, SymptomReport latest, SymptomReport first, String href) {
        return MapCard.symptom(zone.key(), zone.label(), line(reading(latest, zone), latest.reportedOn(), latest == first ? Optional.empty()
                : reading(first, zone), first.reportedOn()), href, Set.of(zone.region()));
    }

    private static Optional<RegionReading> reading(SymptomReport report, Zone zone) {
        return report.readings().stream().filter(r -> r.zone().equals(zone.key())).findFirst();
    }

    /** Worst pain now and at the start; what was not asked is said to be so. */
    private static String line(Optional<RegionReading> now, LocalDate today, Optional<RegionReading> then, LocalDate start) {
        String present = now.map(SymptomCards::words).orElse("Not reported on " + Dates.shown(today));
        return then.map(r -> present + "; " + score(r).map(String::valueOf).orElse("not asked") + " on " + Dates.shown(start)).orElse(present);
    }

    private static String words(RegionReading reading) {
        return reading.worst() != null ? "Worst this week " + reading.worst() + " of 10"
                : reading.now() != null ? "Now " + reading.now() + " of 10" : "How much was not asked";
    }

    /** The score a zone is ordered by: the worst of the week, else the pain now. */
    private static Optional<Integer> score(RegionReading reading) {
        return Optional.ofNullable(reading.worst() != null ? reading.worst() : reading.now());
    }
}
