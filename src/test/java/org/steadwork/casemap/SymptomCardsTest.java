package org.steadwork.casemap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.casefile.MapCard;
import org.steadwork.casefile.RegionReading;
import org.steadwork.casefile.SymptomPattern;
import org.steadwork.casefile.SymptomReport;
import org.steadwork.casefile.SymptomReports;
import org.steadwork.body.BodyChart;
import org.steadwork.body.BodyRegion;
import org.steadwork.web.TestCases;

@QuarkusTest
class SymptomCardsTest {

    private static final LocalDate LATER = TestCases.OPENED.plusWeeks(3);

    @Inject
    TestCases cases;

    @Inject
    CaseFiles files;

    @Inject
    SymptomReports reports;

    @Inject
    SymptomCards symptoms;

    @Inject
    BodyChart chart;

    private String zone(BodyRegion region, int index) {
        return chart.zones(region).get(index).key();
    }

    private static RegionReading worst(String zone, Integer worst) {
        return new RegionReading(zone, null, worst, null, null, null, Set.of(), null, null);
    }

    @Transactional
    void report(long caseId, LocalDate day, List<RegionReading> readings) {
        SymptomReport report = new SymptomReport(files.findById(caseId), day, LATER);
        report.report(SymptomPattern.notAsked(), readings, readings.isEmpty());
        report.savedBy("T. Clinician", Instant.EPOCH);
        reports.persist(report);
    }

    private List<MapCard> cards(long caseId) {
        return symptoms.cards(files.withPeople(caseId).orElseThrow());
    }

    private static String line(MapCard card) {
        return card.line().replace('\u00a0', ' ');
    }

    @Test
    void theWorstStandsFirstWithItsStartingScoreAndWhatWasNotAskedIsSaid() {
        long id = cases.open("Ines", "Zonewell");
        String neck = zone(BodyRegion.NECK, 0);
        String wrist = zone(BodyRegion.WRIST_HAND, 0);
        String back = zone(BodyRegion.LOW_BACK, 0);
        report(id, TestCases.OPENED, List.of(worst(neck, 6), worst(wrist, null), worst(back, 3)));
        report(id, LATER, List.of(worst(wrist, null), worst(neck, 2)));
        List<MapCard> cards = cards(id);
        assertEquals(List.of(neck, wrist, back), cards.stream().map(c -> c.key().ref()).toList());
        assertEquals("Worst this week 2 of 10; 6 on 4 Mar 2026", line(cards.get(0)));
        assertEquals("How much was not asked; not asked on 4 Mar 2026", line(cards.get(1)));
        assertEquals("Not reported on 25 Mar 2026; 3 on 4 Mar 2026", line(cards.get(2)));
        assertEquals(Set.of(BodyRegion.NECK), cards.get(0).regions());
    }

    @Test
    void noReportIsNoCard() {
        assertTrue(cards(cases.open("Odo", "Unasked")).isEmpty());
    }

    @Test
    void theKeysOfAllZonesCanNameACard() {
        chart.zones().forEach(zone -> MapCard.symptom(zone.key(), zone.label(), "", "/", Set.of(zone.region())));
    }
}
