package org.steadwork.bench;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.steadwork.kernel.Answer;

/** Checks a tree of maps, lists, numbers, texts and booleans against a calculator's inputs; the one check of page and API. */
final class InputCheck {

    private static final int LONGEST_SHOWN = 60;

    private final List<FieldProblem> problems = new ArrayList<>();

    private InputCheck() {
    }

    /** Returns the values; throws a {@link CalculatorRefusal} that names every field that is wrong. */
    static Inputs read(List<Input> inputs, Map<String, Object> given) {
        InputCheck check = new InputCheck();
        Inputs values = check.values("", inputs, given);
        if (!check.problems.isEmpty()) {
            throw new CalculatorRefusal(check.problems);
        }
        return values;
    }

    private Inputs values(String prefix, List<Input> inputs, Map<?, ?> given) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (Input input : inputs) {
            Object value = given.get(input.name());
            if (value == null) {
                value = input.start();
            }
            String path = prefix + input.name();
            if (value == null && input.kind() == Input.Kind.ITEMS) {
                value = List.of();
            }
            if (value == null || "".equals(value)) {
                if (!input.isOptional()) {
                    problems.add(new FieldProblem(path, input.label() + " is missing. " + asked(input), "", input.allowed()));
                }
                continue;
            }
            Object read = value(path, input, value);
            if (read != null) {
                values.put(input.name(), read);
            }
        }
        Set<String> known = inputs.stream().map(Input::name).collect(Collectors.toSet());
        for (Object name : given.keySet()) {
            if (!known.contains(name)) {
                String fields = "one of the fields " + inputs.stream().map(Input::name).collect(Collectors.joining(", "));
                problems.add(new FieldProblem(prefix + shown(name), "There is no field of this name.", shown(given.get(name)), fields));
            }
        }
        return new Inputs(prefix, values);
    }

    /** What to do about a missing value, for people: the names of choices are for programs and stand in {@link FieldProblem#allowed}. */
    private static String asked(Input input) {
        return switch (input.kind()) {
            case CHOICE, YES_NO, ANSWER -> "Choose one.";
            default -> "Enter " + input.allowed() + ".";
        };
    }

    /** Returns the value of its kind, or null after noting what is wrong. */
    private Object value(String path, Input input, Object value) {
        return switch (input.kind()) {
            case NUMBER, WHOLE -> number(path, input, value, input.least(), input.most(), input.decimals());
            case CHOICE -> input.choices().stream().map(Choice::value).filter(value::equals).findFirst().map(v -> (Object) v)
                    .orElseGet(() -> wrong(path, input, value));
            case YES_NO -> value instanceof Boolean ? value : wrong(path, input, value);
            case ANSWER -> answer(path, input, value);
            case TEXT -> text(path, input, value);
            case DATE -> date(path, input, value);
            case TIME -> time(path, input, value);
            case ITEMS -> items(path, input, value);
            case ROWS -> rows(path, input, value);
        };
    }

    private Object number(String path, Input input, Object value, BigDecimal least, BigDecimal most, int decimals) {
        if (value instanceof Number given) {
            BigDecimal number = given instanceof BigDecimal exact ? exact : new BigDecimal(given.toString());
            boolean within = number.compareTo(least) >= 0 && number.compareTo(most) <= 0;
            if (within && number.stripTrailingZeros().scale() <= decimals) {
                return number;
            }
        }
        return wrong(path, input, value);
    }

    private Object answer(String path, Input input, Object value) {
        for (Answer answer : Answer.values()) {
            if (answer.name().toLowerCase(Locale.ROOT).equals(value)) {
                return answer;
            }
        }
        return wrong(path, input, value);
    }

    private Object text(String path, Input input, Object value) {
        boolean plain = value instanceof String text && text.length() <= input.most().intValue()
                && text.chars().noneMatch(c -> Character.isISOControl(c) && c != '\n' && c != '\t');
        return plain ? ((String) value).strip() : wrong(path, input, value);
    }

    private Object date(String path, Input input, Object value) {
        try {
            return value instanceof String text ? LocalDate.parse(text) : wrong(path, input, value);
        } catch (DateTimeException e) {
            return wrong(path, input, value);
        }
    }

    private Object time(String path, Input input, Object value) {
        try {
            return value instanceof String text ? LocalTime.parse(text) : wrong(path, input, value);
        } catch (DateTimeException e) {
            return wrong(path, input, value);
        }
    }

    private Object items(String path, Input input, Object value) {
        if (!(value instanceof List<?> list) || list.size() > input.items().size()) {
            return wrong(path, input, value);
        }
        List<Integer> items = new ArrayList<>();
        for (int i = 0; i < input.items().size(); i++) {
            Object one = i < list.size() ? list.get(i) : null;
            Item item = input.items().get(i);
            if (one == null || "".equals(one)) {
                items.add(null);
                continue;
            }
            Input single = Input.whole("item", item.label(), "", item.least(), item.most());
            Object read = number(path + "[" + i + "]", single, one, single.least(), single.most(), 0);
            items.add(read == null ? null : ((BigDecimal) read).intValueExact());
        }
        return items;
    }

    private Object rows(String path, Input input, Object value) {
        if (!(value instanceof List<?> list) || list.size() < input.least().intValue() || list.size() > input.most().intValue()) {
            return wrong(path, input, value);
        }
        List<Inputs> rows = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            String at = path + "[" + i + "]";
            if (list.get(i) instanceof Map<?, ?> row) {
                rows.add(values(at + ".", input.columns(), row));
            } else {
                problems.add(new FieldProblem(at, input.label() + ": row " + (i + 1) + " must be an object.", shown(list.get(i)), "an object"));
            }
        }
        return rows;
    }

    private Object wrong(String path, Input input, Object value) {
        String given = shown(value);
        problems.add(new FieldProblem(path, input.label() + " must be " + input.allowed() + ". You entered “" + given + "”.", given, input.allowed()));
        return null;
    }

    /** Never writes out a number's noughts: 1e999999 stays as short as it came. */
    private static String shown(Object value) {
        String text = value instanceof List<?> list ? "a list of " + list.size() : value instanceof Map ? "an object" : String.valueOf(value);
        return text.length() > LONGEST_SHOWN ? text.substring(0, LONGEST_SHOWN) + "…" : text;
    }
}
