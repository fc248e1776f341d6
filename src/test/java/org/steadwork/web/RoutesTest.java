package org.steadwork.web;

import static java.util.Map.entry;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Account;
import org.steadwork.account.Role;

/** Every route of the application, found in its classes, for every role: who may come in, and what a wrong number is answered with. */
@QuarkusTest
class RoutesTest {

    /** Routes that need no account, each with the reason; a route that is open and not listed here fails. */
    private static final Map<String, String> OPEN = Map.ofEntries(
            entry("GET /sign-in", "one signs in here"),
            entry("POST /sign-in", "one signs in here"),
            entry("GET /sign-in/code", "the second step; leads back to the first for whoever has not done it"),
            entry("POST /sign-in/code", "the second step; leads back to the first for whoever has not done it"),
            entry("GET /sign-in/enrol", "sets up codes on the way in; leads back to the first step for whoever has not done it"),
            entry("POST /sign-in/enrol", "sets up codes on the way in; leads back to the first step for whoever has not done it"),
            entry("GET /sign-in/link/{signInToken}", "the one-time link of who is locked out; opens once, within a day"),
            entry("POST /sign-in/link/{signInToken}", "the one-time link of who is locked out; opens once, within a day"),
            entry("GET /sign-in/openid", "the way to the clinic's provider; there only where one is set"),
            entry("GET /sign-in/openid/back", "the way back from the provider; there only where one is set"),
            entry("POST /sign-out", "ending a session that has run out already must not ask to sign in"),
            entry("GET /first-run", "makes the first account; opens only with the key from the log, and only once"),
            entry("POST /first-run", "makes the first account; opens only with the key from the log, and only once"),
            entry("GET /figures/{key}.svg", "drawings of exercises, the same for everybody; nothing of a patient is in them"),
            entry("GET /own/{token}", "the patient's private link; asks for the date of birth"),
            entry("POST /own/{token}", "the patient's date of birth, five tries"),
            entry("GET /own", "says that the patient's page is closed"),
            entry("POST /own", "closes the patient's page on a phone"),
            entry("GET /own/today", "opens only for a phone that was let in; else it leads to the closed page"),
            entry("POST /own/today", "opens only for a phone that was let in; else it leads to the closed page"),
            entry("GET /own/report", "opens only for a phone that was let in; else it leads to the closed page"),
            entry("POST /own/report", "opens only for a phone that was let in; else it leads to the closed page"),
            entry("GET /own/report/thanks", "opens only for a phone that was let in; else it leads to the closed page"));
    /** Open routes that are not there in the clinic of these tests. */
    private static final Set<String> NOT_HERE = Set.of("/first-run", "/sign-in/openid", "/sign-in/openid/back");
    private static final Pattern PARAMETER = RoutePaths.PARAMETER;
    private static final Set<String> WORDS = Set.of("key", "kind", "instrument", "calculator", "table", "period", "signInToken", "auditForm", "file", "list");

    @Inject
    TestAccounts accounts;

    @Inject
    FullCase cases;

    @Inject
    EntityManager db;

    private static FullCase.Made made;
    /** The pages; what stands under /api/ answers with JSON and is tested where it is made. */
    private static final List<Route> ROUTES = Route.all().stream().filter(route -> !route.path().startsWith("/api/")).toList();

    @BeforeEach
    void aCaseWithSomethingOnEveryPage() {
        if (made == null) {
            made = cases.make("Rosalind", "Routledge-" + System.nanoTime());
            made.parts().putAll(accountParts());
        }
    }

    /** An account with a one-time link that opens, and a case opened from outside its team. */
    private Map<String, String> accountParts() {
        Account colleague = accounts.fresh(Role.CLINICIAN);
        Visitor lead = accounts.visitor(Role.LEAD);
        lead.open("/clinic/accounts/" + colleague.id());
        lead.submit("/clinic/accounts/" + colleague.id() + "/link", Map.of("do", "link"));
        String link = lead.page().select(".code-offer__key").text();
        return Map.of("account", colleague.id().toString(), "signInToken", link.substring(link.lastIndexOf('/') + 1), "opening", opening(colleague));
    }

    private String opening(Account colleague) {
        return QuarkusTransaction.requiringNew().call(() -> {
            long id = ((Number) db.createNativeQuery("select nextval('break_glass_seq')").getSingleResult()).longValue();
            db.createNativeQuery("insert into break_glass (id, version, case_file_id, account_id, reason, opened_at, until_at) values (?1, 0, ?2, ?3,"
                    + " 'Covering for a colleague', timestamp with time zone '2026-03-04 10:00:00+00', timestamp with time zone '2026-03-04 11:00:00+00')")
                    .setParameter(1, id).setParameter(2, Long.valueOf(made.caseId())).setParameter(3, colleague.id()).executeUpdate();
            return String.valueOf(id);
        });
    }

