package org.steadwork.drawing.figure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Plain data of a figure by name: numbers, texts, flags, lists and nested values, as they stand in the content file.
 * Immutable. A value of the wrong kind is an {@link IllegalArgumentException} that names it.
 */
final class Values {

    private final Map<String, Object> map;

    Values(Map<String, ?> map) {
        this.map = Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }

    boolean has(String name) {
        return map.get(name) != null;
    }

    Object raw(String name) {
        return map.get(name);
    }

    Set<String> names() {
        return map.keySet();
    }

    double number(String name, double otherwise) {
        Object value = map.get(name);
        return value == null ? otherwise : number(name, value);
    }

    double number(String name) {
        return number(name, map.get(name));
    }

    String text(String name, String otherwise) {
        Object value = map.get(name);
        return value == null ? otherwise : value.toString();
    }

    boolean flag(String name, boolean otherwise) {
        Object value = map.get(name);
        if (value == null) {
            return otherwise;
        }
        if (value instanceof Boolean flag) {
            return flag;
        }
        throw new IllegalArgumentException("'" + name + "' must be true or false, but is " + value);
    }

    /** A list; empty when missing. */
    List<?> list(String name) {
        Object value = map.get(name);
        if (value == null) {
            return List.of();
        }
        if (value instanceof List<?> list) {
            return list;
        }
        throw new IllegalArgumentException("'" + name + "' must be a list, but is " + value);
    }

    double[] numbers(String name) {
        return numbers(name, list(name));
    }

    List<String> texts(String name) {
        return list(name).stream().map(Object::toString).toList();
    }

    /** Nested values; empty when missing. */
    List<Values> nested(String name) {
        List<Values> nested = new ArrayList<>();
        for (Object part : list(name)) {
            nested.add(of(name, part));
        }
        return nested;
    }

    /** One nested entry; empty values when missing. */
    Values one(String name) {
        return has(name) ? of(name, map.get(name)) : new Values(Map.of());
    }

    /** These values with those of another laid over them; a null there takes a name away. */
    Values under(Values over) {
        Map<String, Object> both = new LinkedHashMap<>(map);
        both.putAll(over.map);
        both.values().removeIf(v -> v == null);
        return new Values(both);
    }

    Values with(String name, Object value) {
        Map<String, Object> more = new LinkedHashMap<>(map);
        more.put(name, value);
        return new Values(more);
    }

    Values without(String name) {
        Map<String, Object> fewer = new LinkedHashMap<>(map);
        fewer.remove(name);
        return new Values(fewer);
    }

    Map<String, Object> asMap() {
        return map;
    }

    static double number(String name, Object value) {
        if (value instanceof Number number) {
            return number.doubleValue();
        }
        throw new IllegalArgumentException("'" + name + "' must be a number, but is " + value);
    }

    static double[] numbers(String name, List<?> list) {
        return list.stream().mapToDouble(v -> number(name, v)).toArray();
    }

    private static Values of(String name, Object value) {
        if (!(value instanceof Map<?, ?> inner)) {
            throw new IllegalArgumentException("'" + name + "' must hold named values, but is " + value);
        }
        Map<String, Object> map = new LinkedHashMap<>();
        inner.forEach((k, v) -> map.put(String.valueOf(k), v));
        return new Values(map);
    }
}
