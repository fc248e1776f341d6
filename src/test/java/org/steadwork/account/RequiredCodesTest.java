package org.steadwork.account;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.Instant;
import java.util.Map;
import org.apache.commons.codec.binary.Base32;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steadwork.account.code.OneTimeCode;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** Where one-time codes are asked of everybody, nobody comes in without setting them up. */
@QuarkusTest
@Tag("own-clinic")
@TestProfile(RequiredCodes.class)
class RequiredCodesTest {

    @Inject
    TestAccounts accounts;

    @Inject
    EntityManager db;

    private final Clock clock = Clock.systemUTC();

    @Test
    void theFirstSignInSetsThemUp() {
        Account account = accounts.fresh(Role.ASSISTANT);
        Visitor visitor = SignInTest.wrong(SignInTest.somewhere(), account.userName(), TestAccounts.PASSWORD);
        assertEquals("Set up one-time codes · Steadwork", visitor.page().title());
        assertEquals("Sign in · Steadwork", visitor.open("/patients").title(), "nothing opens before");
        visitor.open("/sign-in/enrol");
        visitor.submit("/sign-in/enrol", Map.of("code", "000000"));
        assertEquals(422, visitor.status());
        byte[] key = new Base32().decode(visitor.page().select(".code-offer__key").text().replace(" ", ""));
        visitor.submit("/sign-in/enrol", Map.of("code", OneTimeCode.of(key, OneTimeCode.step(Instant.now(clock)))));
        assertEquals(10, visitor.page().select(".code-list code").size(), visitor.page().text());
        assertEquals("Patients · Steadwork", visitor.open("/patients").title());
        visitor.open("/account/codes");
        assertEquals(0, visitor.page().select("form[action=/account/codes/off]").size(), "nobody takes them off alone");
        String kept = QuarkusTransaction.requiringNew().call(() -> (String) db.createNativeQuery("select code_key from account where id = ?1")
                .setParameter(1, account.id()).getSingleResult());
        assertTrue(kept.startsWith("g1:"), kept);
    }
}
