package org.steadwork.drawing.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Geometry that must hold whatever the pose; each expected value follows from the definition of the model. */
class SkeletonTest {

    private static final double EXACT = 1e-9;
    private static final double LIMB = 0.02;

    static List<String> keys() {
        return FigureContent.keys().toList();
    }

    @ParameterizedTest
    @MethodSource("keys")
    void limbsKeepTheirLengths(String key) {
        for (Skeleton skeleton : FigureContent.figure(key).skeletons()) {
            if (skeleton.head() == null) {
                continue;
            }
            for (Side side : Side.values()) {
                Joints j = skeleton.joints();
                assertEquals(24.5, j.point("hip", side).minus(j.point("knee", side)).length(), LIMB);
                assertEquals(24.6, j.point("knee", side).minus(j.point("ankle", side)).length(), LIMB);
                assertEquals(17.6, j.point("shoulder", side).minus(j.point("elbow", side)).length(), LIMB);
                assertEquals(14.6, j.point("elbow", side).minus(j.point("wrist", side)).length(), LIMB);
            }
        }
    }

    @Test
    void standsUprightOnTheFloorAsHighAsItsStature() {
        Joints j = Skeleton.of(new Pose(new Values(Map.of()))).joints();
        assertEquals(0, Math.min(j.point("heel_R").y() - 1.5, j.point("ball_R").y() - 1.2), 0.05);
        // ankle, shank, thigh, hip to neck, neck and head: the parts add up to the whole
        assertEquals(3.9 + 24.6 + 24.5, j.point("root").y(), 0.35);
        assertEquals(100, j.point("head_top").y(), 2);
    }

    @Test
    void forwardBendingTakesTheHeadForwardAndDown() {
        Joints upright = Skeleton.of(new Pose(new Values(Map.of()))).joints();
        Joints bent = Skeleton.of(new Pose(new Values(Map.of("lumbar.flex", 30, "chest.flex", 20)))).joints();
        assertTrue(bent.point("head").x() > upright.point("head").x() + 10);
        assertTrue(bent.point("head").y() < upright.point("head").y() - 5);
    }

    @Test
    void theRightSideLiesToTheRightAndMirrorsTheLeft() {
        Joints j = Skeleton.of(new Pose(new Values(Map.of("shoulder.abd", 70, "elbow.flex", 40, "hip.abd", 20)))).joints();
        for (String anchor : List.of("shoulder", "elbow", "wrist", "hip", "knee", "ankle")) {
            Vec3 right = j.point(anchor, Side.R);
            Vec3 left = j.point(anchor, Side.L);
            assertTrue(right.z() > 0, anchor);
            assertEquals(right.x(), left.x(), EXACT);
            assertEquals(right.y(), left.y(), EXACT);
            assertEquals(right.z(), -left.z(), EXACT);
        }
    }

    @Test
    void aPlacedHandLiesOnItsPlace() {
        Joints j = Skeleton.of(new Pose(new Values(Map.of("hand", List.of(20, 80, 12), "hand.dir", List.of(1, 0, 0))))).joints();
        assertEquals(0, j.point("palm_R").minus(new Vec3(20, 80, 12)).length(), EXACT);
        assertEquals(0, j.point("palm_L").minus(new Vec3(20, 80, -12)).length(), EXACT);
    }

    @Test
    void twoBonesMeetTheTargetWhereTheyCanAndPointAtItWhereTheyCannot() {
        Random random = new Random(20261125);
        for (int i = 0; i < 2_000; i++) {
            Vec3 target = new Vec3(random.nextDouble() * 60 - 30, random.nextDouble() * 60 - 30, random.nextDouble() * 60 - 30);
            Vec3 pole = new Vec3(random.nextDouble() - .5, random.nextDouble() - .5, random.nextDouble() - .5);
            TwoBone limb = TwoBone.reach(Vec3.ORIGIN, target, 17, 14, pole, "limb", new Joints());
            double distance = target.length();
            double reached = Math.max(3.5, Math.min(30.99, distance));
            assertEquals(reached, limb.end().length(), 1e-6, "target " + target);
            assertEquals(0, limb.end().unit().minus(target.unit()).length(), 1e-6, "target " + target);
            assertEquals(17, limb.middle().length(), 1e-6);
            assertEquals(14, limb.middle().minus(limb.end()).length(), 1e-6);
            assertTrue(limb.middle().dot(pole) >= limb.end().unit().dot(pole) * limb.middle().dot(limb.end().unit()) - 1e-6, "the joint lies towards its pole");
        }
    }
}
