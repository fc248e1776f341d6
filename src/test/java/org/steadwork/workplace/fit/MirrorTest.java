package org.steadwork.workplace.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.steadwork.workplace.TestTargets.CRITERIA;
import static org.steadwork.workplace.TestTargets.TARGETS;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What stands to one side is judged as its mirror image on the other. */
class MirrorTest {

    private static final List<String> SIDED = List.of("SC-5", "KB-7");

    private static CriterionResult judged(String id, double value) {
        WorkedCase worked = WorkedCase.named("1");
        Assessor.Found found = new Assessor.Found(worked.person(), worked.station(), 0, Double.NaN, Map.of(id, Measurement.measured(value, 2)), Map.of());
        return new Assessor(CRITERIA, TARGETS).judge(found).stream().filter(result -> result.criterion().id().equals(id)).findFirst().orElseThrow();
    }

    @Test
    void anOffsetToTheLeftIsAnOffsetToTheRightMirrored() {
        Random random = new Random(2);
        for (String id : SIDED) {
            for (int i = 0; i < 200; i++) {
                double value = 120 * random.nextDouble();
                CriterionResult right = judged(id, value);
                CriterionResult left = judged(id, -value);
                assertEquals(right.verdict(), left.verdict(), id + " at " + value);
                assertEquals(right.open(), left.open(), id + " at " + value);
                assertEquals(right.deviation(), -left.deviation(), 1e-9, id + " at " + value);
            }
        }
    }

    @Test
    void anAngleToOneSideIsTheAngleToTheOther() {
        Random random = new Random(3);
        for (int i = 0; i < 200; i++) {
            double offset = 800 * random.nextDouble();
            double distance = 400 + 600 * random.nextDouble();
            assertEquals(Gaze.aside(offset, distance), -Gaze.aside(-offset, distance), 1e-12);
            assertEquals(Gaze.belowHorizontal(offset, distance), -Gaze.belowHorizontal(-offset, distance), 1e-12);
        }
    }
}
