package org.steadwork.letter.pdf;

import com.lowagie.text.pdf.PdfTemplate;
import java.awt.AlphaComposite;
import java.awt.Graphics2D;
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

/** Paints a drawing that may hold anything SVG knows, by way of Batik; words become shapes. Several times slower than {@link DrawingPainter}. */
final class AnyDrawing {

    private AnyDrawing() {
    }

    /**
     * Paints a drawing.
     *
     * @param view its viewBox; the form is as large
     */
    static void paint(Element svg, double[] view, PdfTemplate form) {
        Graphics2D graphics = form.createGraphicsShapes((float) view[2], (float) view[3]);
        graphics.transform(AffineTransform.getTranslateInstance(-view[0], -view[1]));
        paint(shapes(svg, view), graphics);
        graphics.dispose();
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
}
