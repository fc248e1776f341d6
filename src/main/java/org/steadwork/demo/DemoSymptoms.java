package org.steadwork.demo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.stream.Collectors;
import org.steadwork.body.SymptomKind;
import org.steadwork.casefile.CourseOverDay;
import org.steadwork.casefile.RegionReading;
import org.steadwork.casefile.SymptomPattern;
import org.steadwork.casefile.SymptomReport;
import org.steadwork.casefile.SymptomReports;
import org.steadwork.content.Entry;
import org.steadwork.kernel.Answer;

/** Where it hurts, at each visit. */
@ApplicationScoped
class DemoSymptoms implements DemoVisitPart {

    @Inject
    SymptomReports reports;

    @Override
    public int order() {
        return 10;
    }

    @Override
    public void load(DemoVisit visit) {
        Entry told = visit.entry().entry("symptoms").orElse(null);
        if (told == null) {
            return;
        }
        SymptomReport report = new SymptomReport(visit.file(), visit.day(), visit.day());
        report.moveTo(visit.day(), visit.visit(), visit.day());
        SymptomPattern pattern = new SymptomPattern(CourseOverDay.NOT_ASKED, Answer.NOT_ASKED, Answer.NOT_ASKED, null, null,
                told.optionalText("pattern").orElse(null));
        List<Entry> zones = told.entries("zones");
        report.report(pattern, zones.stream().map(zone -> reading(told, zone)).toList(), zones.isEmpty());
        report.savedBy(visit.clinician().displayName(), visit.moment());
        reports.persist(report);
    }

    private static RegionReading reading(Entry told, Entry zone) {
        return new RegionReading(zone.text("zone"), score(zone, "now"), score(zone, "worst"), score(zone, "average"), score(zone, "at_work"),
                null, zone.texts("kinds").stream().map(SymptomKind::of).collect(Collectors.toSet()), told.optionalText("since").orElse(null),
                zone.optionalText("note").orElse(null));
    }

    private static Integer score(Entry zone, String key) {
        return zone.has(key) ? zone.integer(key) : null;
    }
}
