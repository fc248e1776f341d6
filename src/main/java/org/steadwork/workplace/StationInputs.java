package org.steadwork.workplace;

import java.util.ArrayList;
import java.util.List;
import org.steadwork.bench.CalculatorRefusal;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.workplace.fit.Workstation;

/** A work place as a calculator asks for one: how its parts are set today, and how far they can be set. */
final class StationInputs {

    private final WorkplaceContent content;

    StationInputs(WorkplaceContent content) {
        this.content = content;
    }

    List<Input> readings(StationMeasure... measures) {
        List<Input> inputs = new ArrayList<>();
        for (StationMeasure measure : measures) {
            inputs.add(reading(measure).optional());
        }
        return inputs;
    }

    Input reading(StationMeasure measure) {
        StationText text = content.text(measure);
        boolean ofRange = measure.role() != null && measure.role() != StationMeasure.Role.NOW;
        String label = ofRange ? content.text(measure.now()).label().replaceAll("(,| above ).*", "") + ", " + text.label() : text.label();
        return Input.number(text.key(), label, text.unit(), text.range().low(), text.range().high(), 1);
    }

    /** Reads a work place; a range that has one end or runs backwards is refused at its field. */
    Workstation station(Inputs given) {
        for (StationMeasure high : StationMeasure.values()) {
            if (high.role() == StationMeasure.Role.HIGH) {
                StationMeasure low = StationMeasure.of(high.part(), StationMeasure.Role.LOW).orElseThrow();
                checkRange(given, low.key(), high.key());
            }
        }
        return new StationReadings(measure -> given.has(measure.key()) ? given.number(measure.key()) : Double.NaN, content.targets().allowances())
                .station(true);
    }

    private void checkRange(Inputs given, String low, String high) {
        if (given.has(low) != given.has(high)) {
            String missing = given.has(low) ? high : low;
            throw CalculatorRefusal.at(given.path(missing), "A range needs both ends. Enter the other end, or leave both out.", "", "a length in mm");
        }
        if (given.has(low) && given.number(low) > given.number(high)) {
            throw CalculatorRefusal.at(given.path(high), "The highest setting must be at least the lowest, " + given.decimal(low).toPlainString()
                    + " mm. You entered " + given.decimal(high).toPlainString() + ".", given.decimal(high).toPlainString(),
                    "at least " + given.decimal(low).toPlainString() + " mm");
        }
    }
}
