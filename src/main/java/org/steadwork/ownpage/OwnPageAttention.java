package org.steadwork.ownpage;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.AttentionRules;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseScope;

/** Tells Today what came through the patients' own pages and which of them are locked. */
@ApplicationScoped
class OwnPageAttention implements Attention {

    @Inject
    OwnReports reports;

    @Inject
    SessionTicks ticks;

    @Inject
    OwnLinks links;

    @Inject
    Clock clock;

    @Inject
    AttentionRules rules;

    @Override
    public Set<String> rules() {
        return Set.of("own_report_emergency", "own_report_warning", "own_report_pain", "own_report_worse", "own_report", "own_session_pain", "own_page_locked");
    }

    @Override
    public List<Entry> entries(LocalDate today, CaseScope scope) {
        List<Entry> entries = new ArrayList<>();
        reports.waiting(scope).forEach(report -> entries.add(ofReport(report)));
        Map<Long, SessionTick> worse = new LinkedHashMap<>();
        ticks.alarms(scope).forEach(tick -> worse.putIfAbsent(tick.prescription().caseFile().id(), tick));
        worse.values().forEach(tick -> entries.add(entry("own_session_pain", tick.prescription().caseFile(), tick.doneOn().toString(), tick.doneOn(),
                Map.of("before", String.valueOf(tick.painBefore()), "after", String.valueOf(tick.painAfter())))));
        links.locked(scope).forEach(link -> entries.add(entry("own_page_locked", link.caseFile(), String.valueOf(link.id()),
                LocalDate.ofInstant(link.lockedAt(), clock.getZone()), Map.of("tries", String.valueOf(OwnLink.TRIES)))));
        return entries;
    }

    private Entry ofReport(OwnReport report) {
        return entry(rule(report), report.caseFile(), String.valueOf(report.id()), report.reportedOn(), facts(report));
    }

    private static String rule(OwnReport report) {
        if (!report.warnings().isEmpty()) {
            return report.atOnce() ? "own_report_emergency" : "own_report_warning";
        }
        return report.painUp() ? "own_report_pain" : report.worse().isEmpty() ? "own_report" : "own_report_worse";
    }

    private static Map<String, String> facts(OwnReport report) {
        if (!report.warnings().isEmpty()) {
            return Map.of("warning", report.warnings().get(0));
        }
        return report.worse().isEmpty() || report.painUp() ? Map.of() : Map.of("worse", String.join("; ", report.worse()));
    }

    private Entry entry(String rule, CaseFile file, String subject, LocalDate since, Map<String, String> facts) {
        return rules.rule(rule).entry(file, subject, since, "/cases/" + file.id() + "/own-page", facts);
    }
}
