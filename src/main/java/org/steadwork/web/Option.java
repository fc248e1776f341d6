package org.steadwork.web;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** One answer offered by a choice: what is sent and what is shown. */
public record Option(String value, String label) {

    /** Makes the options of an enum; sent is the lower-case name. */
    public static <E extends Enum<E>> List<Option> of(Class<E> type, Function<E, String> label) {
        return Arrays.stream(type.getEnumConstants()).map(c -> new Option(c.name().toLowerCase(Locale.ROOT), label.apply(c))).toList();
    }
}
