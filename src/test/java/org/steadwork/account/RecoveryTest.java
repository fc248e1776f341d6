package org.steadwork.account;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** The lead keeps the accounts, and helps who is locked out; the command helps a lead who is. */
@QuarkusTest
class RecoveryTest {

    private static final String NEW = "kettle violin harbour quilt";

    @Inject
    TestAccounts accounts;

    @Inject
    Accounts stored;

    @Inject
    RecoverLead command;

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    @Test
    void aColleagueSetsThePasswordAndTheLeadNeverKnowsIt() {
        Visitor lead = accounts.visitor(Role.LEAD);
        String name = "colleague-" + System.nanoTime();
        lead.open("/clinic/accounts/new");
        lead.submit("/clinic/accounts/new", Map.of("fullName", "Una Lowther-Beck", "displayName", "U. Lowther", "role", "assistant", "userName", name));
        assertEquals(200, lead.status(), lead.page().text());
        String link = link(lead);
        assertEquals(422, SignInTest.wrong(SignInTest.somewhere(), name, "").status(), "no password opens an account that has none");
        Visitor colleague = new Visitor();
        colleague.open(link);
        colleague.submit(link, Map.of("password", "lowther-beck-una", "passwordAgain", "lowther-beck-una"));
        assertEquals(422, colleague.status(), "made of their own names");
        colleague.submit(link, Map.of("password", NEW, "passwordAgain", NEW));
        assertEquals("Sign in · Steadwork", colleague.page().title());
        assertEquals(404, new Visitor().open(link).select("h1").text().equals("Not found") ? 404 : 200, "it opens once");
        Account made = QuarkusTransaction.requiringNew().call(() -> stored.named(name).orElseThrow());
        SignInTest.signedIn(made, NEW);
    }

    @Test
    void aLinkEndsWithTheNextOneAfterADayAndWithTheAccount() {
        Account account = accounts.fresh(Role.CLINICIAN);
        Visitor lead = accounts.visitor(Role.LEAD);
        String first = linkFor(lead, account);
        String second = linkFor(lead, account);
        assertEquals(404, status(first));
        assertEquals(200, status(second));
        QuarkusTransaction.requiringNew().run(() -> db.createNativeQuery("update sign_in_link set made_at = ?1, expires_at = ?2 where account_id = ?3")
                .setParameter(1, Timestamp.from(Instant.now(clock).minusSeconds(90_000))).setParameter(2, Timestamp.from(Instant.now(clock).minusSeconds(1)))
                .setParameter(3, account.id()).executeUpdate());
        assertEquals(404, status(second));
        String third = linkFor(lead, account);
        lead.open("/clinic/accounts/" + account.id());
        lead.submit("/clinic/accounts/" + account.id() + "/use", Map.of("do", "out"));
        assertEquals(404, status(third));
        String hashes = QuarkusTransaction.requiringNew().call(() -> db.createNativeQuery("select token_hash from sign_in_link").getResultList().toString());
        assertFalse(hashes.contains(third.substring("/sign-in/link/".length())));
    }

    @Test
    void anotherRoleAndOutOfUseEndTheSessions() {
        Account account = accounts.fresh(Role.CLINICIAN);
        Visitor colleague = accounts.visitor(account);
        assertEquals(200, colleague.open("/bench").select("h1").size() == 1 ? 200 : 0);
        Visitor lead = accounts.visitor(Role.LEAD);
        String page = "/clinic/accounts/" + account.id();
        lead.open(page);
        lead.submit(page, Map.of("role", "assistant"));
        assertEquals(200, lead.status(), lead.page().text());
        assertEquals("Sign in · Steadwork", colleague.open("/patients").title());
        Visitor again = accounts.visitor(account);
        lead.submit(page + "/use", Map.of("do", "out"));
        assertEquals("Sign in · Steadwork", again.open("/patients").title());
        assertEquals(422, SignInTest.wrong(SignInTest.somewhere(), account.userName(), TestAccounts.PASSWORD).status());
        lead.submit(page + "/use", Map.of("do", "back"));
        SignInTest.signedIn(account, TestAccounts.PASSWORD);
    }

