package org.steadwork.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Bodies for the operations of the API's own document: of the shape it asks for, with something wrong in them. */
final class SchemaInputs {

    /** One operation that takes a body. */
    record Operation(String path, JsonNode schema) {
    }

    private static final int DEEPEST = 6;
    private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;

    private final JsonNode document;
    private final Random random;

    SchemaInputs(String document, Random random) {
        try {
            this.document = new ObjectMapper().readTree(document);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(e);
        }
        this.random = random;
    }

    List<Operation> operations() {
        List<Operation> operations = new ArrayList<>();
        for (Map.Entry<String, JsonNode> path : document.path("paths").properties()) {
            JsonNode post = path.getValue().path("post");
            if (!post.isMissingNode()) {
                operations.add(new Operation(path.getKey(), post.path("requestBody").path("content").path("application/json").path("schema")));
            }
        }
        return operations;
    }

    /** Makes a body; now and then one that is no JSON at all. */
    String body(JsonNode schema) {
        int kind = random.nextInt(30);
        if (kind == 0) {
            return HostileValues.any(random);
        }
        if (kind == 1) {
            return "[".repeat(3000);
        }
        if (kind == 2) {
            return "{\"a\":".repeat(3000);
        }
        String body = value(schema, DEEPEST).toString();
        return kind == 3 ? body.substring(0, random.nextInt(body.length() + 1)) : kind == 4 ? body.replaceFirst("\\d+(\\.\\d+)?", "NaN") : body;
    }

    private JsonNode value(JsonNode asked, int deeper) {
        JsonNode schema = resolved(asked);
        if (random.nextInt(6) == 0 || deeper == 0) {
            return wrong();
        }
        for (String several : List.of("oneOf", "anyOf", "allOf")) {
            if (schema.has(several) && !schema.get(several).isEmpty()) {
                return value(schema.get(several).get(random.nextInt(schema.get(several).size())), deeper - 1);
            }
        }
        if (schema.has("enum") && !schema.get("enum").isEmpty()) {
            return schema.get("enum").get(random.nextInt(schema.get("enum").size()));
        }
        JsonNode type = schema.path("type");
        return switch (type.isArray() ? type.get(0).asText() : type.asText(schema.has("properties") ? "object" : "string")) {
            case "object" -> object(schema, deeper);
            case "array" -> array(schema, deeper);
            case "integer" -> MAKE.numberNode(random.nextInt(200) - 20);
            case "number" -> MAKE.numberNode(Math.round(random.nextGaussian() * 50 + 60) / 2.0);
            case "boolean" -> MAKE.booleanNode(random.nextBoolean());
            default -> MAKE.textNode(random.nextBoolean() ? "2026-03-04" : HostileValues.any(random));
        };
    }

    private ObjectNode object(JsonNode schema, int deeper) {
        ObjectNode object = MAKE.objectNode();
        for (Map.Entry<String, JsonNode> property : schema.path("properties").properties()) {
            if (random.nextInt(12) > 0) {
                object.set(property.getKey(), value(property.getValue(), deeper - 1));
            }
        }
        if (random.nextInt(10) == 0) {
            object.set(HostileValues.any(random), wrong());
        }
        return object;
    }

    private ArrayNode array(JsonNode schema, int deeper) {
        ArrayNode array = MAKE.arrayNode();
        int size = random.nextInt(20) == 0 ? 2000 : random.nextInt(8);
        for (int i = 0; i < size; i++) {
            array.add(size > 100 ? wrong() : value(schema.path("items"), deeper - 1));
        }
        return array;
    }

    private JsonNode wrong() {
        return switch (random.nextInt(9)) {
            case 0 -> MAKE.nullNode();
            case 1 -> MAKE.booleanNode(true);
            case 2 -> MAKE.numberNode(random.nextLong());
            case 3 -> MAKE.numberNode(new BigDecimal("1e400"));
            case 4 -> MAKE.numberNode(-random.nextDouble() * 1e9);
            case 5 -> MAKE.objectNode();
            case 6 -> MAKE.arrayNode();
            default -> MAKE.textNode(HostileValues.any(random));
        };
    }

    private JsonNode resolved(JsonNode schema) {
        JsonNode now = schema;
        for (int i = 0; i < DEEPEST && now.has("$ref"); i++) {
            now = document.at(now.get("$ref").asText().substring(1));
        }
        return now;
    }
}
