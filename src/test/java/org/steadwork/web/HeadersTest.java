package org.steadwork.web;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;

/** What every answer says to the browser, where a sign-in may lead, and that what one types is never a template. */
@QuarkusTest
class HeadersTest {

    private static final Map<String, String> ALWAYS = Map.of("X-Content-Type-Options", "nosniff", "X-Frame-Options", "DENY", "Referrer-Policy", "same-origin",
            "Cross-Origin-Opener-Policy", "same-origin", "Cross-Origin-Resource-Policy", "same-origin");

    @Inject
    TestAccounts accounts;

    @Inject
    FullCase cases;

    @Test
    void everyRouteSaysWhatABrowserMayDoWithItKeepsNothingAndHoldsNoScriptOrStyleOfItsOwn() {
        Visitor lead = accounts.visitor(Role.LEAD);
        Targets targets = new Targets(cases.make("Hedda", "Headersby"), accounts, new Random(1));
        List<String> wrong = new ArrayList<>();
        for (Route route : Route.all()) {
            if (route.get() && !route.path().equals("/first-run")) {
                String path = targets.path(route, name -> null);
                lead.open(path);
                check(path, lead.answer(), !route.path().startsWith("/figures/"), wrong);
                holdsNothingOfItsOwn(route, lead, wrong);
            }
        }
        for (String path : List.of("/nowhere", "/cases/999999999", "/own/" + "x".repeat(43), "/sign-in", "/q/openapi", "/css/steadwork.css", "/js/steadwork.js")) {
            lead.open(path);
            check(path, lead.answer(), !path.matches("/(css|js|q)/.*"), wrong);
        }
        check("a redirect", given().redirects().follow(false).get("/cases/1/symptoms"), false, wrong);
        assertEquals(List.of(), wrong);
    }

    private static void check(String path, Response answer, boolean nothingKept, List<String> wrong) {
        ALWAYS.forEach((name, value) -> {
            if (!value.equals(answer.header(name))) {
                wrong.add(path + ": " + name + " is " + answer.header(name));
            }
        });
        String policy = String.valueOf(answer.header("Content-Security-Policy"));
        for (String part : List.of("default-src 'none'", "script-src 'self'", "style-src 'self'", "frame-ancestors 'none'", "base-uri 'none'", "form-action 'self'")) {
            if (!policy.contains(part)) {
                wrong.add(path + ": the policy lacks " + part);
            }
        }
        if (policy.contains("unsafe") || policy.contains("*") || policy.contains("http:")) {
            wrong.add(path + ": the policy is open: " + policy);
        }
        if (!String.valueOf(answer.header("Permissions-Policy")).contains("camera=()")) {
            wrong.add(path + ": no Permissions-Policy");
        }
        if (nothingKept && !String.valueOf(answer.header("Cache-Control")).contains("no-store")) {
            wrong.add(path + ": may be kept: " + answer.header("Cache-Control") + " (" + answer.statusCode() + ")");
        }
        if (answer.header("Server") != null || answer.header("X-Powered-By") != null) {
            wrong.add(path + ": names the program it runs on");
        }
    }

    private static void holdsNothingOfItsOwn(Route route, Visitor lead, List<String> wrong) {
        if (!route.path().contains("file") && String.valueOf(lead.answer().contentType()).contains("html")) {
            lead.page().select("script:not([src]), style, [style], [onclick], [onload], [onerror], iframe, object, embed, base, meta[http-equiv], a[href^=javascript]")
                    .forEach(found -> wrong.add(route + ": " + found.outerHtml().substring(0, Math.min(120, found.outerHtml().length()))));
            lead.page().select("a[target=_blank]:not([rel~=noopener])").forEach(found -> wrong.add(route + ": " + found.outerHtml()));
            lead.page().select("[src^=http], [src^=//], link[href^=http], link[href^=//]").forEach(found -> wrong.add(route + ": " + found.outerHtml()));
        }
    }

    @Test
    void aSignInLeadsNowhereElse() {
        accounts.of(Role.CLINICIAN);
        for (String to : List.of("https://elsewhere.example/", "//elsewhere.example", "/\\elsewhere.example", "\\\\elsewhere.example", "/%2felsewhere.example", "/%5celsewhere.example",
                "javascript:alert(1)", "data:text/html,x", "/sign-in?to=//elsewhere.example", "/./\u2028//elsewhere.example", "http:elsewhere.example", "///elsewhere.example",
                "/\t/elsewhere.example", "/\r\nLocation: https://elsewhere.example", ".elsewhere.example", "@elsewhere.example")) {
            Visitor visitor = new Visitor();
            String token = visitor.open("/sign-in").select("input[name=csrf-token]").val();
            Response answer = given().redirects().follow(false).cookies(visitor.answer().cookies()).formParams("csrf-token", token, "to", to, "userName",
                    "test-clinician", "password", TestAccounts.PASSWORD).post("/sign-in");
            assertEquals(303, answer.statusCode(), to);
            String where = answer.header("Location").replaceFirst("^http://(localhost|127\\.0\\.0\\.1):\\d+", "");
            assertTrue(where.equals("/"), to + " leads to " + where);
            assertFalse(answer.headers().asList().stream().anyMatch(header -> header.getName().equals("Location") && header.getValue().contains("elsewhere")), to);
        }
    }

    /** Curly braces are words like any other, in notes, names and letters. */
    @Test
    void whatIsTypedIsNeverATemplate() {
        FullCase.Made made = cases.make("Tem", "Plateby");
        Visitor lead = accounts.visitor(Role.LEAD);
        String words = "{7*7}{inject:layout.token}{#if true}yes{/if}{cdi:config}${7*7}#{9*9}{letter.signature}{form.value('x')}{patient}";
        for (String path : List.of("/symptoms/" + made.parts().get("reportId"), "/edit", "/letters/2")) {
            lead.open(made.path() + path);
            String field = path.equals("/edit") ? "complaint" : path.equals("/letters/2") ? "text-request" : "ownWords";
            lead.submit(made.path() + path, Map.of(field, words));
            assertEquals(200, lead.status(), path + lead.page().text());
            lead.open(made.path() + path);
            String shown = lead.page().select("[name=" + field + "]").first().tagName().equals("textarea") ? lead.page().selectFirst("[name=" + field + "]").wholeText()
                    : lead.page().select("[name=" + field + "]").val();
            assertEquals(words, shown, path);
        }
        lead.open("/patients/" + made.patient() + "/export/person.zip");
        assertEquals(200, lead.status());
        String csrf = lead.open(made.path() + "/edit").select("input[name=csrf-token]").val();
        String page = lead.open(made.path() + "/symptoms").text();
        assertTrue(page.contains("{7*7}{inject:layout.token}{#if true}yes{/if}"), page);
        assertFalse(page.contains(csrf), "a token was shown");
    }
}
