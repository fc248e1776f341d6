package org.steadwork.exchange.fhir;

import java.io.StringReader;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Walks through XML before it is taken in: well-formed, not too deep, and without a document type, which could draw in other files or blow itself up. */
final class NestedXml {

    private static final int DEEPEST = 60;

    private NestedXml() {
    }

    static void check(String text) {
        if (text.contains("<!DOCTYPE") || text.contains("<!ENTITY")) {
            throw new UnreadableResource("The XML declares a document type or entities. A FHIR resource has none; it was not read.");
        }
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        try {
            XMLStreamReader reader = factory.createXMLStreamReader(new StringReader(text));
            int depth = 0;
            while (reader.hasNext()) {
                int event = reader.next();
                depth += event == XMLStreamConstants.START_ELEMENT ? 1 : event == XMLStreamConstants.END_ELEMENT ? -1 : 0;
                if (depth > DEEPEST) {
                    throw new UnreadableResource("The XML is nested too deeply; no resource is.");
                }
            }
        } catch (XMLStreamException e) {
            throw new UnreadableResource("The XML cannot be read at line " + e.getLocation().getLineNumber() + ", column " + e.getLocation().getColumnNumber() + ": it is broken.");
        }
    }
}
