package org.steadwork.account;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.elytron.security.common.BcryptUtil;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** Signing in with name and password, and the sessions that come of it. */
@QuarkusTest
class SignInTest {

    @Inject
    TestAccounts accounts;

    @Inject
    Accounts stored;

    @Inject
    EntityManager db;

    private static int addresses;

    @Test
    void theRightPasswordOpensAndTheTokenIsNewEachTime() {
        Account account = accounts.fresh(Role.CLINICIAN);
        Visitor visitor = signedIn(account, TestAccounts.PASSWORD);
        assertEquals("/", visitor.at().getPath());
        String first = visitor.sessionToken();
        visitor.open("/sign-in");
        visitor.submit("/sign-in", Map.of("userName", account.userName(), "password", TestAccounts.PASSWORD));
        assertNotEquals(first, visitor.sessionToken());
        assertEquals(303, plain(first, "/patients").statusCode(), "the session before has ended");
        assertEquals(200, plain(visitor.sessionToken(), "/patients").statusCode());
    }

    @Test
    void wrongNamesAndWrongPasswordsAreAnsweredAlike() {
        Account account = accounts.fresh(Role.CLINICIAN);
        Account out = accounts.fresh(Role.CLINICIAN);
        QuarkusTransaction.requiringNew().run(() -> stored.findById(out.id()).activate(false));
        List<String> answers = List.of(account.userName(), out.userName(), "nobody-of-this-name").stream().map(name -> {
            Visitor visitor = wrong(somewhere(), name, "wrong wrong wrong");
            assertEquals(422, visitor.status());
            return visitor.page().select("main").html().replace(name, "NAME").replaceAll("value=\"[^\"]{20,}\"", "");
        }).distinct().toList();
        assertEquals(1, answers.size(), () -> String.join("\n---\n", answers));
        assertEquals(422, wrong(somewhere(), out.userName(), TestAccounts.PASSWORD).status(), "out of use stays out");
    }

    @Test
    void aHashOfBeforeIsReplacedAtTheNextSignIn() {
        Account account = accounts.fresh(Role.CLINICIAN);
        String before = BcryptUtil.bcryptHash(TestAccounts.PASSWORD, 4);
        QuarkusTransaction.requiringNew().run(() -> db.createNativeQuery("update account set password_hash = ?1 where id = ?2").setParameter(1, before)
                .setParameter(2, account.id()).executeUpdate());
        assertEquals(422, wrong(somewhere(), account.userName(), "wrong wrong wrong").status());
        assertEquals(before, hash(account));
        signedIn(account, TestAccounts.PASSWORD);
        assertTrue(hash(account).startsWith("h1:"), hash(account));
        signedIn(account, TestAccounts.PASSWORD);
    }

    @Test
    void theCookieIsForThisHostAloneOverTls() {
        Account account = accounts.fresh(Role.CLINICIAN);
        String over = setCookie(account, "https");
        assertTrue(over.startsWith("__Host-steadwork-session="), over);
        for (String part : List.of("Secure", "HttpOnly", "Path=/", "SameSite=Strict")) {
            assertTrue(over.contains(part), over);
        }
        assertFalse(over.contains("Domain"), over);
        String token = over.replaceAll("^[^=]+=([^;]+);.*", "$1");
        assertEquals(303, given().redirects().follow(false).header("X-Forwarded-Proto", "https").cookie("steadwork-session", token).get("/patients").statusCode(),
                "the plain name is not taken over TLS");
        assertEquals(200, given().redirects().follow(false).header("X-Forwarded-Proto", "https").cookie("__Host-steadwork-session", token).get("/patients")
                .statusCode());
        String plain = setCookie(account, "http");
        assertTrue(plain.startsWith("steadwork-session="), plain);
        assertTrue(plain.contains("HttpOnly") && !plain.contains("Secure"), plain);
    }

    @Test
    void signingOutEndsTheSessionForEveryCopyOfItsCookie() {
        Account account = accounts.fresh(Role.ASSISTANT);
        Visitor visitor = signedIn(account, TestAccounts.PASSWORD);
        String copied = visitor.sessionToken();
        visitor.open("/patients");
        visitor.submit("/sign-out", Map.of());
        assertEquals(303, plain(copied, "/patients").statusCode());
    }

    @Test
    void onesOwnSessionsAreListedAndEnded() {
        Account account = accounts.fresh(Role.ASSISTANT);
        Visitor here = signedIn(account, TestAccounts.PASSWORD);
        Visitor there = signedIn(account, TestAccounts.PASSWORD);
        Visitor third = signedIn(account, TestAccounts.PASSWORD);
        assertEquals(3, here.open("/account").select("caption:contains(Open sessions) ~ tbody tr").size());
        assertEquals(1, here.page().select("tbody tr:contains(this one)").size());
        assertFalse(here.page().outerHtml().contains(OpaqueToken.hash(there.sessionToken())), "the page holds no hash");
        String number = here.page().select("tbody button[name=session]").get(0).val();
        Visitor stranger = accounts.visitor(accounts.fresh(Role.ASSISTANT));
        stranger.open("/account");
        stranger.post("/account/sessions/end", Map.of("csrf-token", List.of(stranger.page().select("[name=csrf-token]").val()), "session", List.of(number)));
        assertEquals(3, here.open("/account").select("tbody tr").size(), "nobody ends another's");
        here.submit("/account/sessions/end", Map.of("session", number));
        assertEquals(2, here.page().select("tbody tr").size());
        here.submit("/account/sessions/end", Map.of("session", "others"));
        assertEquals(1, here.page().select("tbody tr").size());
        assertEquals("Sign in · Steadwork", there.open("/patients").title());
        assertEquals("Sign in · Steadwork", third.open("/patients").title());
    }

