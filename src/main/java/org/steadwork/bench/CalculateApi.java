package org.steadwork.bench;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.steadwork.web.ApiProblem;

/** The calculators for machines: values as JSON in, the answer as JSON out; nothing is stored. */
@Path("/api/calculate/{calculator: .+}")
@RolesAllowed("clinician")
class CalculateApi {

    /** No calculator needs more, in bytes. */
    static final int LARGEST_BODY = 64 * 1024;
    /** Exact numbers, and nothing that a careful reader of JSON would have to guess at. */
    private static final ObjectMapper JSON = JsonMapper.builder().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.USE_BIG_INTEGER_FOR_INTS).enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).disable(JsonParser.Feature.ALLOW_NON_NUMERIC_NUMBERS).build();

    @Inject
    Calculators calculators;

    @POST
    @Consumes(MediaType.WILDCARD)
    @Produces(MediaType.APPLICATION_JSON)
    public Response calculate(@PathParam("calculator") String key, InputStream body) throws IOException {
        Optional<Calculator> calculator = calculators.named(key);
        if (calculator.isEmpty()) {
            return ApiProblem.of(404, "No such calculator", "The document at /q/openapi lists the calculators.").answer();
        }
        byte[] sent = body.readNBytes(LARGEST_BODY + 1);
        if (sent.length > LARGEST_BODY) {
            return ApiProblem.of(413, "Too much", "Send at most " + LARGEST_BODY + " bytes.").answer();
        }
        Map<String, Object> given;
        try {
            if (!(JSON.readValue(sent, Object.class) instanceof Map<?, ?> object)) {
                return ApiProblem.of(400, "Not an object", "Send one JSON object with the values by their names.").answer();
            }
            given = new LinkedHashMap<>();
            object.forEach((name, value) -> given.put((String) name, value));
        } catch (JsonProcessingException e) {
            String where = e.getLocation() == null ? "" : " at line " + e.getLocation().getLineNr() + ", column " + e.getLocation().getColumnNr();
            return ApiProblem.of(400, "Not JSON", "The body could not be read as JSON" + where + ".").answer();
        } catch (NumberFormatException e) {
            return ApiProblem.of(400, "Not JSON", "The body holds a number that is no number that can be read.").answer();
        }
        try {
            return Response.ok(AnswerDocument.of(calculator.get(), calculators.answer(calculator.get(), given))).header("Cache-Control", "no-store").build();
        } catch (CalculatorRefusal refusal) {
            return ApiProblem.of(422, "Cannot be computed", refusal.problems().size() == 1 ? refusal.problems().get(0).reason()
                    : refusal.problems().size() + " values need another look.").errors(refusal.problems()).answer();
        }
    }
}
