package org.steadwork.letter.pdf;

import java.nio.charset.StandardCharsets;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;

/** The metadata packet of a PDF/A-1b file (ISO 19005-1, 6.7); its values repeat the document information word for word. */
final class Xmp {

    private Xmp() {
    }

    static byte[] packet(String title, String author, String madeBy, ZonedDateTime made) {
        String date = DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm:ss'+00:00'").format(made);
        return """
                <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
                <x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
                <rdf:Description rdf:about="" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"><pdfaid:part>1</pdfaid:part>\
                <pdfaid:conformance>B</pdfaid:conformance></rdf:Description>
                <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"><dc:format>application/pdf</dc:format>\
                <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>\
                <dc:creator><rdf:Seq><rdf:li>%s</rdf:li></rdf:Seq></dc:creator></rdf:Description>
                <rdf:Description rdf:about="" xmlns:pdf="http://ns.adobe.com/pdf/1.3/"><pdf:Producer>%s</pdf:Producer></rdf:Description>
                <rdf:Description rdf:about="" xmlns:xmp="http://ns.adobe.com/xap/1.0/"><xmp:CreatorTool>%s</xmp:CreatorTool>\
                <xmp:CreateDate>%s</xmp:CreateDate><xmp:ModifyDate>%s</xmp:ModifyDate></rdf:Description>
                </rdf:RDF></x:xmpmeta>
                <?xpacket end="w"?>""".formatted(escaped(title), escaped(author), madeBy, madeBy, date, date)
                .getBytes(StandardCharsets.UTF_8);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
