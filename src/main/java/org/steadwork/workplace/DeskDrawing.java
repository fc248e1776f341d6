package org.steadwork.workplace;

import jakarta.inject.Singleton;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.steadwork.drawing.desk.BandContent;
import org.steadwork.drawing.desk.Bands;
import org.steadwork.drawing.desk.DeskCard;
import org.steadwork.drawing.desk.DeskScene;
import org.steadwork.drawing.desk.DeskState;
import org.steadwork.drawing.desk.DeskView;
import org.steadwork.drawing.desk.Glasses;
import org.steadwork.drawing.desk.Posture;
import org.steadwork.drawing.desk.ScreenKind;
import org.steadwork.drawing.desk.SeatKind;
import org.steadwork.drawing.desk.Setting;
import org.steadwork.drawing.desk.Show;
import org.steadwork.web.Dates;
import org.steadwork.workplace.fit.BodyMeasure;
import org.steadwork.workplace.fit.FitResult;
import org.steadwork.workplace.fit.Lenses;
import org.steadwork.workplace.fit.Measurement;
import org.steadwork.workplace.fit.Part;
import org.steadwork.workplace.fit.Settings;

/** Hands an assessment to the drawing of the desk from the side. */
@Singleton
class DeskDrawing {

    private static final Map<BodyMeasure, org.steadwork.drawing.desk.BodyMeasure> BODY = Map.of(
            BodyMeasure.STATURE, org.steadwork.drawing.desk.BodyMeasure.STATURE,
            BodyMeasure.POPLITEAL_HEIGHT, org.steadwork.drawing.desk.BodyMeasure.POPLITEAL,
            BodyMeasure.SHOE, org.steadwork.drawing.desk.BodyMeasure.SHOE,
            BodyMeasure.ELBOW_REST_HEIGHT, org.steadwork.drawing.desk.BodyMeasure.ELBOW_REST,
            BodyMeasure.EYE_HEIGHT_SITTING, org.steadwork.drawing.desk.BodyMeasure.EYE_SITTING,
            BodyMeasure.BUTTOCK_POPLITEAL_LENGTH, org.steadwork.drawing.desk.BodyMeasure.BUTTOCK_POPLITEAL,
            BodyMeasure.THIGH_CLEARANCE, org.steadwork.drawing.desk.BodyMeasure.THIGH,
            BodyMeasure.ABDOMINAL_DEPTH_SITTING, org.steadwork.drawing.desk.BodyMeasure.ABDOMINAL_DEPTH,
            BodyMeasure.STANDING_ELBOW_HEIGHT, org.steadwork.drawing.desk.BodyMeasure.ELBOW_STANDING,
            BodyMeasure.STANDING_EYE_HEIGHT, org.steadwork.drawing.desk.BodyMeasure.EYE_STANDING);

    private static final Map<Part, Setting> PARTS = Map.of(Part.SEAT_DEPTH, Setting.SEAT_DEPTH, Part.CUSHION, Setting.CUSHION, Part.SEAT,
            Setting.SEAT_HEIGHT, Part.FOOTREST, Setting.FOOTREST_HEIGHT, Part.DESK, Setting.DESK_HEIGHT, Part.ARMREST, Setting.ARMREST,
            Part.SCREEN_TOP, Setting.SCREEN_TOP, Part.DISTANCE, Setting.SCREEN_DISTANCE);

    private final Bands bands = BandContent.read();

    /** Returns the drawing for a page, now and proposed in one. */
    String page(RecordedWorkplace recorded) {
        return DeskView.draw(scene(recorded), Show.BOTH, DeskView.PAGE).svg();
    }

    /** Returns the drawing for a telephone. */
    String phone(RecordedWorkplace recorded) {
        return DeskView.draw(scene(recorded), Show.BOTH, DeskView.PHONE).svg();
    }

    /**
     * Returns the drawing of settings other than the proposed ones, as with equipment still to be bought.
     *
     * @param apart whether a laptop then has keys of its own beside it
     */
    String setTo(RecordedWorkplace recorded, Settings settings, boolean apart, int width) {
        return DeskView.draw(scene(recorded, Optional.of(settings), "The work place as it should stand", apart), Show.PROPOSED, width).svg();
    }

    /** Returns the settings as a small picture for a card. */
    String card(RecordedWorkplace recorded, Settings settings, boolean apart) {
        return DeskCard.draw(scene(recorded, Optional.of(settings), "Settings", apart)).svg();
    }

