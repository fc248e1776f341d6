package org.steadwork.workplace.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;
import static org.steadwork.workplace.TestTargets.POPULATIONS;
import static org.steadwork.workplace.TestTargets.TARGETS;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AccommodationTest {

    /** Individual rows of the survey, beside the project where they are kept; not part of it. */
    private static final Path ROWS = Path.of("..", "shared", "reference", "ansur2", "ansur2-seated.csv");
    private static final Population SOLDIERS = POPULATIONS.get("us_army_2012").population();
    private static final int PEOPLE = 20_000;

    private static Workstation furniture(Travel seat, Travel desk) {
        return Workstation.of(Map.of(Part.SEAT, seat, Part.DESK, desk, Part.SCREEN_TOP, Travel.of(380, 620), Part.SEAT_DEPTH, Travel.of(380, 460),
                Part.FOOTREST, Travel.of(50, 150), Part.ARMREST, Travel.of(180, 280)), Settings.UNKNOWN, 30, 30);
    }

    /**
     * Simulated shares against shares counted on the people whose means, deviations and correlations the population is made of.
     * What is tested is that drawing them as normal loses little: 2 percentage points besides the error of drawing.
     */
    @ParameterizedTest(name = "{0}: seat {1} to {2}, desk {3} to {4}")
    @CsvSource({"M, 400, 510, 740, 740", "M, 380, 560, 650, 850", "M, 420, 520, 680, 760", "F, 400, 510, 740, 740", "F, 380, 560, 650, 850",
        "F, 420, 520, 680, 760"})
    void simulatedSharesAreThoseOfTheIndividuals(String sex, double seatLow, double seatHigh, double deskLow, double deskHigh) throws IOException {
        assumeTrue(Files.exists(ROWS), "Skipped: the individual rows of the survey are not kept beside the project (" + ROWS + ")");
        Workstation furniture = furniture(Travel.of(seatLow, seatHigh), Travel.of(deskLow, deskHigh));
        List<Body> people = individuals(sex);
        Iterator<Body> next = people.iterator();
        Accommodation counted = Accommodation.count(Lenses.SINGLE_OR_NONE, furniture, TARGETS, people.size(), next::next);
        Accommodation drawn = Accommodation.of(SOLDIERS, sex.equals("F") ? 1 : 0, Lenses.SINGLE_OR_NONE, furniture, TARGETS, PEOPLE, 7);
        String failing = "counted " + counted + ", drawn " + drawn;
        assertEquals(counted.served(), drawn.served(), 0.02 + 3 * drawn.standardError(), failing);
        for (Deviation deviation : Deviation.values()) {
            assertEquals(counted.failing().get(deviation), drawn.failing().get(deviation), 0.02 + 3 * drawn.standardError(), deviation + ": " + failing);
        }
    }

    private static List<Body> individuals(String sex) throws IOException {
        List<String> lines = Files.readAllLines(ROWS);
        List<String> columns = List.of(lines.get(0).split(","));
        List<Body> people = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] row = line.split(",");
            if (row[0].equals(sex)) {
                people.add(new Body(at(row, columns, "poplitealheight"), TARGETS.allowances().shoe(), at(row, columns, "elbowrestheight"),
                        at(row, columns, "eyeheightsitting") - TARGETS.allowances().slump(), at(row, columns, "buttockpopliteallength"),
                        at(row, columns, "thighclearance"), Double.NaN));
            }
        }
        assertEquals(sex.equals("F") ? 1986 : 4082, people.size());
        return people;
    }

    private static double at(String[] row, List<String> columns, String name) {
        return Double.parseDouble(row[columns.indexOf(name)]);
    }

    @Test
    void furnitureThatReachesEveryoneServesAllButThoseWhomNoDeskCanServe() {
        Workstation everything = Workstation.of(Map.of(Part.SEAT, Travel.of(250, 700), Part.DESK, Travel.of(400, 1200), Part.FOOTREST,
                Travel.of(10, 300), Part.SEAT_DEPTH, Travel.of(250, 650), Part.ARMREST, Travel.of(80, 400)), Settings.UNKNOWN, 30, 30);
        Accommodation all = Accommodation.of(SOLDIERS, 0.5, Lenses.SINGLE_OR_NONE, everything, TARGETS, PEOPLE, 3);
        // Left are those whose elbow and thigh no setting serves: K = E − k − t − T < 10, here E − T < 70; E − T is normal, in whole mm.
        double women = share(232.42 - 167.86, 26.25, 14.06, 0.0872);
        double men = share(245.04 - 180.46, 28.65, 15.59, 0.2667);
        assertEquals(1 - (women + men) / 2, all.served(), 4 * all.standardError());
        assertEquals(1, all.served() + all.firstFailing().values().stream().mapToDouble(s -> s).sum(), 1e-9);
        assertEquals(0, all.failing().get(Deviation.FEET));
    }

    /** Normal share of E − T of 69 and less. */
    private static double share(double mean, double elbow, double thigh, double correlation) {
        double deviation = Math.sqrt(elbow * elbow + thigh * thigh - 2 * correlation * elbow * thigh);
        return new org.apache.commons.math3.distribution.NormalDistribution(mean, deviation).cumulativeProbability(69.5);
    }

    @Test
    void moreRangeNeverServesFewer() {
        Accommodation narrow = Accommodation.of(SOLDIERS, 0.5, Lenses.SINGLE_OR_NONE, furniture(Travel.of(400, 500), Travel.of(700, 760)), TARGETS, PEOPLE, 5);
        Accommodation wide = Accommodation.of(SOLDIERS, 0.5, Lenses.SINGLE_OR_NONE, furniture(Travel.of(390, 540), Travel.of(650, 800)), TARGETS, PEOPLE, 5);
        Accommodation loose = Accommodation.of(SOLDIERS, 0.5, Lenses.SINGLE_OR_NONE, furniture(Travel.of(390, 540), Travel.of(650, 800)),
                TARGETS.loosened(), PEOPLE, 5);
        assertTrue(narrow.served() < wide.served(), narrow + " " + wide);
        assertTrue(wide.served() < loose.served(), wide + " " + loose);
    }

    @Test
    void theErrorOfDrawingIsThatOfAShareAndFallsWithPeople() {
        Workstation furniture = furniture(Travel.of(400, 510), Travel.of(700, 760));
        Accommodation few = Accommodation.of(SOLDIERS, 0.5, Lenses.SINGLE_OR_NONE, furniture, TARGETS, 1000, 11);
        Accommodation many = Accommodation.of(SOLDIERS, 0.5, Lenses.SINGLE_OR_NONE, furniture, TARGETS, 100_000, 12);
        assertEquals(Math.sqrt(few.served() * (1 - few.served()) / 1000), few.standardError(), 1e-12);
        assertEquals(many.served(), few.served(), 4 * few.standardError());
        assertEquals(few, Accommodation.of(SOLDIERS, 0.5, Lenses.SINGLE_OR_NONE, furniture, TARGETS, 1000, 11));
    }

    @Test
    void whatCannotBeDrawnIsRefused() {
        Workstation furniture = furniture(Travel.of(400, 510), Travel.of(700, 760));
        assertThrows(IllegalArgumentException.class,
                () -> Accommodation.of(SOLDIERS, Double.NaN, Lenses.SINGLE_OR_NONE, furniture, TARGETS, 1000, 1));
        assertThrows(IllegalArgumentException.class, () -> Accommodation.of(SOLDIERS, 1.1, Lenses.SINGLE_OR_NONE, furniture, TARGETS, 1000, 1));
        assertThrows(IllegalArgumentException.class, () -> Accommodation.of(SOLDIERS, 0.5, Lenses.SINGLE_OR_NONE, furniture, TARGETS, 99, 1));
        assertThrows(IllegalArgumentException.class, () -> new Population.Size(400, 0));
        assertThrows(IllegalArgumentException.class, () -> new Population.Group(Map.of(), Map.of()));
    }
}
