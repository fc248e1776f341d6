package org.steadwork.caseload;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.steadwork.body.BodyRegion;
import org.steadwork.caseload.statistics.WithheldTable;

/** What may leave the clinic, against a reader who tries everything that agrees with what is shown in all tables of a report. */
class GroupCountsTest {

    private static final int FEWEST = 3;
    private static final GroupCounts.Fact REGION = new GroupCounts.Fact("region", "Region", List.of("Neck", "Back", "Other"),
            person -> person.region() == BodyRegion.NECK ? 0 : person.region() == BodyRegion.LOW_BACK ? 1 : 2);
    private static final GroupCounts.Fact CHAIR = new GroupCounts.Fact("chair", "Chair", List.of("Put right", "Open", "None"),
            person -> person.findings().get("chair") == null ? 2 : person.findings().get("chair") == '+' ? 0 : 1);

    @Test
    void everybodyStandsInOnePlaceAndNoPlaceIsSmall() {
        Random random = new Random(7);
        for (int round = 0; round < 2000; round++) {
            int fewest = 3 + random.nextInt(8);
            List<ReportPerson> people = people(random, random.nextInt(90), 1 + random.nextInt(4), 1 + random.nextInt(3));
            Optional<Map<String, List<ReportPerson>>> places = ReportPlaces.of(people, fewest);
            assertEquals(people.size() >= fewest, places.isPresent());
            if (places.isPresent()) {
                List<ReportPerson> all = new ArrayList<>();
                places.get().forEach((name, own) -> {
                    assertTrue(own.size() >= fewest, () -> name + " has " + own.size());
                    all.addAll(own);
                });
                assertEquals(people.size(), all.size());
                assertEquals(people.size(), people.stream().filter(person -> all.stream().anyMatch(one -> one == person)).count());
            }
        }
    }

    @Test
    void aLargeDepartmentStandsByItselfAndWhatIsLeftStaysWithItsSite() {
        List<ReportPerson> people = new ArrayList<>();
        add(people, "North", "Accounts", 12);
        add(people, "North", "Design", 4);
        add(people, "North", null, 7);
        add(people, "South", "Accounts", 13);
        add(people, "South", "Design", 2);
        add(people, "West", null, 3);
        Map<String, List<ReportPerson>> places = ReportPlaces.of(people, 10).orElseThrow();
        Map<String, Integer> sizes = new TreeMap<>();
        places.forEach((name, own) -> sizes.put(name, own.size()));
        // the three of West go with the smallest place that is not too small: eleven others at North
        assertEquals(Map.of("North, Accounts", 12, "South", 15, "Other places", 14), sizes);
        assertTrue(ReportPlaces.of(people.subList(0, 9), 10).isEmpty());
    }

    private static void add(List<ReportPerson> people, String site, String department, int count) {
        for (int i = 0; i < count; i++) {
            people.add(new ReportPerson(site, department, BodyRegion.NECK, Map.of(), ReportPerson.Return.NOT_OFF));
        }
    }

    /** Every table of a report, brute force: no withheld number can be pinned down to fewer values than the rule says, and none shown is small. */
    @Test
    void noWithheldNumberOfAReportCanBeGotBack() {
        Random random = new Random(20261130);
        int withheld = 0;
        int byPlace = 0;
        for (int round = 0; round < 1500; round++) {
            List<ReportPerson> people = people(random, 3 + random.nextInt(30), 1 + random.nextInt(3), 1);
            Optional<GroupCounts> counts = GroupCounts.of(people, FEWEST);
            if (counts.isEmpty()) {
                continue;
            }
            for (GroupCounts.Fact fact : List.of(REGION, CHAIR)) {
                Optional<GroupCounts.Protected> counted = counts.get().count(fact);
                if (counted.isPresent()) {
                    withheld += assertProtected(counted.get().table());
                    byPlace += counted.get().places().size() > 1 ? 1 : 0;
                    assertPeopleStand(counts.get(), counted.get());
                }
            }
        }
        assertTrue(withheld > 500 && byPlace > 50, withheld + " withheld, " + byPlace + " tables by place");
    }

