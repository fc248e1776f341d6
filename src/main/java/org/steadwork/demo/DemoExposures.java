package org.steadwork.demo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.steadwork.bench.Calculator;
import org.steadwork.bench.Calculators;
import org.steadwork.bench.Input;
import org.steadwork.content.Entry;
import org.steadwork.exposure.ExposureMethods;
import org.steadwork.exposure.ExposureRecord;
import org.steadwork.exposure.ExposureRecords;

/** The exposure results of a visit, computed anew from what was entered; the entries bear the names that the API gives them. */
@ApplicationScoped
class DemoExposures implements DemoVisitPart {

    @Inject
    ExposureMethods methods;

    @Inject
    ExposureRecords records;

    @Inject
    Calculators calculators;

    @Override
    public int order() {
        return 35;
    }

    @Override
    public void load(DemoVisit visit) {
        for (Entry written : visit.entry().entries("exposures")) {
            Calculator calculator = calculators.named(written.text("method")).orElseThrow(() -> written.problem("no method is called so"));
            Map<String, Object> given = values(calculator.inputs(), written.entry("entries").orElseThrow(() -> written.problem("'entries' is missing")));
            ExposureRecord record = new ExposureRecord(visit.file(), written.text("task"), visit.day(), visit.clinician().displayName(), visit.moment());
            methods.keep(record, calculator.key(), given);
            records.persist(record);
        }
    }

    private static Map<String, Object> values(List<Input> inputs, Entry entries) {
        Map<String, Object> values = new LinkedHashMap<>();
        inputs.stream().filter(input -> entries.has(input.name())).forEach(input -> values.put(input.name(), value(input, entries)));
        return values;
    }

    private static Object value(Input input, Entry entries) {
        return switch (input.kind()) {
            case NUMBER, WHOLE -> new BigDecimal(entries.text(input.name()));
            case YES_NO -> entries.flag(input.name());
            case ROWS -> entries.entries(input.name()).stream().map(row -> values(input.columns(), row)).toList();
            default -> entries.text(input.name());
        };
    }
}
