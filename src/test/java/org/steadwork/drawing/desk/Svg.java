package org.steadwork.drawing.desk;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;

import javax.xml.parsers.DocumentBuilderFactory;

import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Reads a drawing back as XML. */
final class Svg {

    private Svg() {
    }

    static Document parse(String svg) {
        try {
            return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        } catch (Exception e) {
            throw new AssertionError("Not well-formed: " + e.getMessage(), e);
        }
    }

    static List<Element> all(Document document, String name) {
        NodeList nodes = document.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    /** No inline style or script and nothing transparent: strict content security policy, PDF/A-1b. */
    static void assertPlain(Document document) {
        for (Element element : all(document, "*")) {
            for (String attribute : List.of("style", "opacity", "fill-opacity", "stroke-opacity", "onclick", "onload")) {
                assertFalse(element.hasAttribute(attribute), element.getTagName() + " has " + attribute);
            }
            assertFalse(List.of("script", "style", "image").contains(element.getTagName()), element.getTagName());
        }
    }
}
