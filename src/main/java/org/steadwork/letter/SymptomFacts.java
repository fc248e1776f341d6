package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.DateTimeException;
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
        String numbers = report.readings().stream().map(this::numbers).filter(words -> !words.isEmpty()).collect(Collectors.joining("; "));
        if (!numbers.isEmpty()) {
            facts.add(new LetterFact(InformationCategory.PAIN_SCORES, "pain", "Out of 10, on " + day + "; average and worst are those of the last 7 days: "
                    + numbers + ".", because));
        }
        return facts;
    }

    private String place(RegionReading reading) {
        String kinds = reading.kinds().stream().map(SymptomKind::label).collect(Collectors.joining(", "));
        return chart.zone(reading.zone()).label().toLowerCase(Locale.ROOT) + (kinds.isEmpty() ? "" : " (" + kinds + ")")
                + (reading.since() == null ? "" : ", since " + since(reading.since()));
    }

    /** Writes a day as letters do; whatever else was reported, such as a season, stays as it was said. */
    private static String since(String reported) {
        try {
            return Dates.inLetter(Dates.parse(reported));
        } catch (DateTimeException e) {
            return reported;
        }
    }

    private String numbers(RegionReading reading) {
        String numbers = Stream.of(PainScale.values()).filter(scale -> scale.of(reading) != null)
                .map(scale -> scale.label().toLowerCase(Locale.ROOT) + "\u00a0" + scale.of(reading)).collect(Collectors.joining(", "));
        return numbers.isEmpty() ? "" : chart.zone(reading.zone()).label().toLowerCase(Locale.ROOT) + " " + numbers;
    }

    private static String pattern(SymptomPattern pattern) {
        StringBuilder words = new StringBuilder();
        if (pattern.aggravating() != null) {
            words.append(" Reported to be worse with: ").append(pattern.aggravating()).append('.');
        }
        if (pattern.easing() != null) {
            words.append(" Reported to ease with: ").append(pattern.easing()).append('.');
        }
        if (pattern.nightWaking().open() && pattern.coughOrSneeze().open()) {
            return words.append(" Not established: waking at night, worse on coughing or sneezing.").toString();
        }
        words.append(" Woken at night: ").append(said(pattern.nightWaking())).append(". Worse on coughing or sneezing: ")
                .append(said(pattern.coughOrSneeze())).append('.');
        return words.toString();
    }

    private static String said(Answer answer) {
        return answer.open() ? "not established" : answer.label();
    }
}
