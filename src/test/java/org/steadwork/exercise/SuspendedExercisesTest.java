package org.steadwork.exercise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.body.BodyRegion;
import org.steadwork.casefile.CaseFile;
import org.steadwork.content.Content;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

/** Whatever a red flag suspends, no way to the patient offers it: seeded random programmes and suspensions, every way tried. */
@QuarkusTest
class SuspendedExercisesTest {

    /** Raise it for a long run: {@code -Dsteadwork.rounds=500}. */
    private static final int ROUNDS = Integer.getInteger("steadwork.rounds", 12);
    private static final int GIVEN = 9;
    private static final List<String> TOKENS = Content.yaml("red-flags/suspensions.yaml").entries("tokens").stream().map(entry -> entry.text("token"))
            .filter(token -> !token.equals("none")).toList();

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    TestHolds holds;

    @Inject
    ExerciseCatalogue catalogue;

    @Inject
    Prescriptions prescriptions;

    @Inject
    Programmes programmes;

    @Inject
    OwnProgrammes own;

    private final Random random = new Random(2026);

    @Test
    void noWayToThePatientOffersWhatIsSuspended() {
        long id = cases.open("Perpetua", "Holdfast");
        Visitor clinician = accounts.visitor(Role.CLINICIAN);
        layADay(clinician, id);
        Set<String> everHeld = new HashSet<>();
        for (int round = 0; round < ROUNDS; round++) {
            List<String> keys = give(id);
            String token = TOKENS.get(random.nextInt(TOKENS.size()));
            BodyRegion region = BodyRegion.values()[random.nextInt(BodyRegion.values().length)];
            holds.suspend(id, token, Set.of(region), "A test holds it back");
            String where = token + " of " + region + " over " + keys;

            Set<String> held = held(id);
            everHeld.addAll(held);
            for (String name : own(id)) {
                assertFalse(held.contains(name), () -> "own page: " + name + ", " + where);
            }
            String day = clinician.open("/cases/" + id + "/programme/day-plan").select(".day-rows, .day-rows__head + ul").text();
            String sheet = clinician.open("/cases/" + id + "/programme/sheet").select(".handout__list, .handout__day").text();
            clinician.open("/cases/" + id + "/programme/day-plan.ics");
            String calendar = clinician.answer().asString().replaceAll("\\r?\\n ", "");
            for (String name : held) {
                assertFalse(day.contains(name), () -> "day plan: " + name + ", " + where);
                assertFalse(sheet.contains(name), () -> "sheet: " + name + ", " + where);
                assertFalse(calendar.contains(name), () -> "calendar: " + name + ", " + where);
            }
            if (token.equals("all_treatment")) {
                assertEquals(GIVEN, held.size(), "everything waits");
            }
            postIsRefused(clinician, id, held, where);
            holds.release(id);
        }
        assertTrue(everHeld.size() > 3, "the seed holds something back: " + everHeld);
    }

    private void layADay(Visitor clinician, long id) {
        String page = "/cases/" + id + "/programme/day-plan";
        clinician.open(page);
        clinician.submit(page, Map.of("from", "09:00", "to", "17:00"));
        assertEquals(200, clinician.status(), clinician.page().text());
    }

    /** Ends what was given and gives another handful. */
    private List<String> give(long id) {
        return QuarkusTransaction.requiringNew().call(() -> {
            prescriptions.of(id).stream().filter(Prescription::current).forEach(one -> prescriptions.delete(one));
            CaseFile file = prescriptions.getEntityManager().find(CaseFile.class, id);
            List<Exercise> all = new ArrayList<>(catalogue.all().stream().filter(one -> one.dose().timesADay() == null || one.dose().everyHours() == null).toList());
            List<String> keys = new ArrayList<>();
            for (int i = 0; i < GIVEN; i++) {
                Exercise exercise = all.remove(random.nextInt(all.size()));
                Prescription given = new Prescription(file, exercise, LocalDate.of(2026, 3, 5), "Test", Instant.EPOCH);
                given.dose(exercise.dose(), PrescribedSide.usual(exercise), exercise.kind().effort(), exercise.kind().painCeiling(), null);
                prescriptions.persist(given);
                keys.add(exercise.key());
            }
            return keys;
        });
    }

    private Set<String> held(long id) {
        return QuarkusTransaction.requiringNew().call(() -> programmes.of(prescriptions.getEntityManager().find(CaseFile.class, id)).held().stream()
                .map(item -> item.exercise().name()).collect(Collectors.toSet()));
    }

    private List<String> own(long id) {
        return QuarkusTransaction.requiringNew().call(() -> own.of(prescriptions.getEntityManager().find(CaseFile.class, id)).items().stream()
                .map(item -> item.name().replaceFirst(", (left|right) side$", "")).toList());
    }

    /** One held exercise is posted as if its button were there. */
    private void postIsRefused(Visitor clinician, long id, Set<String> held, String where) {
        catalogue.all().stream().filter(exercise -> held.contains(exercise.name())).findFirst().ifPresent(exercise -> {
            String add = "/cases/" + id + "/programme/add/" + exercise.key();
            String token = clinician.open("/cases/" + id + "/programme/add/gn_breathing").select("input[name=csrf-token]").first().val();
            clinician.post(add, Map.of("csrf-token", List.of(token), "startedOn", List.of("6 Mar 2026")));
            assertEquals(422, clinician.status(), exercise.key() + ", " + where);
        });
    }
}
