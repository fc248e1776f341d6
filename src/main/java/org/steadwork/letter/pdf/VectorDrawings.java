package org.steadwork.letter.pdf;

import com.lowagie.text.BadElementException;
import com.lowagie.text.Image;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfTemplate;
import java.awt.AlphaComposite;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.bridge.UserAgentAdapter;
import org.apache.batik.gvt.CanvasGraphicsNode;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.Text;
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

    VectorDrawings(ITextOutputDevice device) {
        super(device);
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
        return new Drawing(element, view, (int) Math.round(width), (int) Math.round(height));
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
            Graphics2D graphics = shapes.createGraphicsShapes((float) view[2], (float) view[3]);
            graphics.transform(AffineTransform.getTranslateInstance(-view[0], -view[1]));
            paint(shapes(svg, view), graphics);
            graphics.dispose();
            try {
                device.drawImage(new ITextFSImage(Image.getInstance(shapes)).scale(width, height), location.x, location.y);
            } catch (BadElementException e) {
                throw new IllegalStateException(e);
            }
        }

        /**
         * Paints a tree of shapes. Batik first asks every node for its outline, to leave out what lies outside the page; in a drawing nothing does,
         * and asking took a third of the painting. What is masked, filtered or see-through is left to Batik.
         */
        private static void paint(GraphicsNode node, Graphics2D graphics) {
            if (!node.isVisible()) {
                return;
            }
            if (node.getMask() != null || node.getFilter() != null || node.getComposite() != null && !AlphaComposite.SrcOver.equals(node.getComposite())) {
                node.paint(graphics);
                return;
            }
            AffineTransform before = graphics.getTransform();
            Shape clip = graphics.getClip();
            transform(graphics, node.getTransform());
            if (node instanceof CanvasGraphicsNode page) { // its clip is the edge of the drawing, which the form keeps already
                transform(graphics, page.getPositionTransform());
                transform(graphics, page.getViewingTransform());
            } else if (node.getClip() != null) {
                graphics.clip(node.getClip().getClipPath());
            }
            if (node instanceof CompositeGraphicsNode group) {
                for (Object child : group.getChildren()) {
                    paint((GraphicsNode) child, graphics);
                }
            } else {
                node.primitivePaint(graphics);
            }
            graphics.setTransform(before);
            if (node.getClip() != null) {
                graphics.setClip(clip);
            }
        }

        private static void transform(Graphics2D graphics, AffineTransform transform) {
            if (transform != null) {
                graphics.transform(transform);
            }
        }

        private static GraphicsNode shapes(Element svg, double[] view) {
            UserAgentAdapter agent = new UserAgentAdapter();
            BridgeContext bridge = new BridgeContext(agent);
            bridge.setDynamicState(BridgeContext.STATIC);
            Document document = document(svg, view);
            return new GVTBuilder().build(bridge, document);
        }

        /** Makes a document of its own of the element, drawn at one pixel for one unit of the viewBox. */
        private static Document document(Element svg, double[] view) {
            Document document = SVGDOMImplementation.getDOMImplementation().createDocument(SVGDOMImplementation.SVG_NAMESPACE_URI, "svg", null);
            Element root = document.getDocumentElement();
            copy(svg, root);
            root.removeAttribute("viewBox");
            root.setAttribute("width", String.valueOf(view[2]));
            root.setAttribute("height", String.valueOf(view[3]));
            return document;
        }

        /** Copies node by node: the letter's XHTML is read without namespaces, and writing it out to read it again took a tenth of the printing. */
        private static void copy(Element from, Element to) {
            NamedNodeMap attributes = from.getAttributes();
            for (int i = 0; i < attributes.getLength(); i++) {
                Node attribute = attributes.item(i);
                if (!attribute.getNodeName().startsWith("xmlns")) {
                    to.setAttribute(attribute.getNodeName(), attribute.getNodeValue());
                }
            }
            for (Node child = from.getFirstChild(); child != null; child = child.getNextSibling()) {
                if (child instanceof Element element) {
                    Element copied = to.getOwnerDocument().createElementNS(SVGDOMImplementation.SVG_NAMESPACE_URI, element.getNodeName());
                    to.appendChild(copied);
                    copy(element, copied);
                } else if (child instanceof Text text) {
                    to.appendChild(to.getOwnerDocument().createTextNode(text.getData()));
                }
            }
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
