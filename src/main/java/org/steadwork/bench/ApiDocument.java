package org.steadwork.bench;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import jakarta.enterprise.inject.spi.CDI;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.eclipse.microprofile.openapi.models.Paths;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.media.Schema.SchemaType;
import org.eclipse.microprofile.openapi.models.responses.APIResponse;
import org.eclipse.microprofile.openapi.models.responses.APIResponses;
import org.steadwork.web.ApiProblem;

/**
 * Writes every calculator into the OpenAPI document, one path each. It does so when the document is asked for, which is seldom, and
 * not at every start.
 */
@OpenApiFilter(stages = OpenApiFilter.RunStage.RUNTIME_PER_REQUEST)
public class ApiDocument implements OASFilter {

    private static final String FOLDER = "/api/calculate/";
    private static final String ANSWER = "CalculatorAnswer";
    private static final String PROBLEM = "Problem";

    @Override
    public void filterOpenAPI(OpenAPI document) {
        Paths paths = OASFactory.createPaths();
        Map<String, PathItem> found = document.getPaths() == null ? Map.of() : document.getPaths().getPathItems();
        found.forEach((path, item) -> {
            if (!path.startsWith(FOLDER)) {
                paths.addPathItem(path, item);
            }
        });
        for (Calculator calculator : CDI.current().select(Calculators.class).get().all()) {
            paths.addPathItem(FOLDER + calculator.key(), OASFactory.createPathItem().POST(operation(calculator)));
        }
        document.setPaths(paths);
        if (document.getComponents() == null) {
            document.setComponents(OASFactory.createComponents());
        }
        document.getComponents().addSchema(ANSWER, answer()).addSchema(PROBLEM, problem());
    }

    private static Operation operation(Calculator calculator) {
        String words = calculator.question() + " Limits: " + String.join(" ", calculator.limits()) + " Standing: " + calculator.standing() + " Sources: "
                + String.join("; ", calculator.sources());
        APIResponses responses = OASFactory.createAPIResponses().addAPIResponse("200", response("The answer; nothing is stored.", "application/json", ANSWER));
        new TreeMap<>(Map.of("400", "Not JSON, or not one object.", "401", "Not signed in.", "403", "Not for this account.", "413", "Too much.",
                "415", "Not application/json.", "422", "A value is missing, of the wrong kind or out of range; errors names the fields."))
                .forEach((status, what) -> responses.addAPIResponse(status, response(what, ApiProblem.TYPE, PROBLEM)));
        return OASFactory.createOperation().operationId(calculator.key().replace('/', '-')).summary(calculator.title()).description(words)
                .addTag(calculator.group().label()).responses(responses)
                .requestBody(OASFactory.createRequestBody().required(true).content(OASFactory.createContent().addMediaType("application/json",
                        OASFactory.createMediaType().schema(CalculatorSchema.of(calculator.inputs())).example(calculator.example()))));
    }

    private static APIResponse response(String words, String type, String schema) {
        return OASFactory.createAPIResponse().description(words).content(OASFactory.createContent().addMediaType(type,
                OASFactory.createMediaType().schema(OASFactory.createSchema().ref("#/components/schemas/" + schema))));
    }

    private static Schema answer() {
        return object().description("What the calculator answers; result holds the values not rounded.")
                .addProperty("calculator", text()).addProperty("title", text()).addProperty("limits", list(text())).addProperty("standing", text())
                .addProperty("headlines", list(object().addProperty("label", text()).addProperty("value", text()).addProperty("unit", text())))
                .addProperty("band", text()).addProperty("mark", text()).addProperty("result", object())
                .addProperty("working", list(object().addProperty("what", text()).addProperty("rule", text()).addProperty("value", text())
                        .addProperty("unit", text())))
                .addProperty("notes", list(text())).addProperty("drawing", OASFactory.createSchema().type(List.of(SchemaType.STRING, SchemaType.NULL)))
                .addProperty("sources", list(text()));
    }

    private static Schema problem() {
        return object().description("RFC 9457").addProperty("type", text()).addProperty("title", text())
                .addProperty("status", OASFactory.createSchema().type(List.of(SchemaType.INTEGER))).addProperty("detail", text())
                .addProperty("errors", list(object().addProperty("field", text()).addProperty("reason", text()).addProperty("given", text())
                        .addProperty("allowed", text())));
    }

    private static Schema object() {
        return OASFactory.createSchema().type(List.of(SchemaType.OBJECT));
    }

    private static Schema text() {
        return OASFactory.createSchema().type(List.of(SchemaType.STRING));
    }

    private static Schema list(Schema of) {
        return OASFactory.createSchema().type(List.of(SchemaType.ARRAY)).items(of);
    }
}
