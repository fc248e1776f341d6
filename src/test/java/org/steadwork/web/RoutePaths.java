package org.steadwork.web;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Makes addresses of routes out of what stands in a full case, and goes there. */
final class RoutePaths {

    static final Pattern PARAMETER = Pattern.compile("\\{([A-Za-z]+)}");

    private RoutePaths() {
    }

    static String of(Route route, FullCase.Made made, Map<String, String> instead) {
        Map<String, String> values = new LinkedHashMap<>(made.parts());
        values.put("calculator", "screen-breaks");
        values.put("auditForm", "csv");
        values.put("list", "patients");
        values.put("id", route.path().startsWith("/patients") ? made.patient() : made.caseId());
        if (route.path().contains("/sets/")) {
            values.put("key", "achilles");
        }
        values.putAll(instead);
        return PARAMETER.matcher(route.path()).replaceAll(parameter -> {
            String value = values.get(parameter.group(1));
            assertFalse(value == null, "This test does not know what to put for {" + parameter.group(1) + "} of " + route);
            return value;
        });
    }

    /** Opens a route; a post goes with a token of this visitor and nothing else. */
    static Visitor visit(Visitor visitor, Route route, String path) {
        if (route.get()) {
            visitor.open(path);
        } else {
            String token = visitor.open("/sign-in").select("input[name=csrf-token]").val();
            visitor.post(path, Map.of("csrf-token", List.of(token)));
        }
        return visitor;
    }
}
