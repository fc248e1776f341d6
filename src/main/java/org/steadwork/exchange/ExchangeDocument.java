package org.steadwork.exchange;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.math.BigDecimal;
import java.util.List;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.Components;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.media.Content;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.media.Schema.SchemaType;
import org.eclipse.microprofile.openapi.models.parameters.Parameter;
import org.eclipse.microprofile.openapi.models.responses.APIResponse;
import org.eclipse.microprofile.openapi.models.responses.APIResponses;
import org.eclipse.microprofile.openapi.models.security.SecurityScheme;
import org.steadwork.exchange.fhir.FhirFormat;
import org.steadwork.web.ApiProblem;

/** Writes the routes for other programs into the OpenAPI document: a case as FHIR, and the reporting by token. */
@OpenApiFilter(stages = OpenApiFilter.RunStage.RUNTIME_STARTUP)
public class ExchangeDocument implements OASFilter {

    private static final String SESSION = "session";
    private static final String TOKEN = "token";
    private static final String JSON = "application/json";

    @Override
    public void filterOpenAPI(OpenAPI document) {
        if (document.getPaths() == null) {
            document.setPaths(OASFactory.createPaths());
        }
        if (document.getComponents() == null) {
            document.setComponents(OASFactory.createComponents());
        }
        components(document.getComponents());
        document.getPaths().addPathItem("/api/cases/{id}/fhir", OASFactory.createPathItem().GET(fhir()));
        document.getPaths().addPathItem("/api/report/cases", OASFactory.createPathItem().GET(cases()));
        document.getPaths().addPathItem("/api/report/figures", OASFactory.createPathItem().GET(figures()));
        // the scan finds the same routes with their patterns in the path, which is no path template of OpenAPI
        document.getPaths().getPathItems().keySet().stream().filter(path -> path.contains(": ")).toList().forEach(document.getPaths()::removePathItem);
    }

    private static void components(Components components) {
        components.addSchema("FhirBundle", object("HL7 FHIR R4 (4.0.1) Bundle of type collection; its own standard describes it further.")
                .addProperty("resourceType", text("Bundle").constValue("Bundle")).addProperty("type", text("collection").constValue("collection"))
                .addProperty("timestamp", text("when it was made").format("date-time")).addProperty("entry", list(object("").addProperty("fullUrl", text("urn:uuid of the resource"))
                        .addProperty("resource", object("a resource").addProperty("resourceType", text("")).addRequired("resourceType")).addRequired("fullUrl").addRequired("resource")))
                .addRequired("resourceType").addRequired("type").addRequired("entry"));
        Schema score = closed(object("One filled-in instrument.")).addProperty("instrument", text("key of the instrument")).addProperty("version", text("of the form"))
                .addProperty("scored_on", day("day of filling in")).addProperty("value", nullable(SchemaType.NUMBER, "in unit, not rounded; null when too little was answered"))
                .addProperty("unit", text("%, kg, or empty for points")).addProperty("estimated", typed(SchemaType.BOOLEAN, "true when the instrument's rule filled in items"));
        required(score);
        components.addSchema("ReportScore", score);
        Schema row = closed(object("One case without name, file number or birth date.")).addProperty("case", pseudonym("the case")).addProperty("patient", pseudonym("the patient"))
                .addProperty("age_band", text("years at the opening of the case").enumeration(List.of("under 20", "20 to 29", "30 to 39", "40 to 49", "50 to 59", "60 and over")))
                .addProperty("sex", text("as recorded").enumeration(List.of("female", "male", "not_recorded")))
                .addProperty("regions", list(text("key of a body region"))).addProperty("opened_on", day("opening of the case"))
                .addProperty("closed_on", nullable(SchemaType.STRING, "null while it is open").format("date")).addProperty("close_reason", nullable(SchemaType.STRING, "key; null while it is open"))
                .addProperty("visits_attended", typed(SchemaType.INTEGER, "number of visits").minimum(BigDecimal.ZERO)).addProperty("scores", list(reference("ReportScore")));
        required(row);
        components.addSchema("ReportCase", row);
        Schema page = closed(object("A page of cases.")).addProperty("page", typed(SchemaType.INTEGER, "from 1")).addProperty("size", typed(SchemaType.INTEGER, "rows a page, 1 to 1000"))
                .addProperty("total", typed(SchemaType.INTEGER, "rows in all")).addProperty("rows", list(reference("ReportCase")));
        required(page);
        components.addSchema("ReportPage", page);
        Schema month = closed(object("")).addProperty("month", text("year and month").pattern("^\\d{4}-\\d{2}$")).addProperty("opened", nullable(SchemaType.INTEGER, "cases opened; null when withheld"))
                .addProperty("closed", nullable(SchemaType.INTEGER, "cases closed; null when withheld"));
        required(month);
        Schema figures = closed(object("Counts; small ones are withheld, and with them what would give them away.")).addProperty("fewest_shown", typed(SchemaType.INTEGER, "smallest count shown besides 0"))
                .addProperty("months", list(month));
        required(figures);
        components.addSchema("ReportFigures", figures);
        components.addSecurityScheme(SESSION, OASFactory.createSecurityScheme().type(SecurityScheme.Type.APIKEY).in(SecurityScheme.In.COOKIE).name("steadwork-session")
                .description("The session of somebody signed in."));
        components.addSecurityScheme(TOKEN, OASFactory.createSecurityScheme().type(SecurityScheme.Type.HTTP).scheme("bearer")
                .description("A token that the lead made on Clinic, Tokens for reporting. At most 60 requests a minute."));
    }

