package org.steadwork.workplace;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.steadwork.workplace.fit.AdjustmentStep;
import org.steadwork.workplace.fit.Deviation;
import org.steadwork.workplace.fit.Equipment;
import org.steadwork.workplace.fit.EquipmentGain;
import org.steadwork.workplace.fit.FitModel;
import org.steadwork.workplace.fit.How;
import org.steadwork.workplace.fit.Part;
import org.steadwork.workplace.fit.Settings;
import org.steadwork.workplace.fit.SharedDesk;
import org.steadwork.workplace.fit.Verdict;

/** The words for what the fit works out. */
final class WorkplaceWords {

    private WorkplaceWords() {
    }

    static String of(Verdict verdict) {
        return switch (verdict) {
            case IN_RANGE -> "in range";
            case NEAR_THE_EDGE -> "near the edge";
            case OUT_OF_RANGE -> "out of range";
            case NOT_LOOKED_AT -> "not looked at";
        };
    }

    /** Returns the modifier of the status class that draws this verdict's shape. */
    static String state(Verdict verdict) {
        return switch (verdict) {
            case IN_RANGE -> "in";
            case NEAR_THE_EDGE -> "near";
            case OUT_OF_RANGE -> "out";
            case NOT_LOOKED_AT -> "none";
        };
    }

    static String of(How how) {
        return switch (how) {
            case MEASURED -> "measured";
            case TOLD -> "told, not measured";
            case ESTIMATED -> "estimated";
            case OBSERVED -> "observed";
            case NOT_LOOKED_AT -> "not looked at";
        };
    }

    static String of(Part part) {
        return switch (part) {
            case SEAT_DEPTH -> "Seat depth";
            case CUSHION -> "Backrest cushion";
            case SEAT -> "Seat height";
            case FOOTREST -> "Footrest";
            case DESK -> "Desk top";
            case ARMREST -> "Armrest above the seat";
            case SCREEN_TOP -> "Screen top above the floor";
            case DISTANCE -> "Viewing distance";
        };
    }

    static String of(Deviation deviation) {
        return switch (deviation) {
            case CLEARANCE -> "Room over the thighs";
            case ELBOW -> "Keys against the elbow";
            case FEET -> "Seat against leg and shoe";
            case SCREEN_DROP -> "Screen top against the eye";
            case KNEE_GAP -> "Gap behind the knee";
            case DISTANCE -> "Viewing distance";
            case ARMREST -> "Armrest against the elbow";
        };
    }

    /** Says a deviation as a person would: how far, and which way. */
    static String amount(Deviation deviation, double off) {
        return switch (deviation) {
            case CLEARANCE -> off < 0 ? Numerals.mm(-off) + " of contact" : Numerals.mm(off) + " of room over the thighs";
            case ELBOW -> against(off, "keys", "the elbow");
            case FEET -> against(off, "seat", "leg and shoe");
            case SCREEN_DROP -> off < 0 ? Numerals.mm(-off) + " above the eye" : Numerals.mm(off) + " below the eye";
            case KNEE_GAP -> Numerals.mm(off) + " behind the knee";
            case DISTANCE -> Numerals.mm(off) + " from the eye";
            case ARMREST -> against(off, "armrest", "the elbow");
        };
    }

    private static String against(double off, String what, String level) {
        if (Math.abs(off) < 0.5) {
            return what + " level with " + level;
        }
        return what + " " + Numerals.mm(Math.abs(off)) + (off > 0 ? " above " : " below ") + level;
    }

    /** Says what a step does: the deviation it leaves, its band, and when its range ends there. */
    static String effect(AdjustmentStep step, FitModel model) {
        if (Double.isNaN(step.off())) {
            return "Cannot be judged yet: " + of(step.deviation()).toLowerCase(Locale.ROOT) + " was not looked at";
        }
        String text = capital(amount(step.deviation(), step.off())) + ", " + of(step.verdict());
        boolean end = step.verdict() != Verdict.IN_RANGE && step.verdict() != Verdict.NOT_LOOKED_AT;
        return end ? text + "; as far as it goes" : text;
    }

    /** Names a piece of equipment with how much of it is wanted. */
    static String of(EquipmentGain.Item item, Settings used, double highestFootrest) {
        String size = Numerals.sizeUp(item.size());
        return switch (item.equipment()) {
            case FOOTREST -> (item.size() > highestFootrest ? "Foot platform, " : "Footrest, ") + size;
            case SCREEN_RISER -> "Screen riser or arm, " + size;
            case DESK_BLOCKS -> "Desk raised on blocks, by " + size;
            case ADJUSTABLE_DESK -> "Desk that can be set to " + Numerals.setting(used.desk());
            case KEYBOARD_TRAY -> "Keyboard tray, keys " + size + " lower";
            case THINNER_TOP -> "Thinner desk top, by " + size;
            case FLAT_KEYBOARD -> "Flatter keyboard, by " + size;
            case OTHER_CHAIR -> "Other chair, seat at " + Numerals.setting(used.seat())
                    + (Double.isNaN(used.seatDepth()) ? "" : " and " + Numerals.setting(used.seatDepth()) + " deep");
            case BACKREST_CUSHION -> "Backrest cushion, " + size;
            case ARMRESTS_OFF -> "Armrests taken off";
            case LAPTOP_SET -> "Separate keyboard and mouse, and a laptop riser, " + size;
        };
    }

    static String of(EquipmentGain gain, double highestFootrest) {
        return gain.items().stream().map(item -> of(item, gain.settings(), highestFootrest)).collect(Collectors.joining("; "));
    }

    /** Says what is not in range at a shared desk, and by how much. */
    static String of(SharedDesk.Miss miss) {
        return amount(miss.deviation(), miss.off()) + ", " + of(miss.verdict()) + " by " + Numerals.mm(miss.beyond());
    }

    static String list(List<Deviation> deviations) {
        return deviations.stream().map(WorkplaceWords::of).collect(Collectors.joining(", "));
    }

    static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
