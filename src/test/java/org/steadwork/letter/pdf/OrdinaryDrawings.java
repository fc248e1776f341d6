package org.steadwork.letter.pdf;

import com.lowagie.text.BadElementException;
import com.lowagie.text.Image;
import com.lowagie.text.pdf.PdfTemplate;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.Map;
import org.apache.batik.anim.dom.SAXSVGDocumentFactory;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.bridge.UserAgentAdapter;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.util.XMLResourceDescriptor;
import org.w3c.dom.Element;
import org.w3c.dom.svg.SVGDocument;
import org.xhtmlrenderer.extend.ReplacedElement;
import org.xhtmlrenderer.extend.UserAgentCallback;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.pdf.ITextFSImage;
import org.xhtmlrenderer.pdf.ITextImageElement;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextReplacedElementFactory;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.RenderingContext;

/**
 * The usual way to set SVG as shapes with Flying Saucer: an image element whose picture Batik paints into a form by OpenPDF's
 * graphics. Written for the benchmark's floor; uses nothing of the product.
 */
final class OrdinaryDrawings extends ITextReplacedElementFactory {

    private final Map<String, String> drawings;

    /** @param drawings SVG documents by the source that an image names */
    OrdinaryDrawings(ITextOutputDevice device, Map<String, String> drawings) {
        super(device);
        this.drawings = drawings;
    }

    @Override
    public ReplacedElement createReplacedElement(LayoutContext context, BlockBox box, UserAgentCallback agent, int cssWidth, int cssHeight) {
        Element element = box.getElement();
        return element == null || !element.getNodeName().equals("img") ? super.createReplacedElement(context, box, agent, cssWidth, cssHeight)
                : new Picture(drawings.get(element.getAttribute("src")), cssWidth);
    }

    private static final class Picture extends ITextImageElement {

        private final GraphicsNode node;
        private final float width;
        private final float height;
        private final int dots;

        Picture(String svg, int dots) {
            super(null);
            this.dots = dots;
            try {
                SVGDocument document = new SAXSVGDocumentFactory(XMLResourceDescriptor.getXMLParserClassName()).createSVGDocument("urn:drawing", new StringReader(svg));
                width = Float.parseFloat(document.getDocumentElement().getAttribute("width"));
                height = Float.parseFloat(document.getDocumentElement().getAttribute("height"));
                node = new GVTBuilder().build(new BridgeContext(new UserAgentAdapter()), document);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        @Override
        public int getIntrinsicWidth() {
            return dots;
        }

        @Override
        public int getIntrinsicHeight() {
            return Math.round(dots * height / width);
        }

        @Override
        public void paint(RenderingContext context, ITextOutputDevice device, BlockBox box) {
            PdfTemplate form = device.getCurrentPage().createTemplate(width, height);
            Graphics2D graphics = form.createGraphicsShapes(width, height);
            node.paint(graphics);
            graphics.dispose();
            Rectangle edge = box.getContentAreaEdge(box.getAbsX(), box.getAbsY(), context);
            try {
                device.drawImage(new ITextFSImage(Image.getInstance(form)).scale(getIntrinsicWidth(), getIntrinsicHeight()), edge.x, edge.y);
            } catch (BadElementException e) {
                throw new IllegalStateException(e);
            }
        }
    }
}
