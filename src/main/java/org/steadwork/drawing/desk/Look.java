package org.steadwork.drawing.desk;

/**
 * The colours of one state: dashed outline for the present, filled for the proposed.
 *
 * @param person edge of the person; {@code dark} fills feet, columns and housings
 */
record Look(boolean present, Ink edge, Ink person, String wood, String top, String chair, String dark, String body, String arm) {

    private static final String DASH = "6 3.2";

    static Look proposed() {
        return new Look(false, Ink.line(Palette.FURNITURE_EDGE, .9), Ink.line(Palette.PLUM, 1.2),
                "#e6dfd2", "#d6cbb8", "#ddd8d0", "#b9b2a7", "#cdb9c8", "#bda4b7");
    }

    /** Over the proposed state, the present one is an outline only; alone, faint tints keep the person off the furniture. */
    static Look present(boolean alone) {
        Ink edge = Ink.line(Palette.INK, 1.35).dash(DASH);
        Ink person = Ink.line(Palette.INK, 1.5).dash(DASH);
        return alone
                ? new Look(true, edge, person, Palette.PAPER, Palette.PAPER, Palette.PAPER, "#efeae2", "#f0ebe3", "#e7e0d5")
                : new Look(true, edge, person, "none", "none", "none", "none", "none", "none");
    }

    /** The look of a piece whose place was not measured. */
    Look unless(boolean measured) {
        Ink dots = Ink.line(Palette.MUTED, 1.4).dash(Ink.DOTS);
        return measured ? this : new Look(present, dots, dots, "none", "none", "none", "none", "none", "none");
    }

    Ink wooden() {
        return edge.fill(wood);
    }

    Ink ofTop() {
        return edge.fill(top);
    }

    Ink padded() {
        return edge.fill(chair);
    }

    Ink housing() {
        return edge.fill(dark);
    }

    String colour() {
        return present ? Palette.INK : Palette.PLUM;
    }
}