    @Test
    void theLeadEndsAnybodysSessions() {
        Account account = accounts.fresh(Role.CLINICIAN);
        Visitor one = accounts.visitor(account);
        Visitor two = accounts.visitor(account);
        Visitor lead = accounts.visitor(Role.LEAD);
        String page = "/clinic/accounts/" + account.id();
        lead.open(page);
        assertEquals(2, lead.page().select("tbody tr").size());
        lead.submit(page + "/sessions/end", Map.of("session", lead.page().select("tbody button").get(0).val()));
        assertEquals(1, lead.page().select("tbody tr").size());
        lead.submit(page + "/sessions/end", Map.of("session", "all"));
        assertEquals("Sign in · Steadwork", one.open("/patients").title());
        assertEquals("Sign in · Steadwork", two.open("/patients").title());
    }

    @Test
    void anOldVersionIsRefusedWithBothShown() {
        Account account = accounts.fresh(Role.CLINICIAN);
        Visitor one = accounts.visitor(Role.LEAD);
        Visitor two = accounts.visitor(Role.LEAD);
        String page = "/clinic/accounts/" + account.id();
        one.open(page);
        two.open(page);
        one.submit(page, Map.of("registration", "REG-1"));
        two.submit(page, Map.of("registration", "REG-2"));
        assertEquals(409, two.status());
        assertTrue(two.page().select("#registration-stored").text().contains("REG-1"));
        assertEquals("REG-2", two.page().select("[name=registration]").val());
    }

    @Test
    void theLastLeadStaysOne() {
        Account only = accounts.of(Role.LEAD);
        QuarkusTransaction.requiringNew().run(() -> stored.leads().stream().filter(one -> !one.id().equals(only.id())).forEach(one -> one.activate(false)));
        Visitor lead = accounts.visitor(Role.LEAD);
        String page = "/clinic/accounts/" + only.id();
        lead.open(page);
        lead.submit(page + "/use", Map.of("do", "out"));
        assertEquals(422, lead.status());
        lead.submit(page, Map.of("role", "clinician"));
        assertEquals(422, lead.status());
        assertTrue(lead.page().select("#role-error").text().contains("only lead"));
    }

    @Test
    void theCommandPrintsALinkForALockedOutLead() {
        Account account = accounts.fresh(Role.LEAD);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertEquals(2, command.recover(List.of("nobody-of-this-name"), new PrintStream(out, true, StandardCharsets.UTF_8)));
        assertEquals(2, command.recover(List.of("one", "two"), new PrintStream(out, true, StandardCharsets.UTF_8)));
        assertEquals(2, command.recover(List.of(accounts.fresh(Role.CLINICIAN).userName()), new PrintStream(out, true, StandardCharsets.UTF_8)));
        out.reset();
        assertEquals(0, command.recover(List.of(account.userName(), "without-codes"), new PrintStream(out, true, StandardCharsets.UTF_8)));
        Matcher link = Pattern.compile("http://localhost:\\d+(/sign-in/link/[A-Za-z0-9_-]{43})").matcher(out.toString(StandardCharsets.UTF_8));
        assertTrue(link.find(), out.toString(StandardCharsets.UTF_8));
        Visitor lead = new Visitor();
        lead.open(link.group(1));
        lead.submit(link.group(1), Map.of("password", NEW, "passwordAgain", NEW));
        SignInTest.signedIn(account, NEW);
    }

    private static String linkFor(Visitor lead, Account account) {
        lead.open("/clinic/accounts/" + account.id());
        lead.submit("/clinic/accounts/" + account.id() + "/link", Map.of("do", "link"));
        return link(lead);
    }

    private static String link(Visitor lead) {
        return URI.create(lead.page().select(".code-offer__key").text()).getPath();
    }

    private static int status(String path) {
        Visitor visitor = new Visitor();
        visitor.open(path);
        return visitor.status();
    }
}
