package org.steadwork.workplace.fit;

/** The parts whose best setting depends on no other part: depth of the seat, armrest, viewing distance. */
final class PartsBeside {

    private final FitModel model;
    private final Settings present;
    private final Travel depth;
    private final Travel armrest;

    PartsBeside(FitModel model) {
        this.model = model;
        this.present = model.station().present();
        this.depth = model.station().travelOrNull(Part.SEAT_DEPTH);
        this.armrest = model.station().travelOrNull(Part.ARMREST);
    }

    double seatDepth(Body body) {
        Target gap = model.target(Deviation.KNEE_GAP);
        double behindKnee = body.thighLength() + present.cushion();
        if (depth == null || Double.isNaN(behindKnee)) {
            return present.seatDepth();
        }
        double shorter = depth.atOrBelow(behindKnee - gap.aim());
        double longer = depth.atOrAbove(behindKnee - gap.aim());
        return gap.prefers(behindKnee - shorter, behindKnee - longer) ? shorter : longer;
    }

    double armrest(Body body) {
        Target level = model.target(Deviation.ARMREST);
        if (armrest == null || Double.isNaN(body.elbow())) {
            return present.armrest();
        }
        double lower = armrest.atOrBelow(body.elbow() + level.aim());
        double higher = armrest.atOrAbove(body.elbow() + level.aim());
        return level.prefers(lower - body.elbow(), higher - body.elbow()) ? lower : higher;
    }

    double distance(Body body) {
        return model.wantedDistance(body);
    }
}
