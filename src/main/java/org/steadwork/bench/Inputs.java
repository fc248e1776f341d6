package org.steadwork.bench;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NoSuchElementException;
import org.steadwork.kernel.Answer;

/** The values given to a calculator, each of its kind and within its range. A method that reads one that was left out throws. */
public final class Inputs {

    private final String prefix;
    private final Map<String, Object> values;

    /** @param prefix what stands before the names in paths: empty, or {@code lifts[1].} */
    Inputs(String prefix, Map<String, Object> values) {
        this.prefix = prefix;
        this.values = values;
    }

    /** True when the value was given or has a value to start from. */
    public boolean has(String name) {
        return values.containsKey(name);
    }

    /** The path of a field for a {@link CalculatorRefusal}. */
    public String path(String name) {
        return prefix + name;
    }

    public double number(String name) {
        return read(name, BigDecimal.class).doubleValue();
    }

    public BigDecimal decimal(String name) {
        return read(name, BigDecimal.class);
    }

    public int whole(String name) {
        return read(name, BigDecimal.class).intValueExact();
    }

    /** The value of a choice. */
    public String choice(String name) {
        return read(name, String.class);
    }

    /** The constant whose lower-case name is the value of a choice. */
    public <E extends Enum<E>> E choice(String name, Class<E> type) {
        return Enum.valueOf(type, choice(name).toUpperCase(Locale.ROOT));
    }

    public boolean yes(String name) {
        return read(name, Boolean.class);
    }

    public Answer answer(String name) {
        return read(name, Answer.class);
    }

    public String text(String name) {
        return read(name, String.class);
    }

    public LocalDate date(String name) {
        return read(name, LocalDate.class);
    }

    public LocalTime time(String name) {
        return read(name, LocalTime.class);
    }

    /** The items in their order, null for one not answered. */
    @SuppressWarnings("unchecked")
    public List<Integer> items(String name) {
        return read(name, List.class);
    }

    @SuppressWarnings("unchecked")
    public List<Inputs> rows(String name) {
        return read(name, List.class);
    }

    private <T> T read(String name, Class<T> type) {
        Object value = values.get(name);
        if (value == null) {
            throw new NoSuchElementException("No value was given for " + path(name));
        }
        return type.cast(value);
    }
}