    /** Every table has the number of people of each place, and the same ones: what links the tables is known, so nothing else can be learnt from the link. */
    private static void assertPeopleStand(GroupCounts counts, GroupCounts.Protected counted) {
        int last = counted.table().counts().columns();
        for (int row = 0; row < counted.places().size(); row++) {
            int people = counted.places().size() == 1 ? counts.people() : counts.places().get(counted.places().get(row)).size();
            assertEquals(people, counted.table().shown(row, last).orElseThrow());
        }
        assertEquals(counts.people(), counted.table().shown(counted.places().size(), last).orElseThrow());
    }

    /**
     * Two facts of the same people laid side by side: the reader tries every pair of answers for every person of one place and keeps what
     * agrees with both tables. Each withheld number still has as many values as its own table leaves it.
     */
    @Test
    void twoTablesOfTheSamePeopleTellNoMoreThanEachByItself() {
        Random random = new Random(11);
        int compared = 0;
        for (int round = 0; round < 60; round++) {
            List<ReportPerson> people = people(random, 6 + random.nextInt(5), 1, 1);
            GroupCounts counts = GroupCounts.of(people, FEWEST).orElseThrow();
            Optional<GroupCounts.Protected> region = counts.count(REGION);
            Optional<GroupCounts.Protected> chair = counts.count(CHAIR);
            if (region.isPresent() && chair.isPresent()) {
                compared++;
                Set<List<Integer>> alone = agreeing(region.get().table(), people.size());
                Set<List<Integer>> together = new HashSet<>();
                everyWayToAnswer(people.size(), 9, answers -> {
                    int[] regions = new int[3];
                    int[] chairs = new int[3];
                    for (int answer : answers) {
                        regions[answer / 3]++;
                        chairs[answer % 3]++;
                    }
                    if (agrees(region.get().table(), regions) && agrees(chair.get().table(), chairs)) {
                        together.add(List.of(regions[0], regions[1], regions[2]));
                    }
                });
                assertEquals(alone, together);
            }
        }
        assertTrue(compared > 3, "pairs of tables: " + compared);
    }

    private interface Taker {
        void take(int[] answers);
    }

    /** People of one place are alike to the reader, so only how many answered what counts: answers in rising order. */
    private static void everyWayToAnswer(int people, int kinds, Taker taker) {
        answers(new int[people], 0, 0, kinds, taker);
    }

    private static void answers(int[] answers, int place, int from, int kinds, Taker taker) {
        if (place == answers.length) {
            taker.take(answers);
            return;
        }
        for (int answer = from; answer < kinds; answer++) {
            answers[place] = answer;
            answers(answers, place + 1, answer, kinds, taker);
        }
    }

    private static Set<List<Integer>> agreeing(WithheldTable table, int people) {
        Set<List<Integer>> agreeing = new HashSet<>();
        everyWayToAnswer(people, 3, answers -> {
            int[] counts = new int[3];
            Arrays.stream(answers).forEach(answer -> counts[answer]++);
            if (agrees(table, counts)) {
                agreeing.add(List.of(counts[0], counts[1], counts[2]));
            }
        });
        return agreeing;
    }

