package org.steadwork.bench;

import java.util.ArrayList;
import java.util.List;
import org.steadwork.web.Option;

/** One input as its form shows it, under its path; rows and items hold the fields of their own. */
public record FieldView(Input input, String path, List<List<FieldView>> rows) {

    private static final int LONG_TEXT = 120;
    private static final int MANY = 6;
    /** A longer answer needs a line of its own. */
    private static final int LONG_LABEL = 20;

    static FieldView of(Input input, String path, int count) {
        List<List<FieldView>> rows = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String at = path + "[" + i + "].";
            rows.add(input.columns().stream().map(column -> of(column, at + column.name(), 0)).toList());
        }
        return new FieldView(input, path, rows);
    }

    /** How the form asks: one of number, pick, select, choice, date, text, words, items, rows. */
    public String shape() {
        return switch (input.kind()) {
            case NUMBER, WHOLE -> "number";
            case CHOICE -> needsLines() ? "pick" : input.choices().size() > MANY ? "select" : "choice";
            case YES_NO, ANSWER -> "choice";
            case DATE, TIME -> "date";
            case TEXT -> input.most().intValue() > LONG_TEXT ? "words" : "text";
            case ITEMS -> "items";
            case ROWS -> "rows";
        };
    }

    private boolean needsLines() {
        return input.choices().stream().anyMatch(choice -> !choice.description().isEmpty() || !choice.drawing().isEmpty()
                || input.choices().size() <= MANY && choice.label().length() > LONG_LABEL);
    }

    /** The hint with the range, so that what is allowed stands there before anything is refused. */
    public String hint() {
        String hint = input.hint();
        if (input.kind() == Input.Kind.NUMBER || input.kind() == Input.Kind.WHOLE) {
            return (hint.isEmpty() ? "" : hint + " ") + capital(input.range()) + ".";
        }
        boolean alone = !path.contains("[");
        return hint.isEmpty() && input.kind() == Input.Kind.TIME && alone ? "For example 09:30." : hint.isEmpty() ? null : hint;
    }

    /** The unit, or null where there is none. */
    public String unit() {
        return input.unit().isEmpty() ? null : input.unit();
    }

    public List<Option> options() {
        return switch (input.kind()) {
            case YES_NO -> List.of(new Option("yes", "Yes"), new Option("no", "No"));
            case ANSWER -> List.of(new Option("yes", "Yes"), new Option("no", "No"), new Option("unknown", "Unknown"), new Option("not_asked", "Not asked"));
            default -> input.choices().stream().map(choice -> new Option(choice.value(), choice.label())).toList();
        };
    }

    public List<FieldView> items() {
        List<FieldView> items = new ArrayList<>();
        for (int i = 0; i < input.items().size(); i++) {
            Item item = input.items().get(i);
            items.add(of(Input.whole("item", item.label(), "", item.least(), item.most()).optional(), path + "[" + i + "]", 0));
        }
        return items;
    }

    public boolean mayGrow() {
        return rows.size() < input.most().intValue();
    }

    public boolean mayShrink() {
        return rows.size() > input.least().intValue();
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
