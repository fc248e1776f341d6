package org.steadwork.ownpage;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.CaseFile;

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

    @Override
    public List<Entry> entries(LocalDate today) {
        List<Entry> entries = new ArrayList<>();
        reports.waiting().forEach(report -> entries.add(ofReport(report)));
        Map<Long, SessionTick> worse = new LinkedHashMap<>();
        ticks.alarmsOfOpenCases().forEach(tick -> worse.putIfAbsent(tick.prescription().caseFile().id(), tick));
        worse.values().forEach(tick -> entries.add(entry(tick.prescription().caseFile(), Urgency.TODAY, "Patient reported", tick.doneOn(),
                "Pain rose from " + tick.painBefore() + " to " + tick.painAfter() + " with an exercise, more than measurement error.", "Look at the sessions").marked("near")));
        links.locked().forEach(link -> entries.add(entry(link.caseFile(), Urgency.TODAY, "Locked", LocalDate.ofInstant(link.lockedAt(), clock.getZone()),
                "The own page was locked after " + OwnLink.TRIES + " wrong dates of birth.", "Make a new link")));
        return entries;
    }

    private Entry ofReport(OwnReport report) {
        LocalDate since = report.reportedOn();
        if (report.atOnce()) {
            return entry(report.caseFile(), Urgency.NOW, "Patient reported", since, "Ticked at home, to call the emergency number for: " + report.warnings().get(0) + ".",
                    "Phone the patient").marked("out");
        }
        if (!report.warnings().isEmpty()) {
            return entry(report.caseFile(), Urgency.NOW, "Patient reported", since, "Ticked at home, to phone about the same day: " + report.warnings().get(0) + ".",
                    "Phone the patient").marked("out");
        }
        if (report.painUp()) {
            return entry(report.caseFile(), Urgency.TODAY, "Patient reported", since, "Pain is up by more than measurement error.", "Look at the report").marked("near");
        }
        return entry(report.caseFile(), Urgency.TODAY, "Patient reported", since, "A report from home, not looked at yet.", "Look at the report");
    }

    private static Entry entry(CaseFile file, Urgency urgency, String label, LocalDate since, String reason, String action) {
        return new Entry(file.id(), file.patient().name(), urgency, label, since, reason, action, "/cases/" + file.id() + "/own-page");
    }
}
