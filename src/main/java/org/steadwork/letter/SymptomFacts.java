package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.steadwork.body.BodyChart;
import org.steadwork.body.SymptomKind;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.PainScale;
import org.steadwork.casefile.RegionReading;
import org.steadwork.casefile.SymptomPattern;
import org.steadwork.casefile.SymptomReport;
import org.steadwork.casefile.SymptomReports;
import org.steadwork.kernel.Answer;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.web.Dates;

/** What the latest symptom report says: where and how, and apart from it the numbers. What was not asked is said to be not established. */
@ApplicationScoped
class SymptomFacts implements LetterFacts {

    @Inject
    SymptomReports reports;

    @Inject
    BodyChart chart;

    @Override
    public List<LetterFact> of(CaseFile file) {
        return reports.latest(file.id()).map(this::facts).orElse(List.of());
    }

    private List<LetterFact> facts(SymptomReport report) {
        String because = "symptoms of " + Dates.shown(report.reportedOn());
        List<LetterFact> facts = new ArrayList<>();
        String day = Dates.inLetter(report.reportedOn());
        if (report.symptomFree()) {
            facts.add(new LetterFact(InformationCategory.SYMPTOMS, "symptoms", "Reported no symptoms on " + day + ".", because));
            return facts;
        }
        String places = report.readings().stream().map(this::place).collect(Collectors.joining("; "));
        facts.add(new LetterFact(InformationCategory.SYMPTOMS, "symptoms", "Reported on " + day + ": " + places + "." + pattern(report.pattern()), because));
        report.readings().stream().filter(reading -> Stream.of(PainScale.values()).anyMatch(scale -> scale.of(reading) != null))
                .map(reading -> new LetterFact(InformationCategory.PAIN_SCORES, "pain", numbers(reading, day), because)).forEach(facts::add);
        return facts;
    }

    private String place(RegionReading reading) {
        String kinds = reading.kinds().stream().map(SymptomKind::label).collect(Collectors.joining(", "));
        return chart.zone(reading.zone()).label().toLowerCase(Locale.ROOT) + (kinds.isEmpty() ? "" : " (" + kinds + ")")
                + (reading.since() == null ? "" : ", since " + reading.since());
    }

    private String numbers(RegionReading reading, String day) {
        return chart.zone(reading.zone()).label() + ", " + day + ": " + Stream.of(PainScale.values()).filter(scale -> scale.of(reading) != null)
                .map(scale -> scale.spoken() + " " + scale.of(reading) + "/10").collect(Collectors.joining(", ")) + ".";
    }

    private static String pattern(SymptomPattern pattern) {
        StringBuilder words = new StringBuilder();
        if (pattern.aggravating() != null) {
            words.append(" Reported to be worse with: ").append(pattern.aggravating()).append('.');
        }
        if (pattern.easing() != null) {
            words.append(" Reported to ease with: ").append(pattern.easing()).append('.');
        }
        words.append(" Woken at night: ").append(said(pattern.nightWaking())).append(". Worse on coughing or sneezing: ")
                .append(said(pattern.coughOrSneeze())).append('.');
        return words.toString();
    }

    private static String said(Answer answer) {
        return answer.open() ? "not established" : answer.label();
    }
}
