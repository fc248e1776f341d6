package org.steadwork.exposure;

import jakarta.inject.Singleton;
import java.util.List;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchAnswer.Mark;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.exposure.method.Reba;

/** Rapid entire body assessment from postures in words. */
@Singleton
class RebaCalculator extends MethodCalculator {

    /** Rows of table C from here on are from memory in part. */
    private static final int CHECKED_ROWS = 10;

    private final Reba reba = ExposureContent.reba();

    RebaCalculator() {
        super("reba");
    }

    @Override
    public List<Input> inputs() {
        return inputsOfTheContent();
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        int legs = points(given, "legs") + points(given, "knees");
        int upperArm = Math.max(1, points(given, "upper_arm", "arm_out", "shoulder_raised", "arm_supported"));
        int activity = added(given, "held") + added(given, "repeated") + added(given, "unsteady");
        Reba.Posture posture = new Reba.Posture(points(given, "trunk", "trunk_twisted"), points(given, "neck", "neck_twisted"), legs,
                points(given, "load", "jolt"), upperArm, points(given, "lower_arm"), points(given, "wrist", "wrist_twisted"), points(given, "grip"), activity);
        Reba.Result result = reba.of(posture);
        BenchAnswer answer = BenchAnswer.of(result.band()).marked(result.level() <= 1 ? Mark.IN : result.level() == 2 ? Mark.EDGE : Mark.OUT)
                .headline("Score", String.valueOf(result.score()), "of 15").headline("Action level", String.valueOf(result.level()), "of 4")
                .step("Trunk", "posture and what was added", String.valueOf(posture.trunk()), "").step("Neck", "posture and what was added", String.valueOf(posture.neck()), "")
                .step("Legs", "stance and bend of the knees", String.valueOf(legs), "").step("Load", "weight and jolt", String.valueOf(posture.load()), "")
                .step("Upper arm", "posture and what was added, at least 1", String.valueOf(upperArm), "")
                .step("Forearm", "posture", String.valueOf(posture.lowerArm()), "").step("Wrist", "posture and what was added", String.valueOf(posture.wrist()), "")
                .step("Grip", "as chosen", String.valueOf(posture.coupling()), "");
        working(answer, result.working(), 0);
        if (result.working().get(0).value() > CHECKED_ROWS) {
            answer.note("This result rests on a row of table C that is from memory in part.");
        }
        return answer.result("score", result.score()).result("level", result.level()).result("score_a", (int) result.working().get(0).value())
                .result("score_b", (int) result.working().get(1).value()).result("score_c", (int) result.working().get(2).value());
    }
}
