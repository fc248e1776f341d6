package org.steadwork.bench;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * One thing a calculator asks: its name in the API and the form, what is shown, and what is allowed.
 * Made by the factory methods and the methods that add to it; every such method returns a new input.
 */
public final class Input {

    /** What kind of answer is asked for. */
    public enum Kind {
        NUMBER, WHOLE, CHOICE, YES_NO, ANSWER, TEXT, DATE, TIME, ITEMS, ROWS
    }

    private final Kind kind;
    private final String name;
    private final String label;
    private String hint = "";
    private String unit = "";
    private BigDecimal least;
    private BigDecimal most;
    private int decimals;
    private boolean optional;
    private Object start;
    private Object example;
    private List<Choice> choices = List.of();
    private List<Item> items = List.of();
    private List<Input> columns = List.of();

    private Input(Kind kind, String name, String label) {
        if (!name.matches("[a-zA-Z][a-zA-Z0-9_]*")) {
            throw new IllegalArgumentException("An input's name is letters, digits and underscores, but was " + name);
        }
        this.kind = kind;
        this.name = name;
        this.label = label;
    }

    /** A number in [least, most] with at most {@code decimals} decimals. */
    public static Input number(String name, String label, String unit, double least, double most, int decimals) {
        Input input = new Input(Kind.NUMBER, name, label);
        input.unit = unit;
        input.least = plain(least);
        input.most = plain(most);
        input.decimals = decimals;
        return input;
    }

    /** A whole number in [least, most]. */
    public static Input whole(String name, String label, String unit, int least, int most) {
        Input input = new Input(Kind.WHOLE, name, label);
        input.unit = unit;
        input.least = BigDecimal.valueOf(least);
        input.most = BigDecimal.valueOf(most);
        return input;
    }

    /** One of the answers offered. */
    public static Input choice(String name, String label, List<Choice> choices) {
        Input input = new Input(Kind.CHOICE, name, label);
        input.choices = List.copyOf(choices);
        return input;
    }

    /** Yes or no. */
    public static Input yesNo(String name, String label) {
        return new Input(Kind.YES_NO, name, label);
    }

    /** Yes, no, unknown or not asked; left out it is not asked. */
    public static Input answer(String name, String label) {
        Input input = new Input(Kind.ANSWER, name, label);
        input.start = "not_asked";
        return input;
    }

    /** A text of at most {@code longest} characters. */
    public static Input text(String name, String label, int longest) {
        Input input = new Input(Kind.TEXT, name, label);
        input.most = BigDecimal.valueOf(longest);
        return input;
    }

    /** A day, sent as 2030-12-16. */
    public static Input date(String name, String label) {
        return new Input(Kind.DATE, name, label);
    }

    /** A time of day, sent as 09:30. */
    public static Input time(String name, String label) {
        return new Input(Kind.TIME, name, label);
    }

    /** A list of whole numbers, one an item in their order; an item left out is null and stays unanswered. */
    public static Input items(String name, String label, List<Item> items) {
        Input input = new Input(Kind.ITEMS, name, label);
        input.items = List.copyOf(items);
        return input;
    }

    /** Several rows of the same inputs, from {@code least} to {@code most} of them; the columns hold no rows themselves. */
    public static Input rows(String name, String label, int least, int most, List<Input> columns) {
        if (columns.stream().anyMatch(column -> column.kind == Kind.ROWS)) {
            throw new IllegalArgumentException("Rows hold no rows, but " + name + " does");
        }
        Input input = new Input(Kind.ROWS, name, label);
        input.least = BigDecimal.valueOf(least);
        input.most = BigDecimal.valueOf(most);
        input.columns = List.copyOf(columns);
        return input;
    }

    /** Says in plain words what is meant, such as the posture. */
    public Input hint(String text) {
        Input input = copy();
        input.hint = text;
        return input;
    }

    /** May be left out. */
    public Input optional() {
        Input input = copy();
        input.optional = true;
        return input;
    }

