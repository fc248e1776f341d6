package org.steadwork.retention;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Account;
import org.steadwork.account.Role;
import org.steadwork.people.Patient;
import org.steadwork.people.Patients;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** Whoever found a session open cannot guess the password on a page that asks for it again. */
@QuarkusTest
class PasswordGuessesTest {

    private static final int FREE = 10;

    @Inject
    TestAccounts accounts;

    @Inject
    Patients patients;

    @Test
    void guessesAreSlowedDownEvenWithTheRightPasswordAmongThem() {
        long patient = QuarkusTransaction.requiringNew().call(() -> {
            Patient made = new Patient(patients.nextFileNumber(), "Gwendolyn", "Guessed", LocalDate.of(1970, 1, 2), LocalDate.of(2026, 1, 2));
            patients.persist(made);
            return made.id();
        });
        Account lead = accounts.fresh(Role.LEAD);
        Visitor visitor = accounts.visitor(lead);
        for (int i = 0; i < FREE; i++) {
            assertEquals("The password is not right. Type the password you sign in with.", tried(visitor, patient, "a wrong password " + i));
        }
        String waiting = tried(visitor, patient, TestAccounts.PASSWORD);
        assertTrue(waiting.startsWith("Too many tries. Wait "), waiting);
        Visitor other = accounts.visitor(accounts.fresh(Role.LEAD));
        assertEquals("", tried(other, patient, TestAccounts.PASSWORD), "nobody else waits");
    }

    /** Returns what stands at the field for the password, blank when nothing does. */
    private static String tried(Visitor visitor, long patient, String password) {
        visitor.open("/clinic/retention/" + patient);
        visitor.submit("/clinic/retention/" + patient + "/remove", Map.of("ground", "period_over", "fileNumber", "of somebody else", "password", password));
        assertEquals(422, visitor.status());
        return visitor.page().select("#password-error").text();
    }
}
