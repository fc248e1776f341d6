package org.steadwork.drawing.desk;

import java.util.Objects;
import java.util.Optional;

/**
 * Everything the plan of a desk is drawn from. Lengths in mm, origin between the shoulders, x to the person's right, y ahead.
 *
 * @param id        distinguishes the drawings of one page; letters, digits and hyphens
 * @param deskWidth in mm, in [300, 4000]; {@code deskDepth} in [200, 2000]
 * @param proposed  null when nothing is proposed
 */
public record PlanScene(String id, String title, PlanBody body, double deskWidth, double deskDepth, PlanState present, PlanState proposed,
        PlanBands bands) {

    public PlanScene {
        if (!id.matches("[A-Za-z0-9-]+")) {
            throw new IllegalArgumentException("A drawing's id has letters, digits and hyphens only, but was '" + id + "'");
        }
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(body, "body");
        check("desk width", deskWidth, 300, 4000);
        check("desk depth", deskDepth, 200, 2000);
        Objects.requireNonNull(present, "present");
        Objects.requireNonNull(bands, "bands");
    }

    Optional<PlanState> proposal() {
        return Optional.ofNullable(proposed);
    }

    static void check(String what, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException("The " + what + " must be between " + Millimetres.whole(least) + " and "
                    + Millimetres.whole(most) + ", but was " + value);
        }
    }
}
