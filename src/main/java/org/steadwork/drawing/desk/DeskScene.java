package org.steadwork.drawing.desk;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Everything the side view of a person at a desk is drawn from. A number that is missing was not measured: its part is
 * drawn dotted and nothing is judged from it.
 *
 * @param id       distinguishes the drawings of one page; letters, digits and hyphens
 * @param note     one or two sentences under the title, may be blank
 * @param body     millimetres, stature and body heights without shoes; each greater than 0 (a shoe may be 0) and at most 2600
 * @param proposed null when nothing is proposed; a setting missing in it stays as it is now
 * @param bands    the targets to judge against
 */
public record DeskScene(String id, String title, String note, Posture posture, Glasses glasses,
        Map<BodyMeasure, Double> body, DeskState present, DeskState proposed, Bands bands) {

    public DeskScene {
        if (!id.matches("[A-Za-z0-9-]+")) {
            throw new IllegalArgumentException("A drawing's id has letters, digits and hyphens only, but was '" + id + "'");
        }
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(note, "note");
        Objects.requireNonNull(posture, "posture");
        Objects.requireNonNull(glasses, "glasses");
        Objects.requireNonNull(present, "present");
        Objects.requireNonNull(bands, "bands");
        body = Map.copyOf(body);
        body.forEach((measure, value) -> {
            double least = measure == BodyMeasure.SHOE ? 0 : 1;
            if (!(value >= least && value <= BodyMeasure.LONGEST)) {
                throw new IllegalArgumentException("The " + measure.word + " must be between " + least + " and "
                        + BodyMeasure.LONGEST + " mm, but was " + value);
            }
        });
    }

    boolean standing() {
        return posture == Posture.STANDING;
    }

    Optional<DeskState> proposal() {
        return Optional.ofNullable(proposed);
    }
}
