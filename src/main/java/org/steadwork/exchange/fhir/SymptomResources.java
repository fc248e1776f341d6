package org.steadwork.exchange.fhir;

import java.util.Locale;
import java.util.stream.Collectors;
import org.hl7.fhir.r4.model.BooleanType;
import org.hl7.fhir.r4.model.CodeableConcept;
import org.hl7.fhir.r4.model.Observation;
import org.hl7.fhir.r4.model.Observation.ObservationComponentComponent;
import org.hl7.fhir.r4.model.StringType;
import org.steadwork.body.BodyChart;
import org.steadwork.body.SymptomKind;
import org.steadwork.casefile.CourseOverDay;
import org.steadwork.casefile.PainScale;
import org.steadwork.casefile.RegionReading;
import org.steadwork.casefile.SymptomPattern;
import org.steadwork.casefile.SymptomReport;
import org.steadwork.kernel.Answer;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.web.Dates;

/** What the patient reports: each rating of a zone as an Observation, the kinds and the pattern of symptoms as one each. */
final class SymptomResources {

    private static final String CATEGORY = "Reported by the patient";

    private final Subject about;
    private final BodyChart chart;

    SymptomResources(Subject about, BodyChart chart) {
        this.about = about;
        this.chart = chart;
    }

    void add(CaseRecord record) {
        for (SymptomReport report : record.reports()) {
            report.readings().forEach(reading -> ratings(report, reading));
            if (about.has(InformationCategory.SYMPTOMS)) {
                report.readings().forEach(reading -> kinds(report, reading));
                pattern(report);
            }
        }
    }

    private void ratings(SymptomReport report, RegionReading reading) {
        for (PainScale scale : PainScale.values()) {
            Integer rated = scale.of(reading);
            boolean work = scale == PainScale.LIMITS_WORK;
            // what was not asked is not there: it is not zero
            if (rated == null || !about.has(work ? InformationCategory.FUNCTIONAL_CAPACITY : InformationCategory.PAIN_SCORES)) {
                continue;
            }
            String words = scale.spoken().substring(0, 1).toUpperCase(Locale.ROOT) + scale.spoken().substring(1) + ", 0 to 10";
            CodeableConcept code = scale == PainScale.NOW ? Codes.painNow(words) : Codes.words(words);
            Observation observation = about.observation(code, CATEGORY, report.reportedOn()).setValue(Codes.amount(rated, ""));
            place(observation, reading);
            about.draft().add("rating " + report.id() + " " + reading.zone() + " " + scale.key(), observation,
                    words + ": " + rated + where(reading) + ", " + Dates.shown(report.reportedOn()));
        }
    }

    private void place(Observation observation, RegionReading reading) {
        if (about.has(InformationCategory.SYMPTOMS)) {
            observation.setBodySite(Codes.words(chart.zone(reading.zone()).label()));
        }
    }

    private String where(RegionReading reading) {
        return about.has(InformationCategory.SYMPTOMS) ? ", " + chart.zone(reading.zone()).label() : "";
    }

    private void kinds(SymptomReport report, RegionReading reading) {
        String kinds = reading.kinds().stream().map(SymptomKind::label).collect(Collectors.joining(", "));
        Observation observation = about.observation(Codes.words("Symptom"), CATEGORY, report.reportedOn());
        place(observation, reading);
        if (kinds.isEmpty()) {
            observation.setDataAbsentReason(Codes.absent("unknown", "The kind of symptom was not noted"));
        } else {
            observation.setValue(Codes.words(kinds));
        }
        text(observation, "Since when", reading.since());
        text(observation, "How it behaves", reading.pattern());
        about.draft().add("symptom " + report.id() + " " + reading.zone(), observation, "Symptom: " + (kinds.isEmpty() ? "kind not noted" : kinds) + where(reading) + ", "
                + Dates.shown(report.reportedOn()));
    }

    private void pattern(SymptomReport report) {
        SymptomPattern pattern = report.pattern();
        Observation observation = about.observation(Codes.words("Pattern of the symptoms"), CATEGORY, report.reportedOn());
        text(observation, "Symptoms", report.symptomFree() ? "The patient says that there are none" : "As reported on this day");
        course(observation, pattern.course());
        answer(observation, "Woken at night", pattern.nightWaking());
        answer(observation, "Worse with cough or sneeze", pattern.coughOrSneeze());
        text(observation, "Worse with", pattern.aggravating());
        text(observation, "Eased by", pattern.easing());
        text(observation, "In the patient\u2019s own words", pattern.ownWords());
        about.draft().add("pattern " + report.id(), observation, report.symptomFree() ? "No symptoms, " + Dates.shown(report.reportedOn())
                : "Pattern of the symptoms, " + Dates.shown(report.reportedOn()));
    }

    private static void course(Observation observation, CourseOverDay course) {
        ObservationComponentComponent component = observation.addComponent().setCode(Codes.words("Course over the day"));
        switch (course) {
            case UNKNOWN -> component.setDataAbsentReason(absent(Answer.UNKNOWN, false));
            case NOT_ASKED -> component.setDataAbsentReason(absent(Answer.NOT_ASKED, false));
            default -> component.setValue(new StringType(course.label()));
        }
    }

    private static void text(Observation observation, String what, String words) {
        if (words != null) {
            observation.addComponent().setCode(Codes.words(what)).setValue(new StringType(words));
        }
    }

    private static void answer(Observation observation, String what, Answer answer) {
        ObservationComponentComponent component = observation.addComponent().setCode(Codes.words(what));
        if (answer == Answer.YES || answer == Answer.NO) {
            component.setValue(new BooleanType(answer == Answer.YES));
        } else {
            component.setDataAbsentReason(absent(answer, false));
        }
    }

    /** An answer that is neither yes nor no stays what it is. */
    static CodeableConcept absent(Answer answer, boolean declined) {
        return declined ? Codes.absent("asked-declined", "asked; would not say") : answer == Answer.UNKNOWN ? Codes.absent("asked-unknown", "asked; not known")
                : Codes.absent("not-asked", "not asked");
    }
}
