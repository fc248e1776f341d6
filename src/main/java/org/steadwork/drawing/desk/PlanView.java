package org.steadwork.drawing.desk;

import java.util.ArrayList;
import java.util.List;
import org.steadwork.drawing.SvgText;
import org.steadwork.drawing.TextWidth;

/**
 * A person at a desk from above, to scale: the present state in dashed outline, the proposed one filled, beside one another
 * (under one another when narrow), with zones of reach, deviations in mm and degrees, and every state told by word and shape as
 * well as by colour. Where the person sits is worked out from the reach, not observed.
 *
 * @param svg         one well-formed svg element without style attributes, scripts or transparency
 * @param alternative the same in words
 */
public record PlanView(String svg, String alternative, int width, int height) {

    private static final String FONT = "system-ui, 'Liberation Sans', Arial, sans-serif";
    private static final int NARROWEST = 300;
    private static final int WIDEST = 2000;

    /** Draws a plan; {@code width} in [300, 2000], under 640 one state under the other. */
    public static PlanView draw(PlanScene scene, Show asked, int width) {
        if (!(width >= NARROWEST && width <= WIDEST)) {
            throw new IllegalArgumentException("A drawing is " + NARROWEST + " to " + WIDEST + " wide, but was " + width);
        }
        Show show = scene.proposal().isPresent() ? asked : Show.PRESENT;
        Layout layout = new Layout(scene, show, width);
        layout.draw();
        String id = "plan-" + scene.id() + "-" + width;
        String alternative = String.join(". ", layout.words) + ". Lengths in mm; where the person sits is worked out from the reach.";
        String svg = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + width + " " + layout.height + "\" width=\"" + width + "\" height=\""
                + layout.height + "\" role=\"img\" aria-labelledby=\"t-" + id + " d-" + id + "\" font-family=\"" + FONT + "\">"
                + "<title id=\"t-" + id + "\">" + SvgText.escape("Plan to scale: " + scene.title()) + "</title>"
                + "<desc id=\"d-" + id + "\">" + SvgText.escape(alternative) + "</desc>\n"
                + "<rect width=\"" + width + "\" height=\"" + layout.height + "\" fill=\"" + Palette.PAPER + "\"/>\n" + layout.pen + "</svg>\n";
        return new PlanView(svg, alternative, width, layout.height);
    }

    /** Places heading, panels, lists and legend. */
    private static final class Layout {
        private final PlanScene scene;
        private final Show show;
        private final int width;
        private final boolean narrow;
        private final double margin;
        private final Pen pen = new Pen();
        private final List<String> words = new ArrayList<>();
        private int height;

        Layout(PlanScene scene, Show show, int width) {
            this.scene = scene;
            this.show = show;
            this.width = width;
            narrow = width < Sheet.NARROW;
            margin = narrow ? 12 : Sheet.MARGIN;
        }

        void draw() {
            double y = heading();
            boolean two = show == Show.BOTH;
            boolean beside = two && !narrow;
            double panel = beside ? (width - 3 * margin) / 2 : Math.min(width - 2 * margin, 640);
            PlanExtent extent = PlanExtent.of(scene);
            Frame scale = new Frame(panel / extent.width(), 0, 0);
            double bottom = y;
            int place = 0;
            for (boolean present : new boolean[] {true, false}) {
                if (present ? show.present() : show.proposed()) {
                    double x = margin + (beside ? place * (panel + margin) : 0);
                    double top = beside || place == 0 ? y : bottom + 22;
                    bottom = Math.max(bottom, state(present, x, top, panel, extent, scale.scale()));
                    place++;
                }
            }
            height = (int) Math.ceil(legend(bottom + 26) + 14);
        }

        private double heading() {
            double y = narrow ? 20 : 30;
            double size = narrow ? 14 : 17;
            for (String line : TextWidth.wrap("From above: " + scene.title(), size, width - 2 * margin, true)) {
                pen.text(margin, y, line, Type.of(size, Palette.INK).inBold());
                y += size + 3;
            }
            String note = "The person faces up the page. mm and degrees, to scale." + (scene.body().estimated() ? " Reach is estimated from stature." : "");
            for (String line : TextWidth.wrap(note, narrow ? 11 : 12, width - 2 * margin, false)) {
                pen.text(margin, y, line, Type.of(narrow ? 11 : 12, Palette.MUTED));
                y += 15;
            }
            return y + 6;
        }

        private double state(boolean present, double x, double top, double panel, PlanExtent extent, double scale) {
            PlanGeometry geometry = new PlanGeometry(scene.body(), present ? scene.present() : scene.proposal().orElseThrow());
            Look look = present ? Look.present(true) : Look.proposed();
            pen.text(x, top + 10, present ? "Now (dashed)" : "Proposed (filled)", Type.of(13, look.colour()).inBold());
            Frame frame = new Frame(scale, x - extent.left() * scale, top + 18 + extent.far() * scale);
            new PlanArt(scene, geometry, pen, frame, extent, look).draw();
            double y = top + 18 + extent.depth() * scale + 8;
            List<String> said = new ArrayList<>();
            for (PlanFindings.Line line : PlanFindings.of(geometry, scene.bands())) {
                said.add(line.text().replace("°", " degrees").replace(" mm", "") + " (" + line.state().word + ")");
                boolean first = true;
                for (String text : TextWidth.wrap(line.text(), 12, panel - 20, false)) {
                    y += 17;
                    if (first) {
                        Marker.draw(pen, x + 6, y - 4, line.state(), 4.6);
                        first = false;
                    }
                    pen.text(x + 18, y, text, Type.of(12, look.colour()));
                }
            }
            words.add((present ? "Now: " : "Proposed: ") + String.join("; ", said));
            return y;
        }

        private double legend(double y) {
            return Legend.ofPlan(pen, margin, y, width - margin, narrow ? 11 : 11.5);
        }
    }
}
