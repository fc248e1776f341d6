package org.steadwork.ownpage;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.steadwork.account.OpaqueToken;
import org.steadwork.body.BodyChart;
import org.steadwork.body.Zone;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.RegionReading;
import org.steadwork.casefile.SymptomReport;
import org.steadwork.casefile.SymptomReports;
import org.steadwork.outcome.Instruments;
import org.steadwork.outcome.OwnActivityRatings;
import org.steadwork.outcome.PhoneForms;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.redflag.SafetyNet;
import org.steadwork.redflag.SafetyNets;
import org.steadwork.web.Form;

/** Puts together what a report before a visit asks. */
@ApplicationScoped
class OwnReportViews {

    @Inject
    OwnReports reports;

    @Inject
    SymptomReports symptoms;

    @Inject
    OwnActivityRatings activities;

    @Inject
    PhoneForms phoneForms;

    @Inject
    Instruments instruments;

    @Inject
    SafetyNets safetyNets;

    @Inject
    BodyChart chart;

    @Inject
    Clock clock;

    OwnReportView of(CaseFile file, Form form) {
        LocalDate today = LocalDate.now(clock);
        List<OwnReportView.Asked> zones = symptoms.latest(file.id()).map(SymptomReport::readings).orElse(List.of()).stream().map(RegionReading::zone)
                .map(key -> new OwnReportView.Asked(key, chart.find(key).map(Zone::label).orElse(key))).toList();
        List<OwnReportView.Asked> named = activities.activities(file.id()).stream().map(a -> new OwnReportView.Asked(String.valueOf(a.id()), a.words())).toList();
        SafetyNet.Warnings warnings = safetyNets.of(file.id());
        Set<String> waiting = reports.ofCase(file.id()).stream().filter(report -> report.reviewedAt() == null).flatMap(report -> report.answers().stream())
                .map(OwnReportAnswer::instrument).collect(Collectors.toSet());
        List<Instrument> due = phoneForms.due(file.id(), asOf(file, today));
        // what was filled in is shown and taken although it is not due any more: it was due when the page was loaded
        List<OwnReportView.Questionnaire> asked = phoneForms.all().stream()
                .filter(instrument -> filledIn(instrument, form) || due.contains(instrument) && !waiting.contains(instrument.key()))
                .map(instrument -> OwnReportView.Questionnaire.of(instrument, file.openedOn())).toList();
        List<String> told = waiting.stream().map(instruments::find).flatMap(one -> one.flatMap(Instrument::onPhone).stream()).map(words -> words.heading()).sorted().toList();
        return new OwnReportView(file, today, form, form.has("sending") ? form.value("sending") : OpaqueToken.fresh(), zones, named, asked, told,
                signs("now", warnings.now()), signs("today", warnings.today()));
    }

    /** What will be due at the next review is asked before it. */
    private static LocalDate asOf(CaseFile file, LocalDate today) {
        return file.nextReviewOn() == null || file.nextReviewOn().isBefore(today) ? today : file.nextReviewOn();
    }

    private static boolean filledIn(Instrument instrument, Form form) {
        return instrument.items().stream().anyMatch(item -> form.has(OwnReportView.Questionnaire.field(instrument, item)));
    }

    private static List<OwnReportView.Sign> signs(String prefix, List<String> words) {
        return IntStream.range(0, words.size()).mapToObj(i -> new OwnReportView.Sign(prefix + i, words.get(i))).toList();
    }
}
