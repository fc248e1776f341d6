package org.steadwork.workplace;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.steadwork.workplace.fit.Part;
import org.steadwork.workplace.fit.Settings;
import org.steadwork.workplace.fit.Targets;
import org.steadwork.workplace.fit.Travel;
import org.steadwork.workplace.fit.Workstation;

/** Makes a work place of what was read off at it. */
final class StationReadings {

    private final ToDoubleFunction<StationMeasure> readings;
    private final Targets.Allowances allowances;

    /** @param readings in mm; NaN for what was not looked at */
    StationReadings(ToDoubleFunction<StationMeasure> readings, Targets.Allowances allowances) {
        this.readings = readings;
        this.allowances = allowances;
    }

    /** @param laptopAlone whether a laptop, if its screen was read off, is the only screen and keys */
    Workstation station(boolean laptopAlone) {
        Map<Part, Travel> travels = new EnumMap<>(Part.class);
        Settings present = Settings.UNKNOWN;
        for (Part part : Part.values()) {
            double now = reading(part, StationMeasure.Role.NOW);
            if (!Double.isNaN(now)) {
                present = present.with(part, now);
            }
            double low = reading(part, StationMeasure.Role.LOW);
            double high = reading(part, StationMeasure.Role.HIGH);
            if (!Double.isNaN(low) && !Double.isNaN(high)) {
                double step = reading(part, StationMeasure.Role.STEP);
                travels.put(part, Double.isNaN(step) ? Travel.of(low, high) : new Travel(low, high, step));
            }
        }
        Workstation plain = Workstation.of(travels, present, reading(StationMeasure.HOME_ROW, allowances.homeRow()),
                reading(StationMeasure.TOP_THICKNESS, allowances.topThickness()));
        double laptopTop = reading(StationMeasure.LAPTOP_TOP, Double.NaN);
        return laptopAlone && !Double.isNaN(laptopTop)
                ? plain.withLaptopAlone(new Workstation.Laptop(laptopTop, reading(StationMeasure.LAPTOP_HOME_ROW, plain.homeRow()))) : plain;
    }

    private double reading(Part part, StationMeasure.Role role) {
        return StationMeasure.of(part, role).map(measure -> reading(measure, Double.NaN)).orElse(Double.NaN);
    }

    private double reading(StationMeasure measure, double otherwise) {
        double value = readings.applyAsDouble(measure);
        return Double.isNaN(value) ? otherwise : value;
    }
}
