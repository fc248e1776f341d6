package org.steadwork.exposure;

import jakarta.inject.Singleton;
import java.util.List;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchAnswer.Mark;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.exposure.method.Rula;

/** Rapid upper limb assessment from postures in words. */
@Singleton
class RulaCalculator extends MethodCalculator {

    private final Rula rula = ExposureContent.rula();

    RulaCalculator() {
        super("rula");
    }

    @Override
    public List<Input> inputs() {
        return inputsOfTheContent();
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        int upperArm = Math.max(1, points(given, "upper_arm", "shoulder_raised", "arm_out", "arm_supported"));
        Rula.Posture posture = new Rula.Posture(upperArm, points(given, "lower_arm", "forearm_across"), points(given, "wrist", "wrist_sideways"),
                points(given, "wrist_twist"), points(given, "arm_force", "arm_use"), points(given, "neck", "neck_twisted", "neck_sideways"),
                points(given, "trunk", "trunk_twisted", "trunk_sideways"), points(given, "legs"), points(given, "body_force", "body_use"));
        Rula.Result result = rula.of(posture);
        BenchAnswer answer = BenchAnswer.of(result.band()).marked(result.level() == 1 ? Mark.IN : result.level() == 4 ? Mark.OUT : Mark.EDGE)
                .headline("Grand score", String.valueOf(result.score()), "of 7").headline("Action level", String.valueOf(result.level()), "of 4")
                .step("Upper arm", "posture and what was added, at least 1", String.valueOf(posture.upperArm()), "")
                .step("Forearm", "posture and what was added", String.valueOf(posture.lowerArm()), "")
                .step("Wrist", "posture and what was added", String.valueOf(posture.wrist()), "").step("Turn of the forearm", "posture", String.valueOf(posture.twist()), "")
                .step("Neck", "posture and what was added", String.valueOf(posture.neck()), "")
                .step("Trunk", "posture and what was added", String.valueOf(posture.trunk()), "").step("Legs", "posture", String.valueOf(posture.legs()), "");
        working(answer, result.working(), 0);
        return answer.note("Table A was checked against one reproduction only; an older teaching sheet gives lower values in 31 of its 144 cells.")
                .result("score", result.score()).result("level", result.level()).result("score_a", (int) result.working().get(0).value())
                .result("score_c", (int) result.working().get(1).value()).result("score_b", (int) result.working().get(2).value())
                .result("score_d", (int) result.working().get(3).value());
    }
}
