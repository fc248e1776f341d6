package org.steadwork.web;

import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What was typed into a form, what is wrong with it, and, when somebody saved in between, what is stored now.
 * Values are kept exactly as typed, so that a page shown again loses nothing.
 * A method that reads a value returns null when the field is empty or wrong; a wrong one has its error noted here.
 */
public final class Form {

    /** One error: the field it belongs to and what to do about it. */
    public record Problem(String field, String message) {
    }

    private static final int LONGEST_TEXT = 20_000;

    private final MultivaluedMap<String, String> values;
    private final Map<String, String> errors = new LinkedHashMap<>();
    private final Map<String, String> stored = new LinkedHashMap<>();
    private boolean conflict;

    private Form(MultivaluedMap<String, String> values) {
        this.values = values;
    }

    public static Form empty() {
        return new Form(new MultivaluedHashMap<>());
    }

    public static Form of(MultivaluedMap<String, String> posted) {
        return new Form(posted);
    }

    /** Puts a value in, as a page does that shows what is stored; null stands for an empty field. */
    public Form with(String field, Object value) {
        values.putSingle(field, value == null ? "" : value.toString());
        return this;
    }

    public Form withAll(String field, List<String> chosen) {
        values.put(field, new ArrayList<>(chosen));
        return this;
    }

    /** Returns what stands in the field, never null. */
    public String value(String field) {
        String value = values.getFirst(field);
        return value == null ? "" : value;
    }

    public List<String> values(String field) {
        return values.getOrDefault(field, List.of());
    }

    /** Returns the names of all fields that were posted or put in. */
    public List<String> fields() {
        return List.copyOf(values.keySet());
    }

    public boolean is(String field, String value) {
        return values(field).contains(value);
    }

    public boolean has(String field) {
        return !value(field).isBlank();
    }

    public void error(String field, String message) {
        errors.putIfAbsent(field, message);
    }

    /** Takes over the errors noted in another form, when its page is shown with other values. */
    public Form errorsOf(Form other) {
        other.errors.forEach(this::error);
        return this;
    }

    /** Returns the error of a field, or null. */
    public String error(String field) {
        return errors.get(field);
    }

    public boolean hasErrors() {
        return !errors.isEmpty();
    }

    public List<Problem> problems() {
        return errors.entrySet().stream().map(e -> new Problem(e.getKey(), e.getValue())).toList();
    }

    /** Notes that somebody saved meanwhile; {@code now} holds what is stored, field by field. */
    public Form conflictsWith(Form now, int storedVersion) {
        conflict = true;
        for (String field : now.fields()) {
            if (!now.value(field).equals(value(field))) {
                stored.put(field, now.value(field));
            }
        }
        values.putSingle("version", String.valueOf(storedVersion));
        return this;
    }

    /** Returns the fields whose names begin with a prefix as a form of their own, without it. */
    public Form part(String prefix) {
        Form part = empty();
        values.forEach((field, all) -> {
            if (field.startsWith(prefix)) {
                part.values.put(field.substring(prefix.length()), new ArrayList<>(all));
            }
        });
        return part;
    }

    /** Takes over the values and errors of a form, each field with a prefix before its name. */
    public Form withPart(String prefix, Form part) {
        part.values.forEach((field, all) -> values.put(prefix + field, new ArrayList<>(all)));
        part.errors.forEach((field, message) -> error(prefix + field, message));
        return this;
    }

    public boolean conflict() {
        return conflict;
    }

    /** Returns what is stored now in a field that differs from what was typed, or null. */
    public String stored(String field) {
        return stored.get(field);
    }

    public Map<String, String> allStored() {
        return stored;
    }

    public String text(String field) {
        return text(field, LONGEST_TEXT);
    }