    @Test
    void aChangedPasswordEndsAllOthersAndRenewsThisOne() {
        Account account = accounts.fresh(Role.CLINICIAN);
        Visitor here = signedIn(account, TestAccounts.PASSWORD);
        Visitor there = signedIn(account, TestAccounts.PASSWORD);
        String before = here.sessionToken();
        here.open("/account/password");
        String next = "kettle violin harbour quilt";
        here.submit("/account/password", Map.of("present", "not the present one", "password", next, "passwordAgain", next));
        assertEquals(422, here.status());
        assertTrue(here.page().select("#present-error").text().contains("is not right"), here.page().text());
        here.submit("/account/password", Map.of("present", TestAccounts.PASSWORD, "password", "password-2026", "passwordAgain", "password-2026"));
        assertEquals(422, here.status());
        here.submit("/account/password", Map.of("present", TestAccounts.PASSWORD, "password", next, "passwordAgain", next + "s"));
        assertEquals(422, here.status());
        for (String length : List.of("x".repeat(11), "x1y2".repeat(33))) {
            here.submit("/account/password", Map.of("present", TestAccounts.PASSWORD, "password", length, "passwordAgain", length));
            assertTrue(here.page().select("#password-error").text().contains("12 to 128"), here.page().text());
        }
        here.submit("/account/password", Map.of("present", TestAccounts.PASSWORD, "password", next, "passwordAgain", next));
        assertEquals(200, here.status(), here.page().text());
        assertNotEquals(before, here.sessionToken());
        assertEquals(303, plain(before, "/patients").statusCode());
        assertEquals("Sign in · Steadwork", there.open("/patients").title());
        signedIn(account, next);
        assertEquals(422, wrong(somewhere(), account.userName(), TestAccounts.PASSWORD).status());
    }

    @Test
    void onlyAPathOfOurOwnFollowsASignIn() {
        assertEquals("/cases/7/visits", WayOn.safe("/cases/7/visits"));
        for (String to : List.of("//evil.example", "https://evil.example", "/\\evil.example", "/sign-out", "javascript:x", "/a?b=//c", "")) {
            assertEquals("/", WayOn.safe(to), to);
        }
        assertEquals("/", WayOn.safe(null));
    }

    @Test
    void theTrailSaysFromWhere() {
        Account account = accounts.fresh(Role.CLINICIAN);
        String address = somewhere();
        Visitor visitor = new Visitor().from(address);
        visitor.open("/sign-in");
        visitor.submit("/sign-in", Map.of("userName", account.userName(), "password", TestAccounts.PASSWORD));
        List<String> addresses = QuarkusTransaction.requiringNew().call(() -> db.createQuery("select e.address from AuditEvent e where e.accountId = ?1"
                + " and e.action = 'signed in'", String.class).setParameter(1, account.id()).getResultList());
        assertEquals(List.of(address), addresses);
    }

    static String somewhere() {
        addresses++;
        return "198.18." + addresses / 200 + "." + (1 + addresses % 200);
    }

    static Visitor wrong(String address, String name, String password) {
        Visitor visitor = new Visitor().from(address);
        visitor.open("/sign-in");
        visitor.submit("/sign-in", Map.of("userName", name, "password", password));
        return visitor;
    }

    static Visitor signedIn(Account account, String password) {
        Visitor visitor = wrong(somewhere(), account.userName(), password);
        assertEquals(200, visitor.status(), () -> visitor.page().text());
        return visitor;
    }

    private String hash(Account account) {
        return QuarkusTransaction.requiringNew().call(() -> (String) db.createNativeQuery("select password_hash from account where id = ?1")
                .setParameter(1, account.id()).getSingleResult());
    }

    private static Response plain(String token, String path) {
        return given().redirects().follow(false).cookie("steadwork-session", token).get(path);
    }

    private static String setCookie(Account account, String scheme) {
        Response page = given().header("X-Forwarded-Proto", scheme).get("/sign-in");
        String csrf = Jsoup.parse(page.asString()).select("[name=csrf-token]").val();
        Response answer = given().redirects().follow(false).header("X-Forwarded-Proto", scheme).header("X-Forwarded-For", somewhere())
                .cookies(page.cookies()).formParam("csrf-token", csrf).formParam("userName", account.userName())
                .formParam("password", TestAccounts.PASSWORD).post("/sign-in");
        assertEquals(303, answer.statusCode());
        return answer.headers().getValues("Set-Cookie").stream().filter(cookie -> cookie.contains("session")).findFirst().orElseThrow();
    }
}
