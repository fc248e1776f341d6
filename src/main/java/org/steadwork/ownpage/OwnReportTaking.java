package org.steadwork.ownpage;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
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
import org.steadwork.outcome.Instruments;
import org.steadwork.outcome.OwnActivity;
import org.steadwork.outcome.OwnActivityRatings;
import org.steadwork.outcome.Scores;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.web.Dates;

/** Takes a patient's report over into the case, as the clinician decides. */
@ApplicationScoped
class OwnReportTaking {

    @Inject
    SymptomReports symptoms;

    @Inject
    OwnActivityRatings activities;

    @Inject
    Instruments instruments;

    @Inject
    Scores scores;

    @Inject
    BodyChart chart;

    @Inject
    CurrentAccount account;

    @Inject
    Clock clock;

    /** What the case has of that day already, and what was answered to another version: numbers of a day stand once, and are not written over from home. */
    List<String> inTheWay(OwnReport report) {
        long caseId = report.caseFile().id();
        String ofDay = " of " + Dates.shown(report.reportedOn());
        List<String> stand = new ArrayList<>();
        if (painLines(report).findAny().isPresent() && symptoms.of(caseId).stream().anyMatch(other -> other.reportedOn().equals(report.reportedOn()))) {
            stand.add("a symptom report" + ofDay);
        }
        if (report.lines().stream().anyMatch(line -> line.rating() != null) && activities.byDay(caseId).containsKey(report.reportedOn())) {
            stand.add("ratings of the own activities" + ofDay);
        }
        for (OwnReportAnswer answer : report.answers()) {
            Optional<Instrument> instrument = instruments.find(answer.instrument());
            if (instrument.filter(known -> known.version().equals(answer.instrumentVersion())).isEmpty()) {
                stand.add("another version of " + instrument.map(Instrument::label).orElse(answer.instrument()));
            } else if (scores.on(caseId, answer.instrument(), report.reportedOn()).isPresent()) {
                stand.add("a score of " + instrument.get().label() + ofDay);
            }
        }
        return stand;
    }

    /** Makes a symptom report of that day with the numbers given, rates the own activities, and scores the questionnaires. */
    void take(OwnReport report) {
        CaseFile file = report.caseFile();
        String by = "Patient, looked at by " + account.displayName();
        report.answers().forEach(answer -> scores.record(file, instruments.find(answer.instrument()).orElseThrow(), report.reportedOn(), answer.answers(), by));
        if (painLines(report).findAny().isPresent()) {
            Map<String, RegionReading> before = symptoms.latest(file.id()).map(SymptomReport::readings).orElse(List.of()).stream()
                    .collect(Collectors.toMap(RegionReading::zone, Function.identity()));
            List<RegionReading> readings = painLines(report).map(line -> reading(line, before.get(line.about()))).toList();
            SymptomReport taken = new SymptomReport(file, report.reportedOn(), LocalDate.now(clock));
            SymptomPattern nothing = SymptomPattern.notAsked();
            taken.report(new SymptomPattern(nothing.course(), nothing.nightWaking(), nothing.coughOrSneeze(), null, null, report.ownWords()), readings, false);
            taken.savedBy(by, Instant.now(clock));
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
        report.answers().forEach(answer -> words.add(answered(answer)));
        return words;
    }

    private String answered(OwnReportAnswer answer) {
        Optional<Instrument> known = instruments.find(answer.instrument()).filter(instrument -> instrument.version().equals(answer.instrumentVersion()));
        String given = answer.answers().stream().map(one -> said(one).replace('-', '−')).collect(Collectors.joining(", "));
        return known.map(instrument -> instrument.label() + " (" + instrument.version() + "): " + given + band(instrument, answer)).orElse(answer.instrument() + ": " + given);
    }

    private static String band(Instrument instrument, OwnReportAnswer answer) {
        OptionalDouble value = instrument.score(answer.answers()).value();
        return value.isEmpty() ? "" : instrument.band(value.getAsDouble()).map(band -> ", " + band.label()).orElse("");
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
