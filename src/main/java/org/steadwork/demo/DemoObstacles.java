package org.steadwork.demo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import org.steadwork.content.Entry;
import org.steadwork.kernel.Answer;
import org.steadwork.obstacle.ObstacleAnswer;
import org.steadwork.obstacle.ObstacleAnswers;
import org.steadwork.obstacle.Obstacles;

/** The psychosocial and work flags found at the first visit; those not named were not asked. */
@ApplicationScoped
class DemoObstacles implements DemoVisitPart {

    @Inject
    Obstacles obstacles;

    @Inject
    ObstacleAnswers answers;

    @Override
    public int order() {
        return 55;
    }

    @Override
    public void load(DemoVisit visit) {
        if (visit.visit().number() == 1) {
            visit.described().entry("flags").ifPresent(flags -> flags.keys().forEach(key -> keep(visit, flags, key)));
        }
    }

    private void keep(DemoVisit visit, Entry flags, String key) {
        obstacles.find(key).orElseThrow(() -> flags.problem("no such flag: " + key));
        Answer answer = switch (flags.text(key)) {
            case "present" -> Answer.YES;
            case "absent" -> Answer.NO;
            case "unknown" -> Answer.UNKNOWN;
            default -> throw flags.problem("'" + key + "' must be present, absent or unknown");
        };
        ObstacleAnswer given = new ObstacleAnswer(visit.file(), key);
        given.answer(answer, null, visit.day(), visit.clinician().displayName(), visit.moment());
        answers.persist(given);
    }
}
