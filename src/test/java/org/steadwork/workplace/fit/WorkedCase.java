package org.steadwork.workplace.fit;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;

/** One line of the worked cases: a person, a work place, and what was worked out by hand. */
record WorkedCase(String name, Person person, Workstation station, Entry worked) {

    private static final Map<String, BodyMeasure> LETTERS = Map.of("P", BodyMeasure.POPLITEAL_HEIGHT, "S", BodyMeasure.SHOE, "E",
            BodyMeasure.ELBOW_REST_HEIGHT, "Y", BodyMeasure.EYE_HEIGHT_SITTING, "L", BodyMeasure.BUTTOCK_POPLITEAL_LENGTH, "T",
            BodyMeasure.THIGH_CLEARANCE, "R", BodyMeasure.ARM_REACH, "EH", BodyMeasure.STANDING_ELBOW_HEIGHT, "YH",
            BodyMeasure.STANDING_EYE_HEIGHT);

    static List<WorkedCase> all() {
        try (Reader reader = new InputStreamReader(WorkedCase.class.getResourceAsStream("worked-cases.csv"), StandardCharsets.UTF_8)) {
            return Content.csv("worked-cases.csv", reader).stream().map(WorkedCase::of).toList();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    static WorkedCase named(String name) {
        return all().stream().filter(worked -> worked.name().equals(name)).findFirst().orElseThrow();
    }

    private static WorkedCase of(Entry row) {
        Map<BodyMeasure, Measurement> body = new EnumMap<>(BodyMeasure.class);
        LETTERS.forEach((letter, measure) -> {
            if (row.has(letter)) {
                body.put(measure, Measurement.measured(row.number(letter), 0));
            }
        });
        Map<Part, Travel> travels = new EnumMap<>(Part.class);
        travels.put(Part.FOOTREST, Travel.of(50, 250));
        put(travels, Part.SEAT, row, "seat");
        put(travels, Part.SEAT_DEPTH, row, "depth");
        put(travels, Part.ARMREST, row, "arm");
        put(travels, Part.DESK, row, "desk");
        put(travels, Part.SCREEN_TOP, row, "screen");
        return new WorkedCase(row.text("case"), Person.of(body, row.constant("lenses", Lenses.class)),
                Workstation.of(travels, Settings.UNKNOWN, row.number("k"), row.number("t")), row);
    }

    private static void put(Map<Part, Travel> travels, Part part, Entry row, String column) {
        if (row.has(column + "_low")) {
            travels.put(part, Travel.of(row.number(column + "_low"), row.number(column + "_high")));
        }
    }

    double worked(String column) {
        return worked.number(column);
    }

    @Override
    public String toString() {
        return name;
    }
}
