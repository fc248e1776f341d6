package org.steadwork.workplace.fit;

import java.util.ArrayList;
import java.util.List;

/**
 * The room that body and furniture leave between elbow and thigh: K = E − k − t − T, in mm. Clearance is always elbow
 * deviation + K, whatever the seat height, so below {@code least} no setting has both in range.
 *
 * @param room K; negative when keys at elbow height would press on the thigh
 * @param least the smallest K with which elbow and thigh can both be in range
 * @param ideal the smallest K with which the keys can be at the elbow and the thigh free
 * @param tradeOffs how it can be shared, when it is too small; only settings that the desk allows
 */
public record Room(double room, double least, double ideal, List<TradeOff> tradeOffs) {

    static Room of(FitModel model, Settings best) {
        double room = model.roomBetweenElbowAndThigh();
        double free = model.target(Deviation.CLEARANCE).green().low();
        double least = free - model.target(Deviation.ELBOW).green().high();
        double ideal = free - model.target(Deviation.ELBOW).aim();
        List<TradeOff> tradeOffs = new ArrayList<>();
        if (room < least) {
            Travel desk = model.station().travel(Part.DESK).orElseThrow();
            for (double elbow : new double[] {0, -room, free - room}) {
                double top = best.seat() + model.elbow() - model.station().homeRow() + elbow;
                if (desk.clip(top) == top) {
                    tradeOffs.add(new TradeOff(best.seat(), top, elbow, elbow + room));
                }
            }
        }
        return new Room(room, least, ideal, List.copyOf(tradeOffs));
    }

    /** Tells whether elbow and thigh can both be in range; false also when K is not known. */
    public boolean enough() {
        return room >= least;
    }
}