    /** Stands in the form at first, and is taken where the field is left out. */
    public Input startsAt(Object value) {
        Input input = copy();
        input.start = Objects.requireNonNull(value);
        return input;
    }

    /** The value in the worked example; for rows a list of maps, for items a list of whole numbers. */
    public Input example(Object value) {
        Input input = copy();
        input.example = Objects.requireNonNull(value);
        return input;
    }

    public Kind kind() {
        return kind;
    }

    public String name() {
        return name;
    }

    public String label() {
        return label;
    }

    public String hint() {
        return hint;
    }

    public String unit() {
        return unit;
    }

    /** The least value; for rows the fewest of them. */
    public BigDecimal least() {
        return least;
    }

    /** The greatest value; for a text its greatest length, for rows the most of them. */
    public BigDecimal most() {
        return most;
    }

    public int decimals() {
        return decimals;
    }

    /** True when nothing need be entered: said to be optional, or there is a value to start from. */
    public boolean mayBeLeftOut() {
        return optional || start != null || kind == Kind.ITEMS;
    }

    public boolean isOptional() {
        return optional;
    }

    /** The value it starts from, or null. */
    public Object start() {
        return start;
    }

    public List<Choice> choices() {
        return choices;
    }

    public List<Item> items() {
        return items;
    }

    public List<Input> columns() {
        return columns;
    }

    /** The value in the worked example, never null save for an optional input without one. */
    public Object example() {
        if (example != null || start != null) {
            return example != null ? example : start;
        }
        if (optional) {
            return null;
        }
        return switch (kind) {
            case NUMBER, WHOLE -> least;
            case CHOICE -> choices.get(0).value();
            case YES_NO -> false;
            case ANSWER -> "not_asked";
            case TEXT -> "Example";
            case DATE -> "2030-12-16";
            case TIME -> "09:00";
            case ITEMS -> items.stream().map(Item::least).toList();
            case ROWS -> exampleRows();
        };
    }

    private List<Map<String, Object>> exampleRows() {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (int i = 0; i < Math.max(1, least.intValue()); i++) {
            Map<String, Object> row = new LinkedHashMap<>();
            columns.stream().filter(column -> column.example() != null).forEach(column -> row.put(column.name(), column.example()));
            rows.add(row);
        }
        return rows;
    }

    /** What is allowed, in words: "a number from 0 to 63 cm". */
    public String allowed() {
        return switch (kind) {
            case NUMBER -> "a number from " + range() + (decimals == 0 ? "" : " with at most " + decimals + (decimals == 1 ? " decimal" : " decimals"));
            case WHOLE -> "a whole number from " + range();
            case CHOICE -> "one of " + String.join(", ", choices.stream().map(Choice::value).toList());
            case YES_NO -> "yes or no";
            case ANSWER -> "yes, no, unknown or not_asked";
            case TEXT -> "a text of at most " + most + " characters";
            case DATE -> "a date, for example 2030-12-16";
            case TIME -> "a time of day, for example 09:30";
            case ITEMS -> "a list of " + items.size() + " whole numbers, null for an item not answered";
            case ROWS -> "a list of " + least + " to " + most + " rows";
        };
    }

    /** The range with its unit: "0 to 63 cm". */
    public String range() {
        return shown(least) + " to " + shown(most) + (unit.isEmpty() ? "" : " " + unit);
    }

    private static String shown(BigDecimal number) {
        return number.toPlainString().replace('-', '−');
    }

    private static BigDecimal plain(double value) {
        BigDecimal number = BigDecimal.valueOf(value).stripTrailingZeros();
        return number.scale() < 0 ? number.setScale(0) : number;
    }

    private Input copy() {
        Input input = new Input(kind, name, label);
        input.hint = hint;
        input.unit = unit;
        input.least = least;
        input.most = most;
        input.decimals = decimals;
        input.optional = optional;
        input.start = start;
        input.example = example;
        input.choices = choices;
        input.items = items;
        input.columns = columns;
        return input;
    }
}
