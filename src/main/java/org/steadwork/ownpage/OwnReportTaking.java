package org.steadwork.ownpage;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.steadwork.account.CurrentAccount;
import org.steadwork.body.BodyChart;
import org.steadwork.body.Zone;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.RegionReading;
import org.steadwork.casefile.SymptomPattern;
import org.steadwork.casefile.SymptomReport;
import org.steadwork.casefile.SymptomReports;
import org.steadwork.outcome.OwnActivity;
import org.steadwork.outcome.OwnActivityRatings;

/** Takes a patient's report over into the case, as the clinician decides. */
@ApplicationScoped
class OwnReportTaking {

    @Inject
    SymptomReports symptoms;

    @Inject
    OwnActivityRatings activities;

    @Inject
    BodyChart chart;

    @Inject
    CurrentAccount account;

    @Inject
    Clock clock;

    /** True when the case has a symptom report of that day already: numbers of a day stand once. */
    boolean dayIsTaken(OwnReport report) {
        return painLines(report).findAny().isPresent() && symptoms.of(report.caseFile().id()).stream().anyMatch(other -> other.reportedOn().equals(report.reportedOn()));
    }

    /** Makes a symptom report of that day with the numbers given, and rates the own activities. */
    void take(OwnReport report) {
        CaseFile file = report.caseFile();
        if (painLines(report).findAny().isPresent()) {
            Map<String, RegionReading> before = symptoms.latest(file.id()).map(SymptomReport::readings).orElse(List.of()).stream()
                    .collect(Collectors.toMap(RegionReading::zone, Function.identity()));
            List<RegionReading> readings = painLines(report).map(line -> reading(line, before.get(line.about()))).toList();
            SymptomReport taken = new SymptomReport(file, report.reportedOn(), LocalDate.now(clock));
            SymptomPattern nothing = SymptomPattern.notAsked();
            taken.report(new SymptomPattern(nothing.course(), nothing.nightWaking(), nothing.coughOrSneeze(), null, null, report.ownWords()), readings, false);
            taken.savedBy("Patient, looked at by " + account.displayName(), Instant.now(clock));
            symptoms.persist(taken);
        }
        Map<Long, OwnActivity> named = activities.activities(file.id()).stream().collect(Collectors.toMap(OwnActivity::id, Function.identity()));
        for (OwnReportLine line : report.lines()) {
            OwnActivity activity = line.isActivity() ? named.get(Long.valueOf(line.about())) : null;
            if (activity != null && line.rating() != null) {
                activities.rate(activity, report.reportedOn(), line.rating());
            }
        }
    }

    /** The lines of a report in words. */
    List<String> words(OwnReport report, Map<Long, OwnActivity> named) {
        List<String> words = new ArrayList<>();
        for (OwnReportLine line : report.lines()) {
            if (line.isActivity()) {
                OwnActivity activity = named.get(Long.valueOf(line.about()));
                if (line.rating() != null) {
                    words.add("“" + (activity == null ? "an activity no longer named" : activity.words()) + "”: " + line.rating() + " of 10");
                }
            } else {
                words.add(chart.find(line.about()).map(Zone::label).orElse(line.about()) + ": now " + said(line.now()) + ", worst " + said(line.worst()) + ", usual " + said(line.average()));
            }
        }
        return words;
    }

    private static Stream<OwnReportLine> painLines(OwnReport report) {
        return report.lines().stream().filter(line -> !line.isActivity() && (line.now() != null || line.worst() != null || line.average() != null));
    }

    private static RegionReading reading(OwnReportLine line, RegionReading before) {
        return new RegionReading(line.about(), line.now(), line.worst(), line.average(), null, null, before == null ? Set.of() : before.kinds(),
                before == null ? null : before.since(), before == null ? null : before.pattern());
    }

    private static String said(Integer number) {
        return number == null ? "not said" : String.valueOf(number);
    }
}
