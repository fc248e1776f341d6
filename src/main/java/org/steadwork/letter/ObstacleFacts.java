package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.steadwork.casefile.CaseFile;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.obstacle.Obstacle;
import org.steadwork.obstacle.ObstacleAnswer;
import org.steadwork.obstacle.ObstacleAnswers;
import org.steadwork.obstacle.Obstacles;

/** The psychosocial and work flags that are present, by name and colour; what was said about them is not given to any letter. */
@ApplicationScoped
class ObstacleFacts implements LetterFacts {

    @Inject
    ObstacleAnswers answers;

    @Inject
    Obstacles obstacles;

    @Override
    public List<LetterFact> of(CaseFile file) {
        List<Obstacle> present = answers.of(file.id()).stream().filter(ObstacleAnswer::present).map(answer -> obstacles.find(answer.obstacle()))
                .flatMap(Optional::stream).toList();
        return present.isEmpty() ? List.of() : List.of(new LetterFact(InformationCategory.PSYCHOSOCIAL_NOTES, "obstacles", present.stream()
                .map(obstacle -> obstacle.name() + " (" + colour(obstacle.kind()) + ")").collect(Collectors.joining("; ")) + ".", "obstacles"));
    }

    private static String colour(Obstacle.Kind kind) {
        return switch (kind) {
            case PERSON -> "yellow";
            case WORK -> "blue";
            case SETTING -> "black";
            case SPECIALIST -> "orange";
        };
    }
}
