package org.steadwork.exchange.fhir;

import ca.uhn.fhir.context.FhirContext;
import ca.uhn.fhir.parser.DataFormatException;
import ca.uhn.fhir.parser.IParser;
import ca.uhn.fhir.parser.StrictErrorHandler;
import jakarta.enterprise.context.ApplicationScoped;
import org.hl7.fhir.instance.model.api.IBaseResource;
import org.hl7.fhir.r4.model.Bundle;

/** Writes and reads FHIR R4. The library's model is built when first used, since it takes longer than the rest of a start. */
@ApplicationScoped
public class FhirFormat {

    public static final String JSON_TYPE = "application/fhir+json";

    private FhirContext context;

    /** Returns the bundle as JSON, indented so that a person can look into it. */
    public String json(Bundle bundle) {
        return context().newJsonParser().setPrettyPrint(true).encodeResourceToString(bundle);
    }

    /**
     * Reads one resource written as JSON or XML.
     *
     * @throws UnreadableResource with words for people when it is neither, or not FHIR R4
     */
    IBaseResource read(String text) {
        String start = text.stripLeading();
        boolean xml = start.startsWith("<");
        if (!xml && !start.startsWith("{")) {
            throw new UnreadableResource("The file is neither JSON nor XML: it begins with neither { nor <.");
        }
        if (xml) {
            NestedXml.check(text);
        } else {
            NestedJson.check(text);
        }
        IParser parser = xml ? context().newXmlParser() : context().newJsonParser();
        parser.setParserErrorHandler(new StrictErrorHandler());
        try {
            return parser.parseResource(text);
        } catch (DataFormatException | IllegalArgumentException e) {
            throw new UnreadableResource("This is not a FHIR R4 resource that can be read" + reason(e) + ".");
        }
    }

    /** The library's reason without its own number, shortened: it may quote what was sent. */
    private static String reason(Exception e) {
        String words = e.getMessage() == null ? "" : e.getMessage().replaceAll("HAPI-\\d+:\\s*", "").replaceAll("\\s+", " ").replaceAll("\\(for class [^)]*\\)", "").strip();
        words = words.replaceAll("[\\w.]+\\.[A-Z]\\w*Exception:?\\s*", "");
        String cut = words.length() > 160 ? words.substring(0, 160) + "…" : words;
        return cut.isEmpty() ? "" : ": " + cut.replaceAll("[.]$", "");
    }

    private synchronized FhirContext context() {
        if (context == null) {
            context = FhirContext.forR4();
        }
        return context;
    }
}
