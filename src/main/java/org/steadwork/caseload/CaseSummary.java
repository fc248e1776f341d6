package org.steadwork.caseload;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.steadwork.body.BodyRegion;
import org.steadwork.casefile.Attendance;
import org.steadwork.outcome.scoring.Instrument;

/** Sums up one case. The course of a measure is the one of the page Outcomes: a score of a day goes before the report of that day. */
final class CaseSummary {

    private static final String WORST_PAIN = "nprs_worst";

    private final CaseFacts facts;
    private final SummaryRule rule;
    /** The reports by day, each the worst pain of its zones; a report without symptoms has none. */
    private final NavigableMap<LocalDate, List<CaseFacts.Reported>> reports;
    private final List<BodyRegion> regions;

    private CaseSummary(CaseFacts facts, SummaryRule rule) {
        this.facts = facts;
        this.rule = rule;
        this.reports = facts.reports.stream().collect(Collectors.groupingBy(CaseFacts.Reported::on, TreeMap::new, Collectors.toList()));
        this.regions = regionsInOrder();
    }

    static CaseOutcome of(CaseFacts facts, SummaryRule rule) {
        return new CaseSummary(facts, rule).sum();
    }

    private CaseOutcome sum() {
        NavigableMap<LocalDate, Double> pain = course(WORST_PAIN);
        reports.forEach((day, zones) -> {
            Integer worst = worst(zones);
            if (worst != null) {
                pain.putIfAbsent(day, Double.valueOf(worst));
            }
        });
        LocalDate first = facts.visits.stream().filter(visit -> visit.attendance() == Attendance.ATTENDED).map(CaseFacts.Visited::on).findFirst().orElse(null);
        LocalDate contact = lastContact();
        WorkSummary work = WorkSummary.of(facts.statuses, contact, rule.sustainedDays());
        Measured measured = measured();
        ZonePain zones = ZonePain.of(reports, facts.linkedZones);
        return new CaseOutcome(facts.caseId, facts.patientId, facts.clinicianId, facts.employerId, facts.openedOn, facts.closedOn, facts.closeReason,
                regions.isEmpty() ? null : regions.get(0), regions.stream().mapToInt(region -> 1 << region.ordinal()).reduce(0, (a, b) -> a | b),
                facts.referredOn, first, contact, count(Attendance.ATTENDED), count(Attendance.MISSED) + count(Attendance.LATE_CANCELLED),
                pain.isEmpty() ? null : Integer.valueOf(pain.firstEntry().getValue().intValue()),
                pain.size() < 2 ? null : Integer.valueOf(pain.lastEntry().getValue().intValue()), measured.key, measured.region, measured.first, measured.last,
                work.offOn(), work.fullOn(), work.fullUntil(), work.daysOff(), work.first(), work.last(), screening(first), facts.assessed, findings(),
                zones.linkedFirst(), zones.linkedLast(), zones.unlinkedFirst(), zones.unlinkedLast());
    }

    /** The regions as the page Outcomes orders them: those of the first report first, in each report the one that hurts most before all. */
    private List<BodyRegion> regionsInOrder() {
        Set<BodyRegion> ordered = new LinkedHashSet<>();
        for (List<CaseFacts.Reported> zones : reports.values()) {
            Map<BodyRegion, Integer> worst = new TreeMap<>();
            for (CaseFacts.Reported zone : zones) {
                if (zone.zone() != null) {
                    worst.merge(rule.chart().zone(zone.zone()).region(), zone.worst() == null ? -1 : zone.worst(), Integer::max);
                }
            }
            worst.entrySet().stream().sorted(Map.Entry.<BodyRegion, Integer>comparingByValue(Comparator.reverseOrder()))
                    .map(Map.Entry::getKey).forEach(ordered::add);
        }
        return List.copyOf(ordered);
    }

    private static Integer worst(List<CaseFacts.Reported> zones) {
        if (zones.get(0).symptomFree()) {
            return 0;
        }
        return zones.stream().map(CaseFacts.Reported::worst).filter(rating -> rating != null).max(Integer::compare).orElse(null);
    }

    /** The scores of one instrument by day, of the version that was used last. */
    private NavigableMap<LocalDate, Double> course(String instrument) {
        NavigableMap<LocalDate, Double> course = new TreeMap<>();
        List<CaseFacts.Scored> scores = facts.scores.stream().filter(score -> score.instrument().equals(instrument)).toList();
        for (CaseFacts.Scored score : scores) {
            if (score.value() != null && score.version().equals(scores.get(scores.size() - 1).version())) {
                course.put(score.on(), score.value());
            }
        }
        return course;
    }

    private record Measured(String key, String region, Double first, Double last) {
    }

    /** The measure with two scores before one with one, that of the main region before others, else the first in order. */
    private Measured measured() {
        Measured best = new Measured(null, null, null, null);
        int bestRank = 0;
        for (Instrument instrument : rule.instruments()) {
            NavigableMap<LocalDate, Double> course = course(instrument.key());
            if (!course.isEmpty()) {
                String region = regions.stream().map(BodyRegion::key).filter(instrument::forRegion).findFirst().orElse(instrument.regions().get(0));
                boolean main = !regions.isEmpty() && instrument.forRegion(regions.get(0).key());
                int rank = 1 + (course.size() > 1 ? 2 : 0) + (main ? 1 : 0);
                if (rank > bestRank) {
                    bestRank = rank;
                    best = new Measured(instrument.key(), region, course.firstEntry().getValue(), course.size() > 1 ? course.lastEntry().getValue() : null);
                }
            }
        }
        return best;
    }

    private int count(Attendance attendance) {
        return (int) facts.visits.stream().filter(visit -> visit.attendance() == attendance).count();
    }

    private LocalDate lastContact() {
        List<LocalDate> days = new ArrayList<>(List.of(facts.openedOn));
        facts.visits.stream().filter(visit -> visit.attendance() == Attendance.ATTENDED).map(CaseFacts.Visited::on).forEach(days::add);
        reports.keySet().forEach(days::add);
        facts.scores.forEach(score -> days.add(score.on()));
        facts.statuses.forEach(status -> days.add(status.from()));
        return days.stream().max(Comparator.naturalOrder()).orElseThrow();
    }

    private CaseOutcome.Screening screening(LocalDate firstVisit) {
        List<CaseFacts.Screened> then = facts.screens.stream().filter(screen -> screen.on().equals(firstVisit)).toList();
        if (then.isEmpty()) {
            return CaseOutcome.Screening.NONE;
        }
        return then.stream().anyMatch(CaseFacts.Screened::complete) ? CaseOutcome.Screening.COMPLETE : CaseOutcome.Screening.OPEN;
    }

    private String findings() {
        Map<String, CaseFacts.Found> latest = new LinkedHashMap<>();
        facts.findings.forEach(found -> latest.put(found.criterion(), found));
        return latest.values().stream().map(found -> found.criterion() + (found.done() ? "+" : found.asked() ? "!" : "")).collect(Collectors.joining(" "));
    }
}
