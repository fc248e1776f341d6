package org.steadwork.workplace;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steadwork.web.Dates;
import org.steadwork.workplace.fit.Part;
import org.steadwork.workplace.fit.Travel;
import org.steadwork.workplace.fit.Workstation;

/**
 * A desk that several people use, put together from what the register knows of it and, where the register is silent, from the
 * latest assessment there that knows. A range is taken whole from one of them. The chair is that of the latest assessment that
 * gives a range of the seat; without one, any chair that can be had.
 */
final class SharedStation {

    private final Workstation station;
    private final String chair;

    /** @param looks at this desk, the latest first */
    SharedStation(Map<String, FurnitureSize> sizes, List<RegisterSize> kept, List<RecordedWorkplace> looks, WorkplaceContent content) {
        Map<String, Double> registered = new HashMap<>();
        kept.stream().filter(size -> size.fills() != null && sizes.containsKey(size.key()))
                .forEach(size -> registered.put(size.fills(), sizes.get(size.key()).amount().doubleValue()));
        Map<StationMeasure, Double> readings = new EnumMap<>(StationMeasure.class);
        for (StationMeasure measure : StationMeasure.values()) {
            String whole = measure.hasRange() ? StationMeasure.of(measure.part(), StationMeasure.Role.LOW).orElseThrow().key() : measure.key();
            if (measure.role() != StationMeasure.Role.NOW) {
                Double known = registered.containsKey(whole) ? registered.get(measure.key()) : latest(looks, whole).map(look -> amount(look, measure.key())).orElse(null);
                if (known != null) {
                    readings.put(measure, known);
                }
            }
        }
        Workstation read = new StationReadings(measure -> readings.getOrDefault(measure, Double.NaN), content.targets().allowances()).station(false);
        Optional<RecordedWorkplace> seated = latest(looks, StationMeasure.SEAT_LOW.key());
        Travel seat = read.travel(Part.SEAT).orElse(content.targets().obtainable().seat());
        station = read.with(Part.SEAT, seat);
        chair = "Seat " + range(seat) + seated.map(look -> ", assessed " + Dates.shown(look.assessment().assessedOn()))
                .orElse(", as chairs can be had: no range of a chair here is known");
    }

    private static Optional<RecordedWorkplace> latest(List<RecordedWorkplace> looks, String key) {
        return looks.stream().filter(look -> look.taken().containsKey(key)).findFirst();
    }

    private static Double amount(RecordedWorkplace look, String key) {
        Taken taken = look.taken().get(key);
        return taken == null ? null : taken.amount().doubleValue();
    }

    Workstation station() {
        return station;
    }

    /** Returns how far the desk can be set; empty when neither the register nor an assessment knows. */
    Optional<Travel> heights() {
        return station.travel(Part.DESK);
    }

    public String deskWords() {
        return heights().map(height -> "Desk top " + (height.isFixed() ? "fixed at " : "") + range(height)).orElse("The height of the desk is not known");
    }

    public String chairWords() {
        return chair;
    }

    private static String range(Travel travel) {
        return travel.isFixed() ? Numerals.mm(travel.low()) : Numerals.number(travel.low(), 0) + " to " + Numerals.mm(travel.high());
    }
}
