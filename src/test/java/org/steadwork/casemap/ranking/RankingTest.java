package org.steadwork.casemap.ranking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.steadwork.body.BodyRegion;

class RankingTest {

    private static final Complaint NECK = new Complaint("neck", Set.of(BodyRegion.NECK));

    private static WorkFinding finding(String ref, double deviation, Double hours, double strength) {
        return new WorkFinding(ref, Set.of(BodyRegion.NECK), deviation, hours, strength);
    }

    private static Set<BodyRegion> regions(String keys) {
        Set<BodyRegion> regions = EnumSet.noneOf(BodyRegion.class);
        Arrays.stream(keys.split(";")).map(BodyRegion::of).forEach(regions::add);
        return regions;
    }

    @Test
    void theWorkedExampleComesOutInItsOrder() throws IOException {
        Map<String, Complaint> complaints = new LinkedHashMap<>();
        List<WorkFinding> findings = new ArrayList<>();
        List<CSVRecord> rows;
        try (Reader reader = new InputStreamReader(RankingTest.class.getResourceAsStream("worked-ranks.csv"), StandardCharsets.UTF_8)) {
            rows = CSVFormat.DEFAULT.builder().setCommentMarker('#').setHeader().setSkipHeaderRecord(true).get().parse(reader).getRecords();
        }
        for (CSVRecord row : rows) {
            complaints.put(row.get("complaint"), new Complaint(row.get("complaint"), regions(row.get("complaintRegions"))));
            findings.add(new WorkFinding(row.get("finding"), regions(row.get("findingRegions")), Double.parseDouble(row.get("deviation")),
                    row.get("hours").isBlank() ? null : Double.valueOf(row.get("hours")), Double.parseDouble(row.get("strength"))));
        }
        Collections.shuffle(findings, new Random(3));
        List<Candidate> ranked = Ranking.of(List.copyOf(complaints.values()), findings);
        assertEquals(rows.size(), ranked.size());
        for (CSVRecord row : rows) {
            Candidate candidate = ranked.get(Integer.parseInt(row.get("rank")) - 1);
            assertEquals(row.get("complaint") + row.get("finding"), candidate.complaint().ref() + candidate.finding().ref());
            if (row.get("score").isBlank()) {
                assertNull(candidate.score());
            } else {
                assertEquals(Double.parseDouble(row.get("score")), candidate.score(), 1e-9);
            }
        }
    }

    @Test
    void whatSharesNoRegionIsNoCandidate() {
        assertTrue(Ranking.of(List.of(new Complaint("knee", Set.of(BodyRegion.KNEE))), List.of(finding("A", 2, 8., 4))).isEmpty());
        assertTrue(Ranking.of(List.of(new Complaint("none", Set.of())), List.of(finding("A", 2, 8., 4))).isEmpty());
    }

    @Test
    void hoursThatNobodyRecordedAreNotZeroHours() {
        List<Candidate> ranked = Ranking.of(List.of(NECK), List.of(finding("unknown", 2, null, 4), finding("none", 2, 0., 4), finding("little", .1, .5, 1)));
        assertEquals(List.of("little", "unknown"), ranked.stream().map(c -> c.finding().ref()).toList());
    }

    @Test
    void moreOfAnyFactorNeverRanksLower() {
        Random random = new Random(5);
        for (int i = 0; i < 500; i++) {
            double d = .1 + random.nextDouble() * 3;
            double h = .1 + random.nextDouble() * 9;
            double s = 1 + random.nextInt(4);
            double base = score(d, h, s);
            assertTrue(score(d * 1.1, h, s) > base, "deviation " + d + " " + h + " " + s);
            assertTrue(score(d, h * 1.1, s) > base, "hours " + d + " " + h + " " + s);
            assertTrue(score(d, h, s + 1) > base, "strength " + d + " " + h + " " + s);
        }
    }

    private static double score(double deviation, double hours, double strength) {
        return Ranking.of(List.of(NECK), List.of(finding("A", deviation, hours, strength))).get(0).score();
    }

    @Test
    void equalOnesKeepTheOrderTheyWereGivenIn() {
        List<Candidate> ranked = Ranking.of(List.of(NECK), List.of(finding("B", 1, 8., 2), finding("A", 2, 4., 2), finding("C", 1, 4., 4)));
        assertEquals(List.of("B", "A", "C"), ranked.stream().map(c -> c.finding().ref()).toList());
    }

    @Test
    void factorsOutOfRangeAndNotANumberAreRefused() {
        for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(IllegalArgumentException.class, () -> finding("A", bad, 8., 1), "deviation " + bad);
            assertThrows(IllegalArgumentException.class, () -> finding("A", 1, 8., bad), "strength " + bad);
        }
        for (double bad : new double[] {-.01, 24.01, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> finding("A", 1, bad, 1), "hours " + bad);
        }
    }
}