    /** A new route is first decided on in routes.csv: who may come in, and what others find there where cases open to their care team. */
    @Test
    void everyRouteIsInTheMatrixWithTheRolesDecidedOn() {
        Set<String> decided = RouteMatrix.all().stream().map(row -> row.route() + " for " + row.route().roles()).collect(Collectors.toCollection(TreeSet::new));
        Set<String> found = Route.all().stream().map(route -> route + " for " + route.roles()).collect(Collectors.toCollection(TreeSet::new));
        Set<String> missing = new TreeSet<>(found);
        missing.removeAll(decided);
        decided.removeAll(found);
        assertTrue(missing.isEmpty(), () -> "Not decided on in routes.csv:\n" + String.join("\n", missing));
        assertTrue(decided.isEmpty(), () -> "In routes.csv, but not there:\n" + String.join("\n", decided));
    }

    @Test
    void theRoutesWereFound() {
        assertTrue(ROUTES.size() > 60, "only " + ROUTES.size());
        assertEquals(OPEN.keySet(), ROUTES.stream().filter(Route::open).map(Route::toString).collect(Collectors.toSet()));
    }

    @Test
    void whoIsNotSignedInComesToTheSignInPage() {
        each(ROUTES.stream().filter(route -> !route.open()).toList(), (route, wrong) -> {
            Visitor nobody = visit(new Visitor(), route, path(route));
            check(wrong, route, nobody.status() == 200 && nobody.page().title().startsWith("Sign in"), nobody);
            check(wrong, route, !nobody.page().outerHtml().contains("Routledge"), nobody);
        });
    }

    @Test
    void theAssistantMayNotOpenClinicalPages() {
        each(ROUTES.stream().filter(route -> !route.roles().contains("staff") && !route.open()).toList(), (route, wrong) -> {
            Visitor assistant = visit(accounts.visitor(Role.ASSISTANT), route, path(route));
            check(wrong, route, assistant.status() == 403 && assistant.page().select("h1").text().equals("Not for this account"), assistant);
        });
    }

    @Test
    void theCliniciansMayNotOpenWhatIsForTheLead() {
        each(ROUTES.stream().filter(route -> route.roles().equals("lead")).toList(), (route, wrong) -> {
            Visitor clinician = visit(accounts.visitor(Role.CLINICIAN), route, path(route));
            check(wrong, route, clinician.status() == 403, clinician);
            Visitor lead = visit(accounts.visitor(Role.LEAD), route, path(route));
            check(wrong, route, lead.status() == 200 || !route.get() && Set.of(409, 422).contains(lead.status()), lead);
        });
    }

    @Test
    void everyPageOpensForThoseItIsFor() {
        each(ROUTES.stream().filter(route -> route.get() && !NOT_HERE.contains(route.path())).toList(), (route, wrong) -> {
            for (Role role : Role.values()) {
                if (route.open() || route.roles().equals("staff") || role == Role.LEAD || route.roles().equals("clinician") && role == Role.CLINICIAN) {
                    Visitor visitor = visit(accounts.visitor(role), route, path(route));
                    check(wrong, route, visitor.status() == 200, visitor);
                }
            }
        });
    }

    @Test
    void aPostWithNothingInItIsAnsweredInWords() {
        each(ROUTES.stream().filter(route -> !route.get() && !route.path().equals("/sign-out")).toList(), (route, wrong) -> {
            Visitor lead = visit(accounts.visitor(Role.LEAD), route, path(route));
            check(wrong, route, List.of(200, 404, 409, 422).contains(lead.status()) && (!lead.page().select("h1").isEmpty()
                    || lead.answer().header("Content-Disposition") != null), lead);
        });
    }

    @Test
    void aNumberThatIsNotThereIsAnsweredByThePageThatSaysSo() {
        each(ROUTES.stream().filter(route -> PARAMETER.matcher(route.path()).find()).toList(), (route, wrong) -> {
            List<String> names = names(route);
            for (String name : names) {
                List<String> values = WORDS.contains(name) ? List.of("no_such") : List.of("987654321", "99999999999999999999999");
                for (String value : values) {
                    Visitor lead = visit(accounts.visitor(Role.LEAD), route, path(route, Map.of(name, value)));
                    check(wrong, route, lead.status() == 404 && lead.page().select("h1").text().equals("Not found"), lead);
                }
            }
        });
    }

    private static List<String> names(Route route) {
        List<String> names = new ArrayList<>();
        Matcher parameters = PARAMETER.matcher(route.path());
        while (parameters.find()) {
            names.add(parameters.group(1));
        }
        return names;
    }

    private static String path(Route route) {
        return path(route, Map.of());
    }

    private static String path(Route route, Map<String, String> instead) {
        return RoutePaths.of(route, made, instead);
    }

    private static Visitor visit(Visitor visitor, Route route, String path) {
        return RoutePaths.visit(visitor, route, path);
    }

    private static void check(List<String> wrong, Route route, boolean right, Visitor visitor) {
        if (!right) {
            String words = visitor.page().text();
            wrong.add(route + " answered " + visitor.status() + ": " + words.substring(0, Math.min(160, words.length())));
        }
    }

    private static void each(List<Route> routes, BiConsumer<Route, List<String>> act) {
        assertFalse(routes.isEmpty());
        List<String> wrong = new ArrayList<>();
        routes.forEach(route -> act.accept(route, wrong));
        assertTrue(wrong.isEmpty(), () -> wrong.size() + " wrong:\n" + String.join("\n", new TreeSet<>(wrong)));
    }
}
