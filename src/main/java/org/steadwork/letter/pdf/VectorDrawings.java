package org.steadwork.letter.pdf;

import com.lowagie.text.BadElementException;
import com.lowagie.text.Image;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfTemplate;
import java.awt.Point;
import org.steadwork.letter.pdf.PlainDrawing.Group;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xhtmlrenderer.extend.ReplacedElement;
import org.xhtmlrenderer.extend.UserAgentCallback;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.pdf.ITextFSImage;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextReplacedElement;
import org.xhtmlrenderer.pdf.ITextReplacedElementFactory;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.RenderingContext;

/**
 * Paints {@code <svg>} elements of a letter as shapes; left alone, the layout would make a large bitmap of each.
 * A drawing for a letter has a {@code viewBox}, presentation attributes and flat colours: PDF/A-1b allows no transparency.
 */
final class VectorDrawings extends ITextReplacedElementFactory {

    /** Where an element of the page keeps its drawing. */
    private static final String LIFTED = "drawing";

    VectorDrawings(ITextOutputDevice device) {
        super(device);
    }

    /** Takes what is within each drawing below an element out of the page, so that the layout seeks no rules for shapes it does not set. */
    static void lift(Element below) {
        Node child = below.getFirstChild();
        while (child != null) {
            if (child instanceof Element element) {
                if (!"svg".equals(element.getNodeName())) {
                    lift(element);
                } else if (element.hasChildNodes()) {
                    Element drawing = (Element) element.cloneNode(false);
                    while (element.hasChildNodes()) {
                        drawing.appendChild(element.getFirstChild());
                    }
                    element.setUserData(LIFTED, drawing, null);
                }
            }
            child = child.getNextSibling();
        }
    }

    @Override
    public ReplacedElement createReplacedElement(LayoutContext context, BlockBox box, UserAgentCallback agent, int cssWidth, int cssHeight) {
        Element element = box.getElement();
        if (element != null && "img".equals(element.getNodeName())) {
            throw new IllegalArgumentException("A letter holds drawings as svg elements and no other pictures");
        }
        if (element == null || !"svg".equals(element.getNodeName())) {
            return super.createReplacedElement(context, box, agent, cssWidth, cssHeight);
        }
        double[] view = viewBox(element);
        double dots = context.getDotsPerPixel();
        double width = cssWidth >= 0 ? cssWidth : view[2] * dots;
        double height = cssHeight >= 0 ? cssHeight : width * view[3] / view[2];
        if (cssHeight >= 0 && cssWidth < 0) {
            width = height * view[2] / view[3];
        }
        return new Drawing(element.getUserData(LIFTED) instanceof Element drawing ? drawing : element, view, (int) Math.round(width), (int) Math.round(height));
    }

    private static double[] viewBox(Element svg) {
        String[] parts = svg.getAttribute("viewBox").strip().split("[\\s,]+");
        if (parts.length != 4) {
            throw new IllegalArgumentException("A drawing in a letter needs a viewBox of four numbers");
        }
        double[] view = new double[4];
        for (int i = 0; i < 4; i++) {
            view[i] = Double.parseDouble(parts[i]);
        }
        if (!(view[2] > 0 && view[3] > 0)) {
            throw new IllegalArgumentException("The viewBox of a drawing must have a width and a height above 0");
        }
        return view;
    }

    private static final class Drawing implements ITextReplacedElement {

        private final Element svg;
        private final double[] view;
        private final int width;
        private final int height;
        private Point location = new Point(0, 0);

        Drawing(Element svg, double[] view, int width, int height) {
            this.svg = svg;
            this.view = view;
            this.width = width;
            this.height = height;
        }

        @Override
        public void paint(RenderingContext context, ITextOutputDevice device, BlockBox box) {
            PdfContentByte page = device.getCurrentPage();
            PdfTemplate shapes = page.createTemplate((float) view[2], (float) view[3]);
            paint(shapes);
            try {
                device.drawImage(new ITextFSImage(Image.getInstance(shapes)).scale(width, height), location.x, location.y);
            } catch (BadElementException e) {
                throw new IllegalStateException(e);
            }
        }

        /** Asks a painter for the whole of SVG where the drawing is not plain. */
        private void paint(PdfTemplate shapes) {
            Group plain;
            try {
                plain = PlainDrawing.read(svg);
            } catch (IllegalArgumentException notPlain) {
                AnyDrawing.paint(svg, view, shapes);
                return;
            }
            DrawingPainter.paint(plain, view, shapes);
        }

        @Override
        public int getIntrinsicWidth() {
            return width;
        }

        @Override
        public int getIntrinsicHeight() {
            return height;
        }

        @Override
        public Point getLocation() {
            return location;
        }

        @Override
        public void setLocation(int x, int y) {
            location = new Point(x, y);
        }

        @Override
        public void detach(LayoutContext context) {
            // nothing is kept between layouts
        }

        @Override
        public boolean isRequiresInteractivePaint() {
            return false;
        }

        @Override
        public boolean hasBaseline() {
            return false;
        }

        @Override
        public int getBaseline() {
            return 0;
        }
    }
}