    /** Reads a text of at most {@code longest} characters; control characters other than line ends are refused. */
    public String text(String field, int longest) {
        String text = value(field).replace("\r\n", "\n").strip();
        if (text.length() > longest) {
            error(field, "At most " + longest + " characters. You entered " + text.length() + ".");
            return null;
        }
        if (text.chars().anyMatch(c -> Character.isISOControl(c) && c != '\n' && c != '\t')) {
            error(field, "This text holds a character that cannot be stored. Type it again without it.");
            return null;
        }
        return text.isEmpty() ? null : text;
    }

    public String requiredText(String field, String label, int longest) {
        String text = text(field, longest);
        if (text == null && error(field) == null) {
            error(field, label + " is missing.");
        }
        return text;
    }

    /** Reads a date as 2030-03-04, 4 Mar 2030, 4.3.2030 or 4/3/2030 (day first). */
    public LocalDate date(String field, String label) {
        String text = value(field).strip();
        if (text.isEmpty()) {
            return null;
        }
        try {
            return Dates.parse(text);
        } catch (DateTimeException e) {
            error(field, label + " must be a date, for example 4 Mar 2030. You entered “" + shortened(text) + "”.");
            return null;
        }
    }

    public LocalDate requiredDate(String field, String label) {
        LocalDate date = date(field, label);
        if (date == null && error(field) == null) {
            error(field, label + " is missing. Enter a date, for example 4 Mar 2030.");
        }
        return date;
    }

    /** Reads a whole number in [least, most]. */
    public Integer integer(String field, String label, int least, int most) {
        BigDecimal number = decimal(field, label, BigDecimal.valueOf(least), BigDecimal.valueOf(most), 0, "");
        return number == null ? null : number.intValueExact();
    }

    /**
     * Reads a number in [least, most] with at most {@code places} decimals; comma and point are both taken as decimal mark.
     *
     * @param unit shown in the message, may be empty
     */
    public BigDecimal decimal(String field, String label, BigDecimal least, BigDecimal most, int places, String unit) {
        String text = value(field).strip();
        if (text.isEmpty()) {
            return null;
        }
        String allowed = label + " must be a " + (places == 0 ? "whole number" : "number") + " from " + least.toPlainString()
                + " to " + most.toPlainString() + (unit.isEmpty() ? "" : " " + unit) + ". You entered “" + shortened(text) + "”.";
        if (!text.matches("[-−]?\\d{1,9}([.,]\\d{1,9})?")) {
            error(field, allowed);
            return null;
        }
        BigDecimal number = new BigDecimal(text.replace(',', '.').replace('−', '-'));
        if (number.compareTo(least) < 0 || number.compareTo(most) > 0) {
            error(field, allowed);
            return null;
        }
        if (number.stripTrailingZeros().scale() > places) {
            error(field, label + (places == 0 ? " must be a whole number." : " may have at most " + places + " decimals.")
                    + " You entered “" + shortened(text) + "”.");
            return null;
        }
        return number;
    }

    /** Reads one of an enum's constants by its lower-case name. */
    public <E extends Enum<E>> E choice(String field, String label, Class<E> type) {
        String text = value(field).strip();
        if (text.isEmpty()) {
            return null;
        }
        for (E constant : type.getEnumConstants()) {
            if (constant.name().toLowerCase(Locale.ROOT).equals(text)) {
                return constant;
            }
        }
        error(field, label + ": choose one of the answers offered.");
        return null;
    }

    public <E extends Enum<E>> E requiredChoice(String field, String label, Class<E> type) {
        E choice = choice(field, label, type);
        if (choice == null && error(field) == null) {
            error(field, label + " is missing. Choose one.");
        }
        return choice;
    }

    public boolean ticked(String field) {
        return values.containsKey(field) && !value(field).isBlank();
    }

    /** Returns the version of the stored thing that the page was made from; -1 when it is missing or not a number. */
    public int version() {
        return Optional.ofNullable(values.getFirst("version")).filter(v -> v.matches("\\d{1,9}")).map(Integer::valueOf).orElse(-1);
    }

    private static String shortened(String text) {
        return text.length() > 40 ? text.substring(0, 40) + "…" : text;
    }
}
