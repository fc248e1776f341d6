package org.steadwork.drawing.desk;

import java.util.Map;

/**
 * The work place in one state, as it stands now or as it is proposed.
 *
 * @param settings millimetres or degrees, each within the range of its {@link Setting}; a missing key is not measured
 */
public record DeskState(SeatKind seat, ScreenKind screen, Map<Setting, Double> settings) {

    public DeskState {
        settings = Map.copyOf(settings);
        settings.forEach((setting, value) -> {
            if (!setting.accepts(value)) {
                throw new IllegalArgumentException("The " + setting.word + " must be between " + setting.lowest + " and "
                        + setting.highest + ", but was " + value);
            }
        });
    }

    /** An office chair and a screen on its own foot. */
    public static DeskState of(Map<Setting, Double> settings) {
        return new DeskState(SeatKind.OFFICE_CHAIR, ScreenKind.SEPARATE, settings);
    }
}
