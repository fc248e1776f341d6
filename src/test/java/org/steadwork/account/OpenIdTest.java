package org.steadwork.account;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusMock;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.Clock;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.eclipse.microprofile.config.Config;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** Signing in through the clinic's OpenID Connect provider: who comes in, as whom, and who does not. */
@QuarkusTest
@Tag("own-clinic")
@TestProfile(WithProvider.class)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class OpenIdTest {

    private static final String CLINICIANS = "clinic-clinicians";
    private static final String REFUSED = "/sign-in?after=openid-refused";
    private static final String FAILED = "/sign-in?after=openid-failed";

    @Inject
    TestAccounts accounts;

    @Inject
    Accounts stored;

    @Inject
    Sessions sessions;

    @Inject
    SecondFactors factors;

    @Inject
    Config config;

    @Inject
    EntityManager db;

    @ConfigProperty(name = "steadwork.openid.provider")
    String issuer;

    private static ProviderStub stub;

    @BeforeEach
    void theProviderRuns() {
        if (stub == null) {
            aProviderThatIsAwayIsSaidSoAndFoundAgain();
        }
    }

    @AfterAll
    static void stop() {
        stub.stop();
        stub = null;
    }

    /** Runs before all others: the clinic has started without its provider. */
    @Test
    @Order(1)
    void aProviderThatIsAwayIsSaidSoAndFoundAgain() {
        if (stub != null) {
            return;
        }
        Visitor visitor = new Visitor();
        assertEquals("Sign in with Alder People", visitor.open("/sign-in").select("a[href=/sign-in/openid]").text());
        visitor.open("/sign-in/openid?to=/patients");
        assertEquals(200, visitor.status());
        assertTrue(visitor.page().select("[role=alert]").text().contains("Alder People cannot be reached"), visitor.page().text());
        assertEquals(1, visitor.page().select("form[action=/sign-in] [name=to][value=/patients]").size(), "the way on is kept");
        stub = new ProviderStub(issuer);
        assertNotNull(new ProviderFlow(stub, issuer).begin("/").get("state"));
    }

    @Test
    void theFirstSignInLinksAndOpensOurOwnSession() throws Exception {
        Account account = allowed(Role.CLINICIAN);
        ProviderFlow flow = flow();
        Map<String, String> asked = flow.begin("/patients");
        assertEquals("code", asked.get("response_type"));
        assertEquals("S256", asked.get("code_challenge_method"));
        assertEquals("openid profile", asked.get("scope"));
        assertTrue(asked.get("redirect_uri").endsWith("/sign-in/openid/back"), asked.toString());
        String subject = someone();
        Response answer = flow.back(flow.claims(subject, account.userName(), CLINICIANS));
        assertEquals("/patients", ProviderFlow.next(answer));
        String cookie = answer.headers().getValues("Set-Cookie").stream().filter(one -> one.startsWith("steadwork-session=")).findFirst().orElseThrow();
        assertTrue(cookie.contains("HttpOnly") && cookie.contains("SameSite=Strict") && cookie.contains("Path=/"), cookie);
        Visitor visitor = visitor(answer);
        assertEquals("Patients · Steadwork", visitor.open("/patients").title());
        assertEquals(1, visitor.open("/account").select("tbody tr").size(), "the session is listed as any other");
        assertEquals(List.of("linked account", "signed in"), trail(account));
        assertEquals("OpenID Connect", detail(account, "signed in"));
        Map<String, String> taken = ProviderFlow.parameters(java.net.URI.create("x:/?" + stub.asked(flow.code())));
        assertEquals(asked.get("code_challenge"), Base64.getUrlEncoder().withoutPadding()
                .encodeToString(MessageDigest.getInstance("SHA-256").digest(taken.get("code_verifier").getBytes(StandardCharsets.US_ASCII))));
        assertEquals(subject, QuarkusTransaction.requiringNew().call(() -> db.createNativeQuery("select openid_subject from account where id = ?1")
                .setParameter(1, account.id()).getSingleResult()));
    }

    @Test
    void noCookieAndNoTokenOfTheProviderOpensAnything() {
        Account account = allowed(Role.CLINICIAN);
        ProviderFlow flow = flow();
        flow.begin("/");
        String idToken = stub.signed(flow.claims(someone(), account.userName(), CLINICIANS));
        Response answer = flow.backWith(idToken);
        assertNotNull(ProviderFlow.session(answer));
        assertEquals(List.of(), answer.headers().getValues("Set-Cookie").stream().filter(one -> one.startsWith("q_") && !one.contains("Max-Age=0")).toList());
        for (String path : List.of("/patients", "/account", "/sign-in/openid/back", "/api/report/figures", "/q/openapi")) {
            for (String cookie : List.of("q_session_openid", "q_session", "q_session_openid_at", "q_auth_openid")) {
                int status = given().redirects().follow(false).cookie(cookie, idToken).header("Authorization", "Bearer " + idToken).get(path).statusCode();
                assertTrue(status == 303 || status == 401, path + " with " + cookie + " answered " + status);
            }
        }
    }

    @Test
    void laterTheSubjectCountsAndNotTheName() {
        Account account = allowed(Role.CLINICIAN);
        String subject = someone();
        assertNotNull(ProviderFlow.session(signIn(subject, account.userName(), CLINICIANS)));
        assertNotNull(ProviderFlow.session(signIn(subject, "married-" + account.userName(), CLINICIANS)), "the name changed there");
        refused(signIn(someone(), account.userName(), CLINICIANS));
        assertEquals("test: linked to somebody else of this name", lastRefusal(account));
        assertEquals(2, trail(account).stream().filter("signed in"::equals).count());
    }

    @Test
    void whoMayNotComeInIsRefusedAlike() {
        Account unmarked = accounts.fresh(Role.CLINICIAN);
        Account out = allowed(Role.CLINICIAN);
        String subject = someone();
        signIn(subject, out.userName(), CLINICIANS);
        change(out, one -> one.activate(false));
        Account unlinkedOut = allowed(Role.CLINICIAN);
        change(unlinkedOut, one -> one.activate(false));
        Account noRole = allowed(Role.CLINICIAN);
        refused(signIn(someone(), unmarked.userName(), CLINICIANS));
        refused(signIn(subject, out.userName(), CLINICIANS));
        refused(signIn(someone(), unlinkedOut.userName(), CLINICIANS));
        refused(signIn(someone(), noRole.userName(), "canteen"));
        refused(signIn(someone(), noRole.userName()));
        refused(signIn(someone(), "nobody-" + UUID.randomUUID(), "canteen"));
        refused(signIn(someone(), "no name at all", CLINICIANS));
        assertEquals("test: not marked for it", lastRefusal(unmarked));
        assertEquals("test: account out of use", lastRefusal(out));
        assertEquals("test: no value that means a role", lastRefusal(noRole));
        assertFalse(QuarkusTransaction.requiringNew().call(() -> stored.findById(noRole.id()).openIdLinkedAt() != null), "nobody was linked");
        String words = new Visitor().open(REFUSED).select("[role=alert]").text();
        assertTrue(words.contains("may not sign in here that way") && !words.contains("account"), words);
    }

    @Test
    void whatCameBackWrongIsRefused() {
        Account account = allowed(Role.CLINICIAN);
        long now = Instant.now(Clock.systemUTC()).getEpochSecond();
        List<Consumer<Map<String, Object>>> wrongs = List.of(claims -> claims.put("nonce", "another"), claims -> claims.remove("nonce"),
                claims -> claims.put("aud", "somebody-else"), claims -> claims.put("iss", "http://localhost:1/other"),
                claims -> claims.put("exp", now - 600), claims -> claims.remove("sub"));
        for (Consumer<Map<String, Object>> wrong : wrongs) {
            ProviderFlow flow = flow();
            flow.begin("/");
            Map<String, Object> claims = flow.claims(someone(), account.userName(), CLINICIANS);
            wrong.accept(claims);
            Response answer = flow.back(claims);
            assertNull(ProviderFlow.session(answer), claims.toString());
            assertTrue(List.of(FAILED, REFUSED).contains(path(answer)), claims + " led to " + path(answer));
        }
        List<UnaryOperator<String>> tamperings = List.of(token -> token.substring(0, token.length() - 8) + "AAAAAAAA",
                token -> token.substring(0, token.lastIndexOf('.') + 1), token -> withPayload(token, "\"" + account.userName() + "\"", "\"test-lead\""),
                token -> unsigned(token));
        for (UnaryOperator<String> tampering : tamperings) {
            ProviderFlow flow = flow();
            flow.begin("/");
            failed(flow.backWith(tampering.apply(stub.signed(flow.claims(someone(), account.userName(), CLINICIANS)))));
        }
        ProviderFlow foreign = flow();
        foreign.begin("/");
        failed(foreign.backWith(stub.signedByAnother(foreign.claims(someone(), account.userName(), CLINICIANS))));
        assertEquals(List.of(), trail(account).stream().filter(one -> !one.equals("refused a sign-in")).toList());
    }

    @Test
    void aWayBackThatNobodyWentIsRefused() {
        Account account = allowed(Role.CLINICIAN);
        ProviderFlow other = flow();
        other.begin("/");
        ProviderFlow flow = flow();
        flow.begin("/");
        stub.answers(flow.code(), stub.signed(flow.claims(someone(), account.userName(), CLINICIANS)));
        failed(flow.back(flow.code(), other.state()));
        failed(flow.back(flow.code(), ""));
        failed(flow.back(null, flow.state()));
        flow.forget();
        failed(flow.back(flow.code(), flow.state()));
        failed(given().redirects().follow(false).get("/sign-in/openid/back"));
        ProviderFlow used = flow();
        used.begin("/");
        stub.refuses(used.code());
        failed(used.back(used.code(), used.state()));
    }

    @Test
    void whoIsNotSignedInThereIsToldSo() {
        ProviderFlow flow = flow();
        flow.begin("/patients");
        Response answer = flow.request().queryParam("error", "access_denied").queryParam("error_description", "<script>x</script>").queryParam("state", flow.state())
                .get("/sign-in/openid/back");
        assertEquals("/sign-in?to=%2Fpatients&after=openid-denied", path(answer));
        assertEquals("Alder People did not sign you in. Try again, or sign in with your password.",
                new Visitor().open("/sign-in?after=openid-denied").select("[role=alert]").text());
        assertEquals(0, new Visitor().open("/sign-in?after=openid-somehow").select("[role=alert]").size());
    }

    @Test
    void theRoleIsWhatTheProviderSays() {
        Account account = allowed(Role.CLINICIAN);
        String subject = someone();
        String first = ProviderFlow.session(signIn(subject, account.userName(), CLINICIANS));
        String second = ProviderFlow.session(signIn(subject, account.userName(), "reception"));
        assertEquals(Role.ASSISTANT, role(account));
        assertEquals(303, plain(first).statusCode(), "the session with the role of before has ended");
        assertEquals(200, plain(second).statusCode());
        assertEquals(account.userName() + ", Assistant, as the provider says", detail(account, "changed account"));
        refused(signIn(subject, account.userName(), "canteen"));
        assertEquals(303, plain(second).statusCode(), "whoever has no role there any more is signed out");
        assertEquals(Role.ASSISTANT, role(account));
    }

    @Test
    void theOnlyLeadStaysOne() {
        Account lead = allowed(Role.LEAD);
        String subject = someone();
        assertNotNull(ProviderFlow.session(signIn(subject, lead.userName(), "clinic-leads")));
        List<Long> others = QuarkusTransaction.requiringNew().call(() -> {
            List<Account> all = stored.leads().stream().filter(one -> !one.id().equals(lead.id())).toList();
            all.forEach(one -> one.activate(false));
            return all.stream().map(Account::id).toList();
        });
        try {
            refused(signIn(subject, lead.userName(), CLINICIANS));
            assertEquals(Role.LEAD, role(lead));
        } finally {
            QuarkusTransaction.requiringNew().run(() -> others.forEach(id -> stored.findById(id).activate(true)));
        }
        assertNotNull(ProviderFlow.session(signIn(subject, lead.userName(), "clinic-leads")));
    }

    @Test
    void aSecondFactorIsAskedForUnlessTheProviderSaysItDid() {
        Account account = allowed(Role.CLINICIAN);
        QuarkusTransaction.requiringNew().run(() -> {
            Account one = stored.findById(account.id());
            factors.offer(one);
            one.confirmCodes(Instant.EPOCH, 0);
        });
        String subject = someone();
        Response waiting = signIn(subject, account.userName(), CLINICIANS);
        assertEquals("/sign-in/code", ProviderFlow.next(waiting));
        assertEquals(303, plain(ProviderFlow.session(waiting)).statusCode(), "nothing opens before the code");
        List<String> codes = QuarkusTransaction.requiringNew().call(() -> factors.freshRecoveryCodes(stored.findById(account.id())));
        Visitor visitor = visitor(waiting);
        visitor.open("/sign-in/code");
        visitor.submit("/sign-in/code", Map.of("code", codes.get(0)));
        assertEquals("/", visitor.at().getPath());
        assertEquals("OpenID Connect and code", detail(account, "signed in"));
        ProviderFlow flow = flow();
        flow.begin("/");
        Map<String, Object> claims = flow.claims(subject, account.userName(), CLINICIANS);
        claims.put("amr", List.of("pwd", "otp"));
        assertEquals("/", ProviderFlow.next(flow.back(claims)));
        assertEquals("OpenID Connect, with a second factor there", detail(account, "signed in"));
    }

    @Test
    void somebodyNewGetsAnAccountOnlyWhereThatIsSet() {
        String name = "new-" + UUID.randomUUID().toString().substring(0, 8);
        String subject = someone();
        settings(Map.of("create-accounts", "false"), () -> refused(signIn(subject, name, CLINICIANS)));
        assertTrue(QuarkusTransaction.requiringNew().call(() -> stored.named(name)).isEmpty());
        assertNotNull(ProviderFlow.session(signIn(subject, name, CLINICIANS)));
        Account made = QuarkusTransaction.requiringNew().call(() -> stored.named(name)).orElseThrow();
        assertEquals("Somebody Invented", made.fullName());
        assertEquals(Role.CLINICIAN, made.role());
        assertTrue(made.withoutPassword(), "it signs no letter before a password is set through a one-time link");
        assertEquals(422, SignInTest.wrong(SignInTest.somewhere(), name, "").status());
        assertNotNull(ProviderFlow.session(signIn(subject, name, CLINICIANS)));
        Visitor visitor = visitor(signIn(subject, name, CLINICIANS));
        assertTrue(visitor.open("/account").select("dd").text().contains("one-time link"), visitor.page().text());
        visitor.open("/account/codes");
        visitor.open("/account/password");
        visitor.submit("/account/password", Map.of("present", "", "password", "kettle violin harbour quilt", "passwordAgain", "kettle violin harbour quilt"));
        assertTrue(visitor.page().select("#present-error").text().contains("no password here yet"), visitor.page().text());
    }

    @Test
    void withoutAMappingTheRoleOfTheAccountCounts() {
        Account account = allowed(Role.ASSISTANT);
        settings(Map.of("create-accounts", "", "roles-claim", "", "roles.lead", "", "roles.clinician", "", "roles.assistant", ""), () -> {
            assertNotNull(ProviderFlow.session(signIn(someone(), account.userName(), "clinic-leads")));
            refused(signIn(someone(), "nobody-" + UUID.randomUUID(), "clinic-leads"));
        });
        assertEquals(Role.ASSISTANT, role(account));
    }

    @Test
    void anAddressThatTheProviderHasNotCheckedIsNobodys() {
        Account account = allowed(Role.CLINICIAN);
        settings(Map.of("name-claim", "email"), () -> Stream.of("no claim", false, true).forEach(verified -> {
            ProviderFlow flow = flow();
            flow.begin("/");
            Map<String, Object> claims = flow.claims(someone(), "whoever", CLINICIANS);
            claims.put("email", account.userName());
            claims.put("email_verified", verified);
            Response answer = flow.back(claims);
            assertEquals(Boolean.TRUE.equals(verified), ProviderFlow.session(answer) != null);
        }));
    }

    @Test
    void theLeadAllowsAndEndsIt() {
        Account account = accounts.fresh(Role.CLINICIAN);
        String page = "/clinic/accounts/" + account.id();
        Visitor lead = accounts.visitor(Role.LEAD);
        lead.open(page);
        lead.submit(page + "/openid", Map.of("do", "allow"));
        assertTrue(lead.page().select("[role=status]").text().contains("Alder People"), lead.page().text());
        String subject = someone();
        String session = ProviderFlow.session(signIn(subject, account.userName(), CLINICIANS));
        assertEquals(200, plain(session).statusCode());
        assertTrue(lead.open(page).select("section:has(#s5)").text().contains("Linked to one person"), lead.page().text());
        lead.submit(page + "/openid", Map.of("do", "end"));
        assertEquals(303, plain(session).statusCode());
        refused(signIn(subject, account.userName(), CLINICIANS));
        lead.submit(page + "/openid", Map.of("do", "something"));
        assertEquals(422, lead.status());
    }

    private Account allowed(Role role) {
        Account account = accounts.fresh(role);
        change(account, one -> one.allowOpenId(true));
        return account;
    }

    private void change(Account account, Consumer<Account> by) {
        QuarkusTransaction.requiringNew().run(() -> by.accept(stored.findById(account.id())));
    }

    private ProviderFlow flow() {
        return new ProviderFlow(stub, issuer);
    }

    private Response signIn(String subject, String userName, String... roles) {
        ProviderFlow flow = flow();
        flow.begin("/");
        return flow.back(flow.claims(subject, userName, roles));
    }

    /** Lets the clinic have other settings for a while. */
    private void settings(Map<String, String> others, Runnable meanwhile) {
        OpenIdSettings settings = OpenIdSettings.read(new OtherConfig(config, others)).orElseThrow();
        OpenIdProvider other = new OpenIdProvider() {

            @Override
            boolean on() {
                return true;
            }

            @Override
            OpenIdSettings settings() {
                return settings;
            }

            @Override
            String name() {
                return settings.name();
            }
        };
        OpenIdProvider usual = new OpenIdProvider();
        usual.config = config;
        usual.read();
        QuarkusMock.installMockForType(other, OpenIdProvider.class);
        try {
            meanwhile.run();
        } finally {
            QuarkusMock.installMockForType(usual, OpenIdProvider.class);
        }
    }

    private Role role(Account account) {
        return QuarkusTransaction.requiringNew().call(() -> stored.findById(account.id()).role());
    }

    private List<String> trail(Account account) {
        return QuarkusTransaction.requiringNew().call(() -> db.createQuery("select e.action from AuditEvent e where e.accountId = ?1 order by e.id", String.class)
                .setParameter(1, account.id()).getResultList());
    }

    private String detail(Account account, String action) {
        return QuarkusTransaction.requiringNew().call(() -> db.createQuery("select e.detail from AuditEvent e where e.accountId = ?1 and e.action = ?2"
                + " order by e.id desc", String.class).setParameter(1, account.id()).setParameter(2, action).setMaxResults(1).getSingleResult());
    }

    private String lastRefusal(Account account) {
        return detail(account, "refused a sign-in").replace(account.userName() + ": OpenID Connect", "test");
    }

    private static Visitor visitor(Response answer) {
        return TestAccounts.visitorOf(ProviderFlow.session(answer));
    }

    private static Response plain(String session) {
        return given().redirects().follow(false).cookie("steadwork-session", session).get("/patients");
    }

    private static void refused(Response answer) {
        assertNull(ProviderFlow.session(answer));
        assertEquals(REFUSED, path(answer));
    }

    private static void failed(Response answer) {
        assertNull(ProviderFlow.session(answer));
        assertEquals(FAILED, path(answer));
    }

    private static String path(Response answer) {
        assertEquals(303, answer.statusCode(), () -> Jsoup.parse(answer.asString()).text());
        return answer.header("Location").replaceAll("^https?://[^/]+", "");
    }

    private static String withPayload(String token, String what, String by) {
        String[] parts = token.split("\\.");
        String payload = new String(Base64.getUrlDecoder().decode(parts[1]), StandardCharsets.UTF_8);
        assertNotEquals(payload, payload.replace(what, by));
        return parts[0] + "." + encoded(payload.replace(what, by)) + "." + parts[2];
    }

    private static String unsigned(String token) {
        return encoded("{\"alg\":\"none\"}") + "." + token.split("\\.")[1] + ".";
    }

    private static String encoded(String text) {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(text.getBytes(StandardCharsets.UTF_8));
    }

    private static String someone() {
        return UUID.randomUUID().toString();
    }
}
