package org.steadwork.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a search for a patient finds, and in which order, among those each test registers: others of the clinic may have a like name. */
@QuarkusTest
class SearchTest {

    private static final LocalDate BORN = LocalDate.of(1979, 5, 17);

    @Inject
    Patients patients;

    private final Set<Long> registered = new HashSet<>();

    @Test
    void everyWordTypedBeginsAWordOfTheName() {
        register("Wilhelmina", "Zebrowitz-Quist");
        register("Wilhelmina", "Zebrowska");
        assertEquals(List.of("Wilhelmina Zebrowitz-Quist", "Wilhelmina Zebrowska"), found("zebrow"));
        assertEquals(List.of("Wilhelmina Zebrowitz-Quist"), found("wil quist"));
        assertEquals(List.of("Wilhelmina Zebrowitz-Quist"), found("QUIST, w"));
        assertEquals(List.of("Wilhelmina Zebrowska", "Wilhelmina Zebrowitz-Quist"), found("zebrowska wilhelmina"));
        assertEquals(List.of(), found("zebrow nobody"));
        assertEquals(List.of(), found("z"));
    }

    @Test
    void aSlipIsForgivenAndStandsBehindWhatWasMeantToTheLetter() {
        register("Tadhg", "Vexlington");
        register("Tadhg", "Vexlingtan");
        assertEquals(List.of("Tadhg Vexlington", "Tadhg Vexlingtan"), found("vexlington"));
        assertEquals(2, found("vexlinton").size());
        assertEquals(2, found("tadgh vexlinton").size());
    }

    @Test
    void manyOfALikeNameDoNotCrowdOutTheLikeliest() {
        for (int i = 0; i < NameSearch.CANDIDATES + 5; i++) {
            register("Quenby", "Marrowbanke");
        }
        register("Quenby", "Marrowbark");
        assertEquals("Quenby Marrowbark", found("marrowbarc").get(0));
        assertEquals("Quenby Marrowbark", found("quenbi marrowbarc").get(0));
    }

    @Test
    void aShortWordBesideASlipBeginsAnyWord() {
        for (char letter = 'a'; letter <= 'y'; letter++) {
            register("Joa" + letter, "Brindlecote");
        }
        register("Jozyx", "Quillfeather");
        assertEquals(List.of("Jozyx Quillfeather"), found("jo quilfeather"));
        assertEquals(List.of(), found("jx quilfeather"));
    }

    @Test
    void aChangedNameIsFoundByTheNewAndNoLongerByTheOld() {
        long id = register("Xyvanthe", "Grimthwaitley");
        QuarkusTransaction.requiringNew().run(() -> patients.findById(id).identify("Xyvanthe", "Pellingsworth", BORN));
        assertEquals(List.of("Xyvanthe Pellingsworth"), found("pellingsw"));
        assertEquals(List.of("Xyvanthe Pellingsworth"), found("xyvanthe"));
        assertEquals(List.of(), found("grimthwaitl"));
    }

    @Test
    void accentsAndOtherScriptsAreFound() {
        register("Ñandú", "Østergård");
        register("李", "小龙");
        register("강".repeat(80), "힣".repeat(80));
        assertEquals(List.of("Ñandú Østergård"), found("nandu oster"));
        assertEquals(List.of("李 小龙"), found("小龙"));
        assertEquals(List.of("강".repeat(80) + " " + "힣".repeat(80)), found("강강강"));
    }

    @Test
    void manyOfOneNameAreCutOffAndTheSecondWordTellsThemApart() {
        for (int i = 0; i < 80; i++) {
            register("Oona" + (char) ('a' + i % 26) + (char) ('a' + i / 26), "Massingberd");
        }
        assertEquals(12, found("massingb").size());
        assertTrue(found("massingberd oonazc").contains("Oonazc Massingberd"));
        assertFalse(found("massingberd oonazc").contains("Oonaaa Massingberd"));
    }

    private List<String> found(String typed) {
        return QuarkusTransaction.requiringNew()
                .call(() -> patients.search(typed, 12).stream().filter(row -> registered.contains(row.id())).map(PatientRow::name).toList());
    }

    private long register(String given, String family) {
        return QuarkusTransaction.requiringNew().call(() -> {
            Patient patient = new Patient(patients.nextFileNumber(), given, family, BORN, LocalDate.of(2026, 1, 1));
            patients.persist(patient);
            registered.add(patient.id());
            return patient.id();
        });
    }
}
