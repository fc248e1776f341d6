package org.steadwork.content;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One entry of a content file with the place it stands at, so that whoever reads it can say what is wrong where.
 * Values are texts, lists of texts, or nested entries; the feature that owns the content makes its own types of them.
 */
public final class Entry {

    private final String file;
    private final int line;
    private final Map<String, Object> values;

    Entry(String file, int line, Map<String, Object> values) {
        this.file = file;
        this.line = line;
        this.values = new LinkedHashMap<>(values);
    }

    public String file() {
        return file;
    }

    public int line() {
        return line;
    }

    public Set<String> keys() {
        return values.keySet();
    }

    /** Makes the exception that stops the start; the caller throws it. */
    public ContentException problem(String reason) {
        return new ContentException(file, line, reason);
    }

    public boolean has(String key) {
        Object value = values.get(key);
        return value != null && !(value instanceof String text && text.isBlank());
    }

    /** Returns the text of a key that must be there and not blank. */
    public String text(String key) {
        return optionalText(key).orElseThrow(() -> problem("'" + key + "' is missing"));
    }

    public Optional<String> optionalText(String key) {
        Object value = values.get(key);
        if (value == null) {
            return Optional.empty();
        }
        if (!(value instanceof String text)) {
            throw problem("'" + key + "' must be a text");
        }
        return text.isBlank() ? Optional.empty() : Optional.of(text.strip());
    }

    /** Returns a finite number; a comma as decimal mark is refused. */
    public double number(String key) {
        String text = text(key);
        try {
            double number = Double.parseDouble(text);
            if (!Double.isFinite(number)) {
                throw problem("'" + key + "' must be a finite number, but is " + text);
            }
            return number;
        } catch (NumberFormatException e) {
            throw problem("'" + key + "' must be a number, but is '" + text + "'");
        }
    }

    public int integer(String key) {
        String text = text(key);
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException e) {
            throw problem("'" + key + "' must be a whole number, but is '" + text + "'");
        }
    }

    /** Returns true for yes, true; false for no, false and for a missing key; anything else is a wrong entry. */
    public boolean flag(String key) {
        String text = optionalText(key).orElse("no").toLowerCase(Locale.ROOT);
        return switch (text) {
            case "yes", "true" -> true;
            case "no", "false" -> false;
            default -> throw problem("'" + key + "' must be yes or no, but is '" + text + "'");
        };
    }

    /** Returns the constant whose name, in lower case, is the text. */
    public <E extends Enum<E>> E constant(String key, Class<E> type) {
        String text = text(key);
        for (E constant : type.getEnumConstants()) {
            if (constant.name().toLowerCase(Locale.ROOT).equals(text)) {
                return constant;
            }
        }
        throw problem("'" + key + "' must be one of " + Arrays.toString(type.getEnumConstants()).toLowerCase(Locale.ROOT)
                + ", but is '" + text + "'");
    }

    /** Returns a list of texts: a YAML list, or a text whose parts stand between semicolons; empty when missing. */
    public List<String> texts(String key) {
        Object value = values.get(key);
        List<String> texts = new ArrayList<>();
        if (value instanceof String text) {
            for (String part : text.split(";")) {
                if (!part.isBlank()) {
                    texts.add(part.strip());
                }
            }
        } else if (value instanceof List<?> list) {
            for (Object part : list) {
                if (!(part instanceof String text)) {
                    throw problem("'" + key + "' must be a list of texts");
                }
                texts.add(text.strip());
            }
        } else if (value != null) {
            throw problem("'" + key + "' must be a list of texts");
        }
        return List.copyOf(texts);
    }

    /** Returns nested entries (a YAML list of maps); empty when missing. */
    public List<Entry> entries(String key) {
        Object value = values.get(key);
        if (value == null) {
            return List.of();
        }
        if (!(value instanceof List<?> list) || !list.stream().allMatch(Entry.class::isInstance)) {
            throw problem("'" + key + "' must be a list of entries");
        }
        return list.stream().map(Entry.class::cast).toList();
    }

    /** Returns the nested entry (a YAML map) of a key, if it is there. */
    public Optional<Entry> entry(String key) {
        Object value = values.get(key);
        if (value == null) {
            return Optional.empty();
        }
        if (!(value instanceof Entry entry)) {
            throw problem("'" + key + "' must be a map");
        }
        return Optional.of(entry);
    }

    /** Returns texts and nested entries in any mixture, as {@code String} and {@code Entry}: a list, or one alone; empty when missing. */
    public List<Object> parts(String key) {
        Object value = values.get(key);
        if (value == null) {
            return List.of();
        }
        return value instanceof List<?> list ? List.copyOf(list) : List.of(value);
    }
}
