package org.steadwork.letter;

import io.quarkus.qute.RawString;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Optional;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.MapMeasure;
import org.steadwork.casefile.MapPart;
import org.steadwork.drawing.TrendChart;
import org.steadwork.drawing.TrendSize;
import org.steadwork.exercise.ExerciseCatalogue;
import org.steadwork.exercise.ExerciseFigures;
import org.steadwork.exercise.PrescribedSide;
import org.steadwork.exercise.Prescription;
import org.steadwork.exercise.Prescriptions;
import org.steadwork.letter.PrintedLetter.Drawing;
import org.steadwork.workplace.DeskPictures;

/** Draws what the lines of a letter's section name: the trend of a measure, the figure of an exercise, the proposed desk. */
@ApplicationScoped
class LetterDrawings {

    @Inject
    @Any
    Instance<MapPart> parts;

    @Inject
    Prescriptions prescriptions;

    @Inject
    ExerciseCatalogue catalogue;

    @Inject
    ExerciseFigures figures;

    @Inject
    DeskPictures desks;

    /** Draws a section's text, line by line; a line that names nothing keeps its words and has no drawing. */
    List<Drawing> of(SectionKind section, String text, CaseFile file) {
        List<String> lines = text.lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
        return switch (section.drawing().orElseThrow()) {
            case TREND -> trends(lines, file);
            case EXERCISES -> exercises(lines, file);
            case DESK -> List.of(new Drawing(desks.svg(file.id()).map(RawString::new).orElse(null), false, lines));
        };
    }

    /** Returns the measures of a case that have a trend to draw, the main one first. */
    List<MapMeasure> measures(CaseFile file) {
        return parts.stream().flatMap(part -> part.measures(file).stream()).filter(measure -> measure.trend().scored().size() > 1)
                .sorted((one, other) -> Boolean.compare(other.main(), one.main())).toList();
    }

    // changes of the plan name work status and exercises, which the letter may not be allowed to say
    private List<Drawing> trends(List<String> lines, CaseFile file) {
        List<MapMeasure> measures = measures(file);
        return lines.stream().map(line -> measures.stream().filter(measure -> measure.name().equals(line)).findFirst()
                .map(measure -> new Drawing(new RawString(TrendChart.draw(measure.trend().withoutMarks(), TrendSize.MIDDLE)), false,
                        List.of(measure.name() + ". " + measure.words() + ".")))
                .orElseGet(() -> new Drawing(null, false, List.of(line)))).toList();
    }

    private List<Drawing> exercises(List<String> lines, CaseFile file) {
        List<Prescription> given = prescriptions.of(file.id()).stream().filter(Prescription::current).toList();
        return lines.stream().map(line -> {
            String plain = line.startsWith("- ") ? line.substring(2) : line;
            int end = plain.indexOf(": ");
            List<String> words = end < 0 ? List.of(plain) : List.of(plain.substring(0, end), plain.substring(end + 2));
            return new Drawing(given.stream().filter(one -> catalogue.find(one.exerciseKey()).filter(exercise -> plain.startsWith(exercise.name())).isPresent())
                    .findFirst().flatMap(this::figure).map(RawString::new).orElse(null), true, words);
        }).toList();
    }

    private Optional<String> figure(Prescription given) {
        String side = given.side() == PrescribedSide.LEFT ? "left" : given.side() == PrescribedSide.RIGHT ? "right" : "";
        return figures.svg(given.exerciseKey(), side, given.dose().hasHold() ? given.dose().hold() : null);
    }
}
