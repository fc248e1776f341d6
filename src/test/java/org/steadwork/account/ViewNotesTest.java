package org.steadwork.account;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import io.quarkus.test.junit.QuarkusMock;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

/** Nothing of a case is shown that was not noted. */
@QuarkusTest
class ViewNotesTest {

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    AuditTrail audit;

    @Test
    void aPageIsNotShownWhenItsNoteCannotBeStored() {
        long id = cases.open("Philomena", "Unnoted");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        QuarkusMock.installMockForType(new AuditTrail() {

            @Override
            AuditEvent prepared(String action, Long patientId, Long caseFileId, String detail) {
                return null;
            }

            @Override
            void store(AuditEvent event) {
                throw new IllegalStateException("the trail takes nothing");
            }
        }, AuditTrail.class);
        visitor.open("/cases/" + id + "/symptoms");
        assertEquals(500, visitor.status());
        assertFalse(visitor.page().text().contains("Unnoted"));
    }

    @Test
    void theNoteSaysWhoSawWhatAndIsThereWhenThePageIs() {
        long id = cases.open("Philomena", "Noted");
        Account account = accounts.fresh(Role.CLINICIAN);
        accounts.visitor(account).open("/cases/" + id + "/outcomes");
        List<AuditEvent> latest = audit.latest(20).stream().filter(event -> event.caseFileId() != null && event.caseFileId() == id).toList();
        assertEquals("viewed outcomes", latest.get(0).action());
        assertEquals(account.displayName(), latest.get(0).actor());
    }
}
