package org.steadwork.workplace;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.steadwork.web.Form;
import org.steadwork.workplace.fit.Readings;

/** Reads a measure that was read up to three times, the readings parted by semicolons: "388; 392; 390". */
record RepeatedReadings(MeasureText text) {

    static final int MOST = 3;
    private static final String PARTED = ";";

    /** Reads the readings in the unit of the measure, with at most one decimal; empty when there is none or one is wrong. */
    List<BigDecimal> read(Form form) {
        List<String> parts = parts(form);
        if (parts.size() > MOST) {
            form.error(text.key(), text.label() + " is read at most three times. You entered " + parts.size() + " readings.");
            return List.of();
        }
        List<BigDecimal> readings = new ArrayList<>();
        for (String part : parts) {
            Form one = Form.empty().with(text.key(), part);
            BigDecimal reading = one.decimal(text.key(), text.label(), whole(text.range().low()), whole(text.range().high()), 1, text.unit());
            if (reading == null) {
                form.error(text.key(), one.error(text.key()));
                return List.of();
            }
            readings.add(reading);
        }
        return readings;
    }

    /** Returns the median of the readings typed, if all can be right; notes no error. */
    OptionalDouble median(Form form) {
        Form copy = Form.empty().with(text.key(), form.value(text.key()));
        List<BigDecimal> readings = read(copy);
        return readings.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Readings.of(0, readings.stream().mapToDouble(BigDecimal::doubleValue).toArray()).value());
    }

    /** Writes what was taken as it is typed. */
    static String shown(Taken taken) {
        return taken.readings().isEmpty() ? plain(taken.amount()) : taken.readings().stream().map(RepeatedReadings::plain).collect(Collectors.joining(PARTED + " "));
    }

    private List<String> parts(Form form) {
        return Stream.of(form.value(text.key()).split(PARTED)).map(String::strip).filter(part -> !part.isEmpty()).toList();
    }

    private static BigDecimal whole(double bound) {
        return BigDecimal.valueOf(bound).stripTrailingZeros();
    }

    private static String plain(BigDecimal value) {
        return value.stripTrailingZeros().toPlainString();
    }
}
