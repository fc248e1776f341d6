package org.steadwork.account;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.apache.commons.codec.binary.Base32;
import org.junit.jupiter.api.Test;
import org.steadwork.account.code.OneTimeCode;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** Setting up one-time codes, signing in with them, and what helps when the phone is gone. */
@QuarkusTest
class SecondFactorTest {

    @Inject
    TestAccounts accounts;

    @Inject
    EntityManager db;

    private final Clock clock = Clock.systemUTC();

    @Test
    void fromSettingUpToSigningInWithARecoveryCode() {
        Account account = accounts.fresh(Role.CLINICIAN);
        Visitor visitor = accounts.visitor(account);
        visitor.open("/account/codes");
        visitor.submit("/account/codes/begin", Map.of("present", "not my password"));
        assertEquals(422, visitor.status());
        visitor.submit("/account/codes/begin", Map.of("present", TestAccounts.PASSWORD));
        assertEquals(200, visitor.status(), visitor.page().text());
        assertEquals(1, visitor.page().select(".code-offer svg").size());
        byte[] key = new Base32().decode(visitor.page().select(".code-offer__key").text().replace(" ", ""));
        assertEquals(20, key.length);
        SignInTest.signedIn(account, TestAccounts.PASSWORD); // not in force yet
        visitor.submit("/account/codes/confirm", Map.of("code", "000000"));
        assertEquals(422, visitor.status());
        String first = OneTimeCode.of(key, now());
        visitor.submit("/account/codes/confirm", Map.of("code", first));
        List<String> recovery = visitor.page().select(".code-list code").eachText();
        assertEquals(10, recovery.size());
        assertEquals("One-time code · Steadwork", password(account).page().title());

        Visitor again = password(account);
        assertEquals("Sign in · Steadwork", again.open("/patients").title(), "the password alone opens nothing");
        again.open("/sign-in/code");
        again.submit("/sign-in/code", Map.of("code", first));
        assertEquals(422, again.status(), "a code that was taken is not taken again");
        again.submit("/sign-in/code", Map.of("code", OneTimeCode.of(key, now() + 1)));
        assertEquals(200, again.status(), again.page().text());
        assertEquals("/", again.at().getPath());

        Visitor withPaper = password(account);
        withPaper.submit("/sign-in/code", Map.of("code", recovery.get(3).toLowerCase()));
        assertEquals(200, withPaper.status(), withPaper.page().text());
        assertTrue(withPaper.open("/account").text().contains("9 recovery codes left"), withPaper.page().text());
        Visitor twice = password(account);
        twice.submit("/sign-in/code", Map.of("code", recovery.get(3)));
        assertEquals(422, twice.status(), "a recovery code opens once");
        String stored = QuarkusTransaction.requiringNew().call(() -> db.createNativeQuery("select code_hash from recovery_code where account_id = ?1")
                .setParameter(1, account.id()).getResultList().toString());
        assertFalse(stored.contains(recovery.get(4).replace(" ", "")), "only hashes are kept");

        visitor = withPaper;
        visitor.open("/account/codes");
        visitor.submit("/account/codes/recovery", Map.of("present", TestAccounts.PASSWORD));
        assertEquals(10, visitor.page().select(".code-list code").size());
        Visitor old = password(account);
        old.submit("/sign-in/code", Map.of("code", recovery.get(5)));
        assertEquals(422, old.status(), "those of before open no more");
        visitor.open("/account/codes");
        visitor.submit("/account/codes/off", Map.of("presentOff", TestAccounts.PASSWORD));
        assertEquals("/", password(account).at().getPath());
    }

    @Test
    void afterFiveWrongCodesThePasswordIsAskedForAgain() {
        Account account = enrolled();
        Visitor visitor = password(account);
        for (int i = 0; i < 4; i++) {
            visitor.submit("/sign-in/code", Map.of("code", "12345" + i));
            assertEquals(422, visitor.status());
        }
        visitor.submit("/sign-in/code", Map.of("code", "123456"));
        assertEquals("Sign in · Steadwork", visitor.page().title());
        assertEquals("Sign in · Steadwork", visitor.open("/sign-in/code").title());
    }

    @Test
    void theLeadTakesThemOffForWhoLostThePhone() {
        Account account = enrolled();
        Visitor lead = accounts.visitor(Role.LEAD);
        lead.open("/clinic/accounts/" + account.id());
        lead.submit("/clinic/accounts/" + account.id() + "/codes/off", Map.of("do", "off"));
        assertEquals(200, lead.status(), lead.page().text());
        assertEquals("/", password(account).at().getPath());
    }

    private Account enrolled() {
        Account account = accounts.fresh(Role.CLINICIAN);
        Visitor visitor = accounts.visitor(account);
        visitor.open("/account/codes");
        visitor.submit("/account/codes/begin", Map.of("present", TestAccounts.PASSWORD));
        byte[] key = new Base32().decode(visitor.page().select(".code-offer__key").text().replace(" ", ""));
        visitor.submit("/account/codes/confirm", Map.of("code", OneTimeCode.of(key, now())));
        assertEquals(10, visitor.page().select(".code-list code").size(), visitor.page().text());
        return account;
    }

    private static Visitor password(Account account) {
        return SignInTest.wrong(SignInTest.somewhere(), account.userName(), TestAccounts.PASSWORD);
    }

    private long now() {
        return OneTimeCode.step(Instant.now(clock));
    }
}
