package org.steadwork.obstacle;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CasePart;

/** How many obstacles are present, beside every page of the case; a possible mental illness is an open caution. */
@ApplicationScoped
class ObstaclePart implements CasePart {

    @Inject
    ObstacleAnswers answers;

    @Inject
    Obstacles obstacles;

    @Override
    public List<Fact> facts(CaseFile file) {
        List<ObstacleAnswer> given = answers.of(file.id());
        long present = given.stream().filter(ObstacleAnswer::present).count();
        return given.isEmpty() ? List.of() : List.of(new Fact(61, "Obstacles", present == 0 ? "none found" : present + " present", null, null));
    }

    @Override
    public List<Caution> cautions(CaseFile file) {
        return answers.of(file.id()).stream().filter(ObstacleAnswer::present).flatMap(answer -> obstacles.find(answer.obstacle()).stream())
                .filter(obstacle -> obstacle.kind() == Obstacle.Kind.SPECIALIST).findFirst()
                .map(obstacle -> new Caution(false, obstacle.name() + ": " + obstacle.plan(), ObstacleView.path(file.id()))).map(List::of).orElse(List.of());
    }
}
