package org.steadwork.drawing.desk;

/** Numbers as the drawing shows them: whole, rounded half away from zero, with a true minus. */
final class Millimetres {

    private Millimetres() {
    }

    static String whole(double value) {
        long rounded = (long) Math.floor(Math.abs(value) + .5);
        return (value < 0 && rounded != 0 ? "−" : "") + rounded;
    }

    static String signed(double value) {
        String text = whole(value);
        return value > 0 && !text.equals("0") ? "+" + text : text;
    }
}
