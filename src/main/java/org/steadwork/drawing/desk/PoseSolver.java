package org.steadwork.drawing.desk;

import static org.steadwork.drawing.desk.BodyMeasure.*;
import static org.steadwork.drawing.desk.Setting.BACK_ANGLE;

/**
 * Works out the posture a person takes at a work place. Heights are the measured ones; recline moves points back only.
 * The posture is worked out, not observed: good for a picture that explains, not for a finding.
 */
final class PoseSolver {

    private final DeskScene scene;
    private final Lengths body;
    private final double h;

    PoseSolver(DeskScene scene, Lengths body) {
        this.scene = scene;
        this.body = body;
        this.h = body.of(STATURE);
    }

    Pose solve(Settings settings, Deviations deviations, boolean present) {
        boolean standing = scene.standing();
        Legs legs = standing ? Legs.standing(body) : Legs.sitting(body, settings, deviations);
        Bend bend = Bend.of(body, deviations, legs, scene.glasses(), standing, present);
        Skeleton skeleton = trunk(legs, recline(settings, legs), deviations, bend);
        return new Pose(body, settings, legs, bend, skeleton, restChest(settings));
    }

    private double recline(Settings settings, Legs legs) {
        if (scene.standing()) {
            return 0;
        }
        return legs.backGap() > 0 ? Math.min(settings.of(BACK_ANGLE), 1) : settings.of(BACK_ANGLE);
    }

    /** Where the chest of a straight back sitting right back would be: the back rest is drawn to it. */
    private Point restChest(Settings settings) {
        Settings rightBack = settings.sittingRightBack(body);
        Deviations deviations = new Deviations(scene, body, rightBack);
        Legs legs = Legs.sitting(body, rightBack, deviations);
        return trunk(legs, rightBack.of(BACK_ANGLE), deviations, Bend.none()).chest();
    }

    private Skeleton trunk(Legs legs, double recline, Deviations d, Bend bend) {
        double size = h / 1740;
        Point pelvis = legs.pelvis();
        double shoulderAt = d.elbowAt + body.of(UPPER_ARM) - .022 * h;
        Point shoulder = new Point(legs.hip().x() - (shoulderAt - legs.hip().y()) * Math.tan(Math.toRadians(recline)) * .85, shoulderAt);
        Point neckBase = shoulder.plus(-.006 * h, .050 * h);
        Point waist = pelvis.towards(neckBase, .30).plus(.012 * h, 0);
        Point chest = pelvis.towards(neckBase, .66).plus(.010 * h, 0);
        Point eyeNeutral = new Point(neckBase.x() + .024 * h + 85 * size, d.eyeAt);
        Point skull = eyeNeutral.plus(-85 * size, -25 * size);

        // the upper back rounds above the waist; the pelvis stays
        shoulder = shoulder.nod(waist, bend.slump());
        neckBase = neckBase.nod(waist, bend.slump());
        Point eye = eyeNeutral.nod(waist, bend.slump());
        skull = skull.nod(waist, bend.slump());
        chest = chest.nod(waist, bend.slump() * .7);

        Point bentSkull = skull.nod(neckBase, bend.neck());
        eye = eye.plus(bentSkull.x() - skull.x(), bentSkull.y() - skull.y()).nod(bentSkull, bend.head() - bend.slump());
        return new Skeleton(legs.hip(), legs.knee(), legs.ankle(), pelvis, waist, chest,
                shoulder.plus(.1 * bend.shrug(), bend.shrug()), neckBase, bentSkull, eye, eyeNeutral);
    }
}
