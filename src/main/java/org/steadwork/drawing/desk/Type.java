package org.steadwork.drawing.desk;

/** How a text is set. A halo of paper keeps it readable over lines. */
record Type(double size, String colour, boolean bold, boolean italic, String anchor, boolean halo) {

    static Type of(double size, String colour) {
        return new Type(size, colour, false, false, "start", false);
    }

    Type inBold() {
        return new Type(size, colour, true, italic, anchor, halo);
    }

    Type inItalic() {
        return new Type(size, colour, bold, true, anchor, halo);
    }

    Type centred() {
        return new Type(size, colour, bold, italic, "middle", halo);
    }

    Type toTheLeft() {
        return new Type(size, colour, bold, italic, "end", halo);
    }

    Type withHalo() {
        return new Type(size, colour, bold, italic, anchor, true);
    }
}
