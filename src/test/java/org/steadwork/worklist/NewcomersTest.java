package org.steadwork.worklist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** People who were registered and have neither a case nor a visit to come. The days are a proposal of the content. */
@QuarkusTest
class NewcomersTest {

    @Inject
    TestAccounts accounts;

    @Inject
    RuleCases cases;

    private long register(Visitor desk, String family, int daysAgo) {
        desk.open("/patients/new");
        desk.submit("/patients/new", Map.of("givenName", "Ottilie", "familyName", family, "birthDate", "2 Apr " + (1970 + daysAgo % 20), "sex", "female", "handedness", "right"));
        assertEquals(200, desk.status(), desk.page().text());
        long id = Long.parseLong(desk.at().getPath().replaceAll("\\D", ""));
        cases.sql("update patient set registered_on = date '" + LocalDate.now().minusDays(daysAgo) + "' where id = " + id);
        return id;
    }

    private static String newcomers(Visitor visitor) {
        return visitor.open("/").select("section[aria-labelledby=newcomers] table").text();
    }

    @Test
    void newcomersStandOnTodayForTheDeskTooUntilACaseIsOpened() {
        Visitor desk = accounts.visitor(Role.ASSISTANT);
        Visitor clinician = accounts.visitor(Role.CLINICIAN);
        register(desk, "Newcome-Yesterday", 2);
        long id = register(desk, "Newcome-Waiting", 3);
        register(desk, "Newcome-Old", 61);
        for (Visitor visitor : new Visitor[] {desk, clinician}) {
            String shown = newcomers(visitor);
            assertTrue(shown.contains("Newcome-Waiting") && shown.contains("Nothing since."), shown);
            assertFalse(shown.contains("Newcome-Yesterday") || shown.contains("Newcome-Old"), shown);
        }
        assertTrue(clinician.page().select("section[aria-labelledby=newcomers] a[href$=/" + id + "/cases/new]").size() == 1);
        assertTrue(desk.page().select("a[href$=/cases/new]").isEmpty(), "the desk opens no case");
        clinician.open("/patients/" + id + "/cases/new");
        clinician.submit("/patients/" + id + "/cases/new", Map.of("complaint", "Neck ache"));
        assertEquals(200, clinician.status(), clinician.page().text());
        assertFalse(newcomers(desk).contains("Newcome-Waiting"));
    }

    @Test
    void theRuleIsShownWithTheOthers() {
        assertTrue(accounts.visitor(Role.CLINICIAN).open("/today/rules").text().contains("Newcomer without a case"));
    }
}