    private static Operation fhir() {
        return OASFactory.createOperation().operationId("case-fhir").summary("A case as FHIR R4").addTag("Exchange")
                .description("Everything for the worker; for the reader of a consent in force, what the table of disclosure allows. Every call is in the audit trail.")
                .addParameter(OASFactory.createParameter().name("id").in(Parameter.In.PATH).required(true).schema(typed(SchemaType.INTEGER, "number of the case")))
                .addParameter(query("for", text("worker, or the key of a reader such as employer-12; worker when left out")))
                .addSecurityRequirement(OASFactory.createSecurityRequirement().addScheme(SESSION))
                .responses(responses(List.of("401", "403", "404")).addAPIResponse("200", answer("The bundle.", FhirFormat.JSON_TYPE, reference("FhirBundle"))));
    }

    private static Operation cases() {
        APIResponse answer = answer("A page of rows.", JSON, reference("ReportPage"));
        answer.getContent().addMediaType("text/csv", OASFactory.createMediaType().schema(text("one line for each score, with a header line")));
        return OASFactory.createOperation().operationId("report-cases").summary("Pseudonymous rows of cases").addTag("Reporting")
                .description("Scope cases:read-pseudonymous. Pseudonyms are the same in every answer to one token, and differ between tokens.")
                .addParameter(query("page", typed(SchemaType.INTEGER, "from 1; 1 when left out").minimum(BigDecimal.ONE)))
                .addParameter(query("size", typed(SchemaType.INTEGER, "rows a page; 200 when left out").minimum(BigDecimal.ONE).maximum(BigDecimal.valueOf(1000))))
                .addParameter(query("format", text("json when left out").enumeration(List.of("json", "csv"))))
                .addSecurityRequirement(OASFactory.createSecurityRequirement().addScheme(TOKEN))
                .responses(responses(List.of("401", "403", "422", "429")).addAPIResponse("200", answer));
    }

    private static Operation figures() {
        return OASFactory.createOperation().operationId("report-figures").summary("Cases opened and closed by month").addTag("Reporting")
                .description("Scope figures:read.").addSecurityRequirement(OASFactory.createSecurityRequirement().addScheme(TOKEN))
                .responses(responses(List.of("401", "403", "429")).addAPIResponse("200", answer("The counts.", JSON, reference("ReportFigures"))));
    }

    private static APIResponses responses(List<String> refusals) {
        APIResponses responses = OASFactory.createAPIResponses();
        refusals.forEach(status -> responses.addAPIResponse(status, answer(switch (status) {
            case "401" -> "Not signed in, or the token does not hold.";
            case "403" -> "Not for this account or scope, or no consent in force.";
            case "404" -> "No such case or reader.";
            case "422" -> "A parameter is not what it must be.";
            default -> "Too many requests; the header Retry-After says when, in seconds.";
        }, ApiProblem.TYPE, reference("Problem"))));
        return responses;
    }

    private static APIResponse answer(String words, String type, Schema schema) {
        Content content = OASFactory.createContent().addMediaType(type, OASFactory.createMediaType().schema(schema));
        return OASFactory.createAPIResponse().description(words).content(content);
    }

    private static Parameter query(String name, Schema schema) {
        return OASFactory.createParameter().name(name).in(Parameter.In.QUERY).schema(schema);
    }

    private static void required(Schema object) {
        object.getProperties().keySet().forEach(object::addRequired);
    }

    private static Schema closed(Schema object) {
        return object.additionalPropertiesBoolean(false);
    }

    private static Schema pseudonym(String of) {
        return text("pseudonym of " + of).pattern("^[0-9a-f]{32}$");
    }

    private static Schema day(String words) {
        return text(words).format("date");
    }

    private static Schema object(String words) {
        return typed(SchemaType.OBJECT, words);
    }

    private static Schema text(String words) {
        return typed(SchemaType.STRING, words);
    }

    private static Schema list(Schema of) {
        return OASFactory.createSchema().type(List.of(SchemaType.ARRAY)).items(of);
    }

    private static Schema nullable(SchemaType type, String words) {
        return OASFactory.createSchema().type(List.of(type, SchemaType.NULL)).description(words);
    }

    private static Schema typed(SchemaType type, String words) {
        Schema schema = OASFactory.createSchema().type(List.of(type));
        return words.isEmpty() ? schema : schema.description(words);
    }

    private static Schema reference(String name) {
        return OASFactory.createSchema().ref("#/components/schemas/" + name);
    }
}
