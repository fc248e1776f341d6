package org.steadwork.exposure;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import org.steadwork.content.Entry;

/** One test vector: its inputs and what is expected, both as {@code key=value} pairs or bare words. */
record Vector(String method, String id, Map<String, String> inputs, Map<String, String> expected) {

    static Vector of(Entry row) {
        return new Vector(row.text("method"), row.text("id"), pairs(row.text("inputs")), pairs(row.text("expected")));
    }

    double in(String key) {
        return number(inputs, key);
    }

    int whole(String key) {
        return (int) in(key);
    }

    double expects(String key) {
        return number(expected, key);
    }

    boolean expectsWord(String word) {
        return expected.containsKey(word);
    }

    double[] list(String key) {
        return Arrays.stream(inputs.get(key).split("\\|")).mapToDouble(Double::parseDouble).toArray();
    }

    /** Half of the last digit with which a value is printed. */
    double tolerance(String key) {
        String text = expected.get(key);
        int point = text.indexOf('.');
        return point < 0 ? 0 : 0.5 * Math.pow(10, point + 1 - text.length()) + 1e-9;
    }

    private static double number(Map<String, String> pairs, String key) {
        if (!pairs.containsKey(key)) {
            throw new AssertionError("The vector has no '" + key + "': " + pairs);
        }
        return Double.parseDouble(pairs.get(key));
    }

    private static Map<String, String> pairs(String text) {
        Map<String, String> pairs = new LinkedHashMap<>();
        for (String part : text.split(";")) {
            int equals = part.indexOf('=');
            pairs.put(equals < 0 ? part : part.substring(0, equals), equals < 0 ? "" : part.substring(equals + 1));
        }
        return pairs;
    }

    @Override
    public String toString() {
        return method + " " + id;
    }
}
