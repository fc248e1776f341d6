package org.steadwork.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.steadwork.body.SymptomKind;
import org.steadwork.people.Patient;

class SymptomReportTest {

    private static final LocalDate OPENED = LocalDate.of(2030, 5, 6);
    private static final LocalDate TODAY = LocalDate.of(2030, 5, 20);

    private final CaseFile file = new CaseFile(new Patient("SW-1", "Bram", "Oduya", LocalDate.of(2001, 2, 3), OPENED), null,
            "Low back pain", null, OPENED);

    private static RegionReading named(String zone) {
        return new RegionReading(zone, null, null, null, null, null, Set.of(), null, null);
    }

    @Test
    void theDayLiesBetweenOpeningAndToday() {
        assertEquals(OPENED, new SymptomReport(file, OPENED, TODAY).reportedOn());
        assertEquals(TODAY, new SymptomReport(file, TODAY, TODAY).reportedOn());
        assertThrows(IllegalArgumentException.class, () -> new SymptomReport(file, OPENED.minusDays(1), TODAY));
        assertThrows(IllegalArgumentException.class, () -> new SymptomReport(file, TODAY.plusDays(1), TODAY));
    }

    @Test
    void zonesAreReplacedByWhatIsSaidNow() {
        SymptomReport report = new SymptomReport(file, TODAY, TODAY);
        report.report(SymptomPattern.notAsked(), List.of(named("low_back"), named("calf_r")), false);
        RegionReading neck = new RegionReading("neck", 3, null, null, null, null, Set.of(SymptomKind.ACHE), "2029", null);
        report.report(SymptomPattern.notAsked(), List.of(named("low_back"), neck), false);
        assertEquals(List.of(named("low_back"), neck), report.readings());
        assertFalse(report.symptomFree());
    }

    @Test
    void noZoneMustBeSaidInSoManyWords() {
        SymptomReport report = new SymptomReport(file, TODAY, TODAY);
        assertThrows(IllegalArgumentException.class, () -> report.report(SymptomPattern.notAsked(), List.of(), false));
        List<RegionReading> one = List.of(named("neck"));
        assertThrows(IllegalArgumentException.class, () -> report.report(SymptomPattern.notAsked(), one, true));
        List<RegionReading> twice = List.of(named("neck"), named("neck"));
        assertThrows(IllegalArgumentException.class, () -> report.report(SymptomPattern.notAsked(), twice, false));
        report.report(SymptomPattern.notAsked(), List.of(), true);
        assertTrue(report.symptomFree());
    }

    @Test
    void scoresLieOnTheScaleAndNullIsNotAsked() {
        assertThrows(IllegalArgumentException.class,
                () -> new RegionReading("neck", 11, null, null, null, null, Set.of(), null, null));
        assertThrows(IllegalArgumentException.class,
                () -> new RegionReading("neck", null, null, null, null, -1, Set.of(), null, null));
        assertEquals("pain not asked, kind not said", named("neck").mark().words());
    }

    @Test
    void aLaterReportAsksEveryNumberAnew() {
        RegionReading before = new RegionReading("neck", 3, 5, 4, 6, 2, Set.of(SymptomKind.ACHE), "2029", "worse sitting");
        assertEquals(new RegionReading("neck", null, null, null, null, null, Set.of(SymptomKind.ACHE), "2029", "worse sitting"),
                before.askedAnew());
    }

    @Test
    void kindsReadBackFromTheirColumn() {
        KindsColumn column = new KindsColumn();
        Set<SymptomKind> kinds = Set.of(SymptomKind.STIFFNESS, SymptomKind.ACHE);
        assertEquals("ache;stiffness", column.convertToDatabaseColumn(kinds));
        assertEquals(kinds, column.convertToEntityAttribute("ache;stiffness"));
        assertEquals(Set.of(), column.convertToEntityAttribute(""));
    }
}
