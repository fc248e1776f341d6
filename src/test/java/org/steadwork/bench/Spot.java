package org.steadwork.bench;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** One place of a calculator's example where another value can be put. */
record Spot(Calculator calculator, Input input, String rows, int at, BigDecimal least, BigDecimal most) {

    /** Every input, those of rows in their first row. */
    static List<Spot> all(Calculator calculator) {
        List<Spot> spots = new ArrayList<>();
        for (Input input : calculator.inputs()) {
            spots.add(new Spot(calculator, input, null, -1, input.least(), input.most()));
            if (input.kind() == Input.Kind.ROWS && calculator.example().get(input.name()) instanceof List<?> rows && !rows.isEmpty()) {
                input.columns().forEach(column -> spots.add(new Spot(calculator, column, input.name(), 0, column.least(), column.most())));
            }
            // the items of a list are checked alike: its first and its last stand for the others
            int last = input.items().size() - 1;
            for (int i : last < 1 ? IntStream.range(0, last + 1).toArray() : new int[] {0, last}) {
                Item item = input.items().get(i);
                spots.add(new Spot(calculator, input, null, i, BigDecimal.valueOf(item.least()), BigDecimal.valueOf(item.most())));
            }
        }
        return spots;
    }

    /** Every input, but of a list of items the first alone, and of inputs alike in kind and range the first two. */
    static List<Spot> oneOfEach(Calculator calculator) {
        Map<String, Integer> seen = new LinkedHashMap<>();
        return all(calculator).stream().filter(spot -> spot.at <= 0)
                .filter(spot -> seen.merge(spot.input.kind() + " " + spot.rows + " " + spot.at + " " + spot.least + " " + spot.most, 1, Integer::sum) <= 2).toList();
    }

    /** The places where a number stands; of a list of items the first and the last. */
    static List<Spot> numbers(Calculator calculator) {
        return all(calculator).stream().filter(spot -> spot.rows != null || spot.at <= 0 || spot.at == spot.input.items().size() - 1).toList().stream().filter(spot -> switch (spot.input.kind()) {
            case NUMBER, WHOLE -> true;
            case ITEMS -> spot.at >= 0;
            default -> false;
        }).toList();
    }

    BigDecimal step() {
        return BigDecimal.ONE.movePointLeft(input.decimals());
    }

    String path() {
        return rows != null ? rows + "[" + at + "]." + input.name() : at >= 0 ? input.name() + "[" + at + "]" : input.name();
    }

    /** The example with another value here. */
    Map<String, Object> with(Object value) {
        Map<String, Object> values = new LinkedHashMap<>(calculator.example());
        if (rows != null) {
            List<Object> changed = new ArrayList<>((List<?>) values.get(rows));
            Map<String, Object> row = new LinkedHashMap<>();
            ((Map<?, ?>) changed.get(at)).forEach((name, one) -> row.put((String) name, one));
            row.put(input.name(), value);
            changed.set(at, row);
            values.put(rows, changed);
        } else if (at >= 0) {
            List<Object> items = new ArrayList<>((List<?>) values.get(input.name()));
            items.set(at, value);
            values.put(input.name(), items);
        } else {
            values.put(input.name(), value);
        }
        return values;
    }
}