    /** Returns the drawing of what was found, without a proposal, narrow enough for two side by side. */
    String found(RecordedWorkplace recorded) {
        return DeskView.draw(scene(recorded, Optional.empty(), "Found " + Dates.shown(recorded.assessment().assessedOn()), false), Show.PRESENT, DeskView.PHONE).svg();
    }

    private DeskScene scene(RecordedWorkplace recorded) {
        return scene(recorded, recorded.fit().map(FitResult::best), title(recorded.assessment()), false);
    }

    private DeskScene scene(RecordedWorkplace recorded, Optional<Settings> settings, String title, boolean apart) {
        Map<org.steadwork.drawing.desk.BodyMeasure, Double> body = new EnumMap<>(org.steadwork.drawing.desk.BodyMeasure.class);
        BODY.forEach((measure, drawn) -> {
            Measurement taken = recorded.person().measure(measure);
            if (taken.known()) {
                body.put(drawn, taken.value());
            }
        });
        ScreenKind screen = recorded.assessment().laptopAlone() ? ScreenKind.LAPTOP : ScreenKind.SEPARATE;
        Map<Setting, Double> sizes = sizes(recorded);
        DeskState present = new DeskState(SeatKind.OFFICE_CHAIR, screen, with(sizes, asLookedAt(recorded)));
        DeskState proposed = settings
                .map(best -> new DeskState(SeatKind.OFFICE_CHAIR, apart && screen == ScreenKind.LAPTOP ? ScreenKind.LAPTOP_WITH_KEYBOARD : screen, with(sizes, values(best)))).orElse(null);
        return new DeskScene("work-place-" + recorded.assessment().id(), title, "", Posture.SITTING,
                recorded.assessment().lenses() == Lenses.PROGRESSIVE ? Glasses.PROGRESSIVE : Glasses.SINGLE, body, present, proposed, bands);
    }

    private static String title(WorkplaceAssessment assessment) {
        return assessment.place() == null ? "Work place" : assessment.place();
    }

    private static Map<Setting, Double> sizes(RecordedWorkplace recorded) {
        Map<Setting, Double> sizes = new EnumMap<>(Setting.class);
        sizes.put(Setting.HOME_ROW, recorded.station().homeRow());
        sizes.put(Setting.DESK_THICKNESS, recorded.station().topThickness());
        put(sizes, Setting.SCREEN_HEIGHT, recorded, StationMeasure.SCREEN_HEIGHT.key());
        put(sizes, Setting.DESK_DEPTH, recorded, "DK-4");
        put(sizes, Setting.HOME_ROW_FROM_EDGE, recorded, "KB-3");
        put(sizes, Setting.BUILT_IN_TOP, recorded, StationMeasure.LAPTOP_TOP.key());
        return sizes;
    }

    private static void put(Map<Setting, Double> sizes, Setting setting, RecordedWorkplace recorded, String key) {
        if (recorded.taken().containsKey(key)) {
            sizes.put(setting, recorded.taken().get(key).amount().doubleValue());
        }
    }

    /** Without an entry, a footrest was not looked at; the fit counts that as none, the drawing does not. */
    private static Map<Part, Double> asLookedAt(RecordedWorkplace recorded) {
        Map<Part, Double> present = values(recorded.station().present());
        if (!recorded.taken().containsKey(StationMeasure.FOOTREST_NOW.key())) {
            present.remove(Part.FOOTREST);
        }
        return present;
    }

    private static Map<Part, Double> values(Settings at) {
        Map<Part, Double> values = new EnumMap<>(Part.class);
        for (Part part : Part.values()) {
            at.of(part).ifPresent(value -> values.put(part, value));
        }
        return values;
    }

    private static Map<Setting, Double> with(Map<Setting, Double> sizes, Map<Part, Double> at) {
        Map<Setting, Double> all = new EnumMap<>(Setting.class);
        all.putAll(sizes);
        at.forEach((part, value) -> all.put(PARTS.get(part), value));
        all.entrySet().removeIf(entry -> !drawable(entry.getKey(), entry.getValue()));
        return all;
    }

    /** A keyboard tray, say, stands below what the drawing knows; such a part is left to its stand-in. */
    private static boolean drawable(Setting setting, double value) {
        try {
            DeskState.of(Map.of(setting, value));
            return true;
        } catch (IllegalArgumentException outside) {
            return false;
        }
    }
}
