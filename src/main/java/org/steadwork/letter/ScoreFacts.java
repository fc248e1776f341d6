package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.steadwork.casefile.CaseFile;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.outcome.MeasureCourse;
import org.steadwork.outcome.Measures;
import org.steadwork.outcome.Shown;
import org.steadwork.outcome.scoring.ChangeVerdict;
import org.steadwork.web.Dates;

/** First and latest score of each measure, with the verdict on the change and both amounts it rests on. */
@ApplicationScoped
class ScoreFacts implements LetterFacts {

    /** Measures that are a number for pain and nothing else have keys that begin like this. */
    private static final String PAIN = "nprs";

    @Inject
    Measures measures;

    @Override
    public List<LetterFact> of(CaseFile file) {
        List<LetterFact> facts = new ArrayList<>();
        for (MeasureCourse course : measures.of(file.id())) {
            boolean pain = course.instrument().key().startsWith(PAIN);
            // a single number for pain stands with the report of the symptoms already
            if (course.points().size() > (pain ? 1 : 0)) {
                // a screen asks about mood and outlook, so its score is as private as notes about them
                InformationCategory category = pain ? InformationCategory.PAIN_SCORES
                        : course.instrument().outcome() ? InformationCategory.OUTCOME_SCORES : InformationCategory.PSYCHOSOCIAL_NOTES;
                facts.add(new LetterFact(category, "scores", words(course), "outcomes"));
            }
        }
        return facts;
    }

    private static String words(MeasureCourse course) {
        MeasureCourse.Point first = course.first().orElseThrow();
        MeasureCourse.Point latest = course.latest().orElseThrow();
        boolean variant = course.instrument().key().startsWith(PAIN);
        String words = (variant ? course.instrument().label() : course.instrument().name()) + ": " + point(course, first);
        if (!first.on().equals(latest.on())) {
            words += ", " + point(course, latest);
        }
        return "- " + words + "." + course.sinceFirst().map(verdict -> " " + verdict(course, verdict)).orElse("");
    }

    /** Says the verdict and both amounts it rests on, for a reader who knows what they mean. */
    private static String verdict(MeasureCourse course, ChangeVerdict verdict) {
        String words = verdict.kind().words();
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + " (measurement error " + amount(verdict.error())
                + ", change that matters " + amount(verdict.importance()) + ")."
                + Stream.of(course.comparison(), verdict.caution()).filter(note -> !note.isBlank()).map(note -> " " + note).collect(Collectors.joining());
    }

    private static String amount(OptionalDouble amount) {
        return amount.isPresent() ? Shown.amount(amount.getAsDouble()) : "not known";
    }

    private static String point(MeasureCourse course, MeasureCourse.Point point) {
        return Shown.value(course.instrument(), point.value()) + (point.estimated() ? " (estimated)" : "") + " on " + Dates.inLetter(point.on());
    }
}
