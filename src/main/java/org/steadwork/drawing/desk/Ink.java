package org.steadwork.drawing.desk;

/** How a shape is filled and its edge drawn; flat colours only. A null dash is a solid line. */
record Ink(String fill, String stroke, double width, String dash) {

    /** The dash of everything that was not measured: round dots. */
    static final String DOTS = "0.1 4";

    static Ink filled(String colour) {
        return new Ink(colour, "none", 1, null);
    }

    static Ink line(String colour, double width) {
        return new Ink("none", colour, width, null);
    }

    Ink fill(String colour) {
        return new Ink(colour, stroke, width, dash);
    }

    Ink stroke(String colour) {
        return new Ink(fill, colour, width, dash);
    }

    Ink width(double mm) {
        return new Ink(fill, stroke, mm, dash);
    }

    Ink dash(String pattern) {
        return new Ink(fill, stroke, width, pattern);
    }
}
