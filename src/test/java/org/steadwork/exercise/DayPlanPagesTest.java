package org.steadwork.exercise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steadwork.account.Role;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

@QuarkusTest
class DayPlanPagesTest {

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    private String programme;
    private String page;
    private Visitor clinician;

    @BeforeEach
    void openACase() {
        programme = "/cases/" + cases.open("Ottoline", "Daywright") + "/programme";
        page = programme + "/day-plan";
        clinician = accounts.visitor(Role.CLINICIAN);
    }

    @Test
    void anUndescribedDaySaysWhatToDoAndHasNoCalendar() {
        clinician.open(page);
        assertTrue(clinician.page().text().contains("The working day is not described yet."));
        clinician.open(page + ".ics");
        assertEquals(404, clinician.status());
    }

    @Test
    void exercisesAreLaidOnTheDay() {
        clinician.open(programme + "/add/sh_rolls");
        clinician.submit(programme + "/add/sh_rolls", Map.of("startedOn", "5 Mar 2026", "considered", "yes"));
        clinician.open(page);
        clinician.submit(page, Map.of("from", "8.30", "to", "16:30", "from2", "10:00", "to2", "11:30", "kind2", "meeting", "what2", "Planning"));
        assertEquals(200, clinician.status());
        String text = clinician.page().text();
        assertTrue(text.contains("08:30") && text.contains("16:30"), text);
        assertTrue(text.contains("From 10:00 to 11:30") || text.contains("sits for 90 minutes"), "a meeting of 90 minutes is sat too long: " + text);
        assertFalse(clinician.page().select("svg[role=img]").isEmpty());
        clinician.open(page + ".ics");
        assertEquals(200, clinician.status());
    }

    @ParameterizedTest
    @CsvSource({"from, 25:00, Work begins must be a time", "to, 08:00, Work must end after it begins", "spell, 15, must be a whole number from 20 to 120", "pause, x, must be a whole number from 5 to 30",
        "from1, 06:00, This lies outside the working day", "to1, 12:00, A fixed time must end after it begins", "what2, Standup, From is missing"})
    void wrongInputIsToldAtItsFieldAndNothingStored(String field, String value, String message) {
        clinician.open(page);
        clinician.submit(page, Map.of(field, value));
        assertEquals(422, clinician.status());
        assertTrue(clinician.page().select(".field__error").text().contains(message), clinician.page().select(".field__error").text());
        assertEquals(value, clinician.page().select("#" + field).val());
        clinician.open(page);
        assertTrue(clinician.page().text().contains("not described yet"));
    }

    @Test
    void timesThatOverlapAreRefused() {
        clinician.open(page);
        clinician.submit(page, Map.of("from2", "12:45", "to2", "13:30", "kind2", "meeting"));
        assertEquals(422, clinician.status());
        assertTrue(clinician.page().select("#from2-error").text().contains("This begins before “Lunch” ends, at 13:00."));
    }

    @Test
    void aDayLaidMeanwhileIsShownBesideTheOneTyped() {
        clinician.open(page);
        Visitor other = accounts.visitor(Role.LEAD);
        other.open(page);
        other.submit(page, Map.of("to", "16:00"));
        assertEquals(200, other.status());
        clinician.submit(page, Map.of("to", "18:00"));
        assertEquals(409, clinician.status());
        assertEquals("18:00", clinician.page().select("#to").val());
        assertTrue(clinician.page().select("#to-stored").text().contains("16:00"));
    }
}
