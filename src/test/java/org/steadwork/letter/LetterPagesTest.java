package org.steadwork.letter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

@QuarkusTest
class LetterPagesTest {

    @Inject
    TestAccounts accounts;

    @Inject
    LetterCases cases;

    @Test
    void anEmptyCaseSaysWhatToDo() {
        LetterCases.Made made = cases.make();
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open("/cases/" + made.caseId() + "/letters");
        assertEquals(200, visitor.status());
        assertTrue(visitor.page().text().contains("No letter yet"), visitor.page().text());
    }
}
