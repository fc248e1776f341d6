package org.steadwork.drawing;

/** Words as they may stand in an SVG, in an element or between double quotes. */
public final class SvgText {

    private SvgText() {
    }

    public static String escape(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
