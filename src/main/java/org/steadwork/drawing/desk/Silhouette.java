package org.steadwork.drawing.desk;

import static org.steadwork.drawing.desk.BodyMeasure.STATURE;

import java.util.ArrayList;
import java.util.List;

/** The cones each part of a posed person is made of. Radii are shares of stature; drawing proportions of this project. */
final class Silhouette {

    private final Placed placed;
    private final Skeleton j;
    private final boolean standing;
    private final double h;
    /** Half the thickness of the thigh, in mm. */
    private final double thighRadius;

    Silhouette(Placed placed, boolean standing) {
        this.placed = placed;
        this.standing = standing;
        j = placed.joints();
        h = placed.pose().stature();
        thighRadius = placed.pose().body().of(BodyMeasure.THIGH) / 2;
    }

    List<Cone> cones(BodyPart part) {
        return switch (part) {
            case TRUNK -> trunk();
            case HEAD -> head();
            case THIGH -> standing ? standingThigh() : sittingThigh();
            case SHANK -> shank();
            case FOOT -> foot();
            case ARM -> arm();
        };
    }

    private Cone cone(Point a, Point b, double radiusA, double radiusB) {
        return new Cone(a, b, radiusA * h, radiusB * h);
    }

    private List<Cone> trunk() {
        List<Cone> cones = new ArrayList<>();
        Point top = j.neckBase().plus(.012 * h, -.042 * h);
        double belly = placed.pose().bellyRadius() / h;
        if (standing) {
            cones.add(Cone.ball(j.pelvis(), .060 * h));
            cones.add(cone(j.hip().plus(-.020 * h, .008 * h), j.pelvis(), .052, .058));
        } else {
            cones.add(Cone.ball(j.pelvis(), .068 * h));
        }
        cones.add(cone(j.pelvis(), j.waist(), .062, belly * .93));
        cones.add(cone(j.waist(), j.chest(), belly * .93, .067));
        cones.add(cone(j.chest(), top, .067, .044));
        cones.add(cone(top, j.neckBase(), .044, .033));
        if (!standing) {
            cones.add(cone(j.hip().plus(.02 * h, .02 * h), j.waist(), thighRadius / h * .9, belly * .9));
        }
        if (placed.pose().bend().shrug() > 3) {
            cones.add(cone(j.shoulder(), j.neckBase().plus(0, -.03 * h), .030, .035));
        }
        return cones;
    }

    private List<Cone> sittingThigh() {
        double knee = .034 * h;
        double sag = (thighRadius - (thighRadius + .60 * (knee - thighRadius))) * .25;
        Point middle = j.hip().towards(j.knee(), .60).plus(0, sag);
        return List.of(new Cone(j.hip(), middle, thighRadius, thighRadius * .97), new Cone(middle, j.knee(), thighRadius * .97, knee));
    }

    private List<Cone> standingThigh() {
        Point aboveKnee = j.knee().plus(.004 * h, .05 * h);
        return List.of(cone(j.hip().plus(-.002 * h, -.02 * h), aboveKnee, .054, .040), cone(aboveKnee, j.knee(), .040, .034));
    }

    private List<Cone> shank() {
        Point calf = standing ? j.knee().plus(-.016 * h, -.075 * h) : j.knee().towards(j.ankle(), .27).plus(-.006 * h, 0);
        return List.of(cone(j.knee(), calf, standing ? .033 : .034 * .93, .034), cone(calf, j.ankle(), .034, .022));
    }

    private List<Cone> foot() {
        double sole = -.040 * h - placed.pose().body().of(BodyMeasure.SHOE);
        return List.of(cone(j.ankle(), onFoot(-.014, sole + .023 * h), .024, .023),
                cone(onFoot(-.014, sole + .022 * h), onFoot(.09, sole + .016 * h), .021, .016),
                cone(j.ankle(), onFoot(.075, sole + .021 * h), .023, .018),
                cone(onFoot(.085, sole + .0165 * h), onFoot(.102, sole + .0145 * h), .0165, .0145));
    }

    private Point onFoot(double forward, double up) {
        return j.ankle().plus(forward * h, up).nod(j.ankle(), placed.pose().legs().footTurn());
    }

    private List<Cone> head() {
        double s = h / 1740;
        return List.of(cone(j.neckBase(), onHead(-86, -40), .031, .028),
                new Cone(onHead(-58, 20), onHead(-84, 12), 89 * s, 88 * s),
                new Cone(onHead(-40, 6), onHead(-30, -30), 66 * s, 52 * s),
                new Cone(onHead(-62, -50), onHead(-6, -92), 34 * s, 17 * s),
                new Cone(onHead(22, 6), onHead(41, -34), 6 * s, 8 * s),
                new Cone(onHead(14, -58), onHead(12, -66), 14 * s, 14 * s));
    }

    /** A point on the head of a person 1740 mm tall, counted from the eye. */
    Point onHead(double forward, double up) {
        double s = placed.pose().body().of(STATURE) / 1740;
        return j.eye().plus(forward * s, up * s).nod(j.eye(), placed.pose().bend().head());
    }

    private List<Cone> arm() {
        Arm arm = placed.arm();
        Point belly = arm.elbow().towards(arm.wrist(), .35);
        return List.of(cone(j.shoulder(), arm.elbow(), .032, .0225), cone(arm.elbow(), belly, .0215, .0235),
                cone(belly, arm.wrist(), .0235, .0150), cone(arm.wrist(), arm.knuckle(), .0150, .0125),
                cone(arm.knuckle(), arm.tip(), .0115, .0055));
    }
}
