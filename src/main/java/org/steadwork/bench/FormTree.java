package org.steadwork.bench;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;

/** Turns a form into the tree that the API would be sent, and back; a field's name in the form is its path. */
final class FormTree {

    private static final Pattern NUMBER = Pattern.compile("[-−]?\\d{1,9}([.,]\\d{1,9})?");
    private static final Pattern SHORT_TIME = Pattern.compile("\\d:\\d\\d");

    private FormTree() {
    }

    static Map<String, Object> read(List<Input> inputs, Form form) {
        return read("", inputs, form);
    }

    private static Map<String, Object> read(String prefix, List<Input> inputs, Form form) {
        Map<String, Object> tree = new LinkedHashMap<>();
        for (Input input : inputs) {
            String path = prefix + input.name();
            switch (input.kind()) {
                case ROWS -> tree.put(input.name(), rows(path, input, form));
                case ITEMS -> tree.put(input.name(), items(path, input, form));
                default -> {
                    if (form.fields().contains(path)) {
                        tree.put(input.name(), leaf(input, form.value(path).strip()));
                    }
                }
            }
        }
        return tree;
    }

    private static List<Object> rows(String path, Input input, Form form) {
        List<Object> rows = new ArrayList<>();
        for (int i = 0; i < count(path, input, form); i++) {
            rows.add(read(path + "[" + i + "].", input.columns(), form));
        }
        return rows;
    }

    /** The number of rows the form holds, within what is allowed; its field {@code <path>.count} says it. */
    static int count(String path, Input input, Form form) {
        String said = form.value(path + ".count");
        int count = said.matches("\\d{1,3}") ? Integer.parseInt(said) : 1;
        return Math.max(input.least().intValue(), Math.min(input.most().intValue(), count));
    }

    private static List<Object> items(String path, Input input, Form form) {
        List<Object> items = new ArrayList<>();
        for (int i = 0; i < input.items().size(); i++) {
            String text = form.value(path + "[" + i + "]").strip();
            items.add(text.isEmpty() ? null : number(text));
        }
        return items;
    }

    private static Object leaf(Input input, String text) {
        return switch (input.kind()) {
            case NUMBER, WHOLE -> number(text);
            case YES_NO -> text.equals("yes") ? Boolean.TRUE : text.equals("no") ? Boolean.FALSE : text;
            case DATE -> date(text);
            case TIME -> SHORT_TIME.matcher(text).matches() ? "0" + text : text;
            case TEXT -> text.replace("\r\n", "\n");
            default -> text;
        };
    }

    private static Object number(String text) {
        return NUMBER.matcher(text).matches() ? new BigDecimal(text.replace(',', '.').replace('−', '-')) : text;
    }

    private static Object date(String text) {
        try {
            return text.isEmpty() ? text : Dates.parse(text).toString();
        } catch (DateTimeException e) {
            return text;
        }
    }

    /** Writes a tree into a form, as the page does that shows where a calculator starts or its example. */
    static Form write(List<Input> inputs, Map<String, Object> tree) {
        Form form = Form.empty();
        write("", inputs, tree, form);
        return form;
    }

    private static void write(String prefix, List<Input> inputs, Map<?, ?> tree, Form form) {
        for (Input input : inputs) {
            String path = prefix + input.name();
            Object value = tree.get(input.name()) == null ? input.start() : tree.get(input.name());
            if (input.kind() == Input.Kind.ROWS) {
                List<?> rows = value instanceof List<?> list ? list : List.of();
                int count = value == null ? Math.max(1, input.least().intValue()) : rows.size();
                form.with(path + ".count", count);
                for (int i = 0; i < count; i++) {
                    write(path + "[" + i + "].", input.columns(), i < rows.size() ? (Map<?, ?>) rows.get(i) : Map.of(), form);
                }
            } else if (input.kind() == Input.Kind.ITEMS) {
                List<?> items = value instanceof List<?> list ? list : List.of();
                for (int i = 0; i < input.items().size(); i++) {
                    form.with(path + "[" + i + "]", i < items.size() ? items.get(i) : null);
                }
            } else {
                form.with(path, value instanceof Boolean yes ? (yes ? "yes" : "no") : value instanceof BigDecimal number ? number.toPlainString() : value);
            }
        }
    }

    /** Puts the columns of a further row at where they start. */
    static void start(Input rows, int row, Form form) {
        write(rows.name() + "[" + row + "].", rows.columns(), Map.of(), form);
    }
}