    private static boolean agrees(WithheldTable table, int[] counts) {
        for (int column = 0; column < counts.length; column++) {
            for (int row = 0; row <= 1; row++) {
                if (table.shown(row, column).isPresent() && table.shown(row, column).getAsInt() != counts[column]) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Tries every table of whole numbers with the shown numbers; returns how many numbers were withheld. */
    private static int assertProtected(WithheldTable table) {
        int rows = table.counts().rows();
        int columns = table.counts().columns();
        Map<String, Set<Integer>> values = new HashMap<>();
        fill(table, new int[rows][columns], 0, cells -> {
            for (int row = 0; row <= rows; row++) {
                for (int column = 0; column <= columns; column++) {
                    if (table.shown(row, column).isEmpty()) {
                        values.computeIfAbsent(row + "/" + column, key -> new HashSet<>()).add(sum(cells, row, column));
                    }
                }
            }
        });
        int withheld = 0;
        for (int row = 0; row <= rows; row++) {
            for (int column = 0; column <= columns; column++) {
                int count = table.counts().at(row, column);
                if (table.shown(row, column).isPresent()) {
                    assertTrue(count == 0 || count >= FEWEST, "a small number is shown");
                } else {
                    withheld++;
                    Set<Integer> possible = values.get(row + "/" + column);
                    assertTrue(possible.contains(count) && possible.size() >= FEWEST, () -> "only " + possible);
                }
            }
        }
        return withheld;
    }

    private interface Cells {
        void take(int[][] cells);
    }

    /** Row after row, each split in every way that its number of people (always shown) and its shown cells allow. */
    private static void fill(WithheldTable table, int[][] cells, int row, Cells taker) {
        int rows = table.counts().rows();
        int columns = table.counts().columns();
        if (row == rows) {
            for (int column = 0; column < columns; column++) {
                if (table.shown(rows, column).isPresent() && table.shown(rows, column).getAsInt() != sum(cells, rows, column)) {
                    return;
                }
            }
            taker.take(cells);
            return;
        }
        split(table, cells, row, 0, table.shown(row, columns).orElseThrow(), taker);
    }

    private static void split(WithheldTable table, int[][] cells, int row, int column, int left, Cells taker) {
        int columns = table.counts().columns();
        if (column == columns) {
            if (left == 0) {
                fill(table, cells, row + 1, taker);
            }
            return;
        }
        int shown = table.shown(row, column).orElse(-1);
        for (int value = shown < 0 ? 0 : shown; value <= (shown < 0 ? left : Math.min(left, shown)); value++) {
            cells[row][column] = value;
            split(table, cells, row, column + 1, left - value, taker);
        }
        cells[row][column] = 0;
    }

    private static int sum(int[][] cells, int row, int column) {
        int sum = 0;
        for (int i = 0; i < cells.length; i++) {
            for (int j = 0; j < cells[i].length; j++) {
                sum += (row == cells.length || row == i) && (column == cells[i].length || column == j) ? cells[i][j] : 0;
            }
        }
        return sum;
    }

    /**
     * Two half-years in a row, and one more person in either: the other's report is the same to the last number, since nobody stands in both.
     * What a reader can do with two reports is therefore what can be done with each.
     */
    @Test
    void anotherHalfYearTellsNothingOfThisOne() {
        Random random = new Random(3);
        for (int round = 0; round < 300; round++) {
            List<ReportPerson> before = people(random, 20 + random.nextInt(40), 2, 1);
            List<ReportPerson> after = people(random, 20 + random.nextInt(40), 2, 1);
            String first = shown(before);
            List<ReportPerson> more = new ArrayList<>(after);
            more.addAll(people(random, 1, 2, 1));
            shown(more);
            assertEquals(first, shown(before));
            assertFalse(before.stream().anyMatch(person -> after.stream().anyMatch(other -> other == person)));
        }
    }

    private static String shown(List<ReportPerson> people) {
        StringBuilder shown = new StringBuilder();
        GroupCounts.of(people, 10).ifPresent(counts -> {
            counts.places().forEach((name, own) -> shown.append(name).append(own.size()).append(' '));
            for (GroupCounts.Fact fact : List.of(REGION, CHAIR)) {
                counts.count(fact).ifPresent(counted -> {
                    for (int row = 0; row <= counted.table().counts().rows(); row++) {
                        for (int column = 0; column <= counted.table().counts().columns(); column++) {
                            shown.append(counted.table().shown(row, column)).append(' ');
                        }
                    }
                });
            }
        });
        return shown.toString();
    }

    private static List<ReportPerson> people(Random random, int count, int sites, int departments) {
        BodyRegion[] regions = {BodyRegion.NECK, BodyRegion.LOW_BACK, BodyRegion.KNEE, null};
        List<ReportPerson> people = new ArrayList<>();
        int tilt = 1 + random.nextInt(4);
        for (int i = 0; i < count; i++) {
            Map<String, Character> findings = new LinkedHashMap<>();
            if (random.nextInt(3) > 0) {
                findings.put("chair", random.nextBoolean() ? '+' : ' ');
            }
            people.add(new ReportPerson("Site " + random.nextInt(sites), departments == 1 ? null : "Department " + random.nextInt(departments),
                    regions[Math.min(3, random.nextInt(4 * tilt) / tilt * random.nextInt(2))], findings, ReportPerson.Return.NOT_OFF));
        }
        return people;
    }
}
