package org.steadwork.exchange.fhir;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;

/** Walks through JSON before it is taken in: depth, length of numbers and names bounded, no name twice in one object, nothing after its end. */
final class NestedJson {

    /** Deeper than any resource that makes sense, and far from where a parser runs out of stack. */
    private static final int DEEPEST = 60;
    private static final JsonFactory STRICT = JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(DEEPEST).maxNumberLength(60).maxNameLength(200).build()).build();

    private NestedJson() {
    }

    static void check(String text) {
        try (JsonParser parser = STRICT.createParser(text)) {
            int depth = 0;
            do {
                var token = parser.nextToken();
                if (token == null) {
                    throw new UnreadableResource("The JSON ends before it is whole.");
                }
                depth += token.isStructStart() ? 1 : token.isStructEnd() ? -1 : 0;
            } while (depth > 0);
            if (parser.nextToken() != null) {
                throw new UnreadableResource("The JSON goes on after its end: send one resource.");
            }
        } catch (IOException e) {
            String where = e instanceof JsonProcessingException broken && broken.getLocation() != null
                    ? " at line " + broken.getLocation().getLineNr() + ", column " + broken.getLocation().getColumnNr() : "";
            throw new UnreadableResource("The JSON cannot be read" + where + ": it is broken, nested too deeply, or names something twice.");
        }
    }
}
