package org.steadwork.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Account;
import org.steadwork.account.Role;
import org.steadwork.casefile.access.ByCareTeam;

/** Every route of a case, for the clinician whose case it is and for one whose case it is not, where cases open to their care team. */
@QuarkusTest
@Tag("own-clinic")
@TestProfile(ByCareTeam.class)
class RoutesByCareTeamTest {

    private static final String SECRET = "Quillfeather neuralgia";

    @Inject
    TestAccounts accounts;

    @Inject
    FullCase cases;

    @Inject
    EntityManager db;

    @Test
    void anothersCaseIsClosedAtEveryRouteAndOnesOwnIsNot() {
        FullCase.Made made = cases.make("Osric", "Routledge-Team");
        Account stranger = accounts.fresh(Role.CLINICIAN);
        List<String> wrong = new ArrayList<>();
        List<Route> closed = RouteMatrix.all().stream().filter(row -> row.others().equals("closed")).map(RouteMatrix.Row::route).toList();
        assertTrue(closed.size() > 90, "only " + closed.size());
        for (Route route : closed) {
            String path = RoutePaths.of(route, made, Map.of());
            Visitor visitor = RoutePaths.visit(accounts.visitor(stranger), route, path);
            boolean api = route.path().startsWith("/api/");
            if (visitor.status() != 403 || !visitor.page().select("h1").text().equals("Outside the care team")) {
                wrong.add(route + " let a stranger in with " + visitor.status());
            }
            if (route.get() && !api) { // what the API answers to whose case it is depends on what is asked for, and is tested there
                Visitor own = RoutePaths.visit(accounts.visitor(Role.CLINICIAN), route, path);
                Visitor lead = RoutePaths.visit(accounts.visitor(Role.LEAD), route, path);
                if (own.status() != 200 || lead.status() != 200) {
                    wrong.add(route + " answered whose case it is " + own.status() + ", the lead " + lead.status());
                }
            }
        }
        assertTrue(wrong.isEmpty(), () -> wrong.size() + " wrong:\n" + String.join("\n", new TreeSet<>(wrong)));
    }

    @Test
    void whatTodaySaysOfAnothersCaseIsAsIfItWereNotThere() {
        FullCase.Made made = cases.make("Osmund", "Routledge-Absent");
        Visitor stranger = accounts.visitor(accounts.fresh(Role.CLINICIAN));
        List<Route> absent = RouteMatrix.all().stream().filter(row -> row.others().equals("absent")).map(RouteMatrix.Row::route).toList();
        assertEquals(4, absent.size());
        for (Route route : absent) {
            assertEquals(404, RoutePaths.visit(stranger, route, RoutePaths.of(route, made, Map.of())).status(), route.toString());
        }
    }

    @Test
    void aReasonOpensItForAnHourAndTheLeadSeesIt() {
        FullCase.Made made = cases.make("Ottoline", "Routledge-Glass");
        complaint(made);
        Account stranger = accounts.fresh(Role.CLINICIAN);
        Visitor visitor = accounts.visitor(stranger);
        visitor.open("/patients/" + made.patient());
        assertFalse(visitor.page().text().contains(SECRET), "the complaint is not shown");
        assertFalse(standing(visitor).contains("Routledge-Glass"), "nor does Today tell of it");
        visitor.open(made.path());
        assertEquals(403, visitor.status());
        assertFalse(visitor.page().text().contains(SECRET));
        String ask = made.path() + "/break-glass";
        visitor.submit(ask, Map.of("reason", "need it"));
        assertEquals(422, visitor.status());
        visitor.submit(ask, Map.of("reason", "Covering for a colleague, patient in the room", "hours", "1"));
        assertEquals(200, visitor.status(), visitor.page().text());
        assertTrue(visitor.page().text().contains(SECRET));

        Visitor lead = accounts.visitor(Role.LEAD);
        assertTrue(lead.open("/").text().contains("from outside its care team: “Covering for a colleague, patient in the room”"), lead.page().text());
        assertFalse(visitor.open("/").text().contains("outside its care team"), "only the lead is told");
        lead.open("/clinic/break-glass");
        lead.submit(lead.page().select("tr:contains(Routledge-Glass) form").attr("action"), Map.of());
        assertFalse(standing(lead).contains("outside its care team"));
        assertTrue(lead.open("/clinic/audit?action=break-glass&patient=Routledge-Glass").text().contains("1 h: Covering for a colleague"), lead.page().text());

        QuarkusTransaction.requiringNew().run(() -> db.createNativeQuery("update break_glass set opened_at = opened_at - interval '2' hour,"
                + " until_at = until_at - interval '2' hour where case_file_id = ?1").setParameter(1, Long.valueOf(made.caseId())).executeUpdate());
        visitor.open(made.path());
        assertEquals(403, visitor.status(), "after the hour it is closed again");
    }

    /** What stands on the list of Today: without the visits of the day, whose names the desk sees too, and without what left the list. */
    private static String standing(Visitor visitor) {
        visitor.open("/");
        visitor.page().select("details, section[aria-labelledby=visits]").remove();
        return visitor.page().text();
    }

    @Test
    void whoIsTakenIntoTheTeamComesInAndWhoIsTakenOutDoesNot() {
        FullCase.Made made = cases.make("Orla", "Routledge-Member");
        Account colleague = accounts.fresh(Role.CLINICIAN);
        Visitor own = accounts.visitor(Role.CLINICIAN);
        Visitor visitor = accounts.visitor(colleague);
        own.open(made.path() + "/team");
        own.submit(made.path() + "/team", Map.of("account", colleague.id().toString(), "do", "add"));
        assertEquals(200, own.status(), own.page().text());
        visitor.open(made.path());
        assertEquals(200, visitor.status());
        visitor.open(made.path() + "/team");
        visitor.submit(made.path() + "/team", Map.of("account", colleague.id().toString(), "do", "remove"));
        assertEquals("/", visitor.at().getPath(), "who leaves the team leaves the page");
        visitor.open(made.path());
        assertEquals(403, visitor.status());
        own.open(made.path() + "/team");
        own.submit(made.path() + "/team", Map.of("account", "999999", "do", "add"));
        assertEquals(422, own.status());
    }

    private void complaint(FullCase.Made made) {
        QuarkusTransaction.requiringNew().run(() -> db.createNativeQuery("update case_file set complaint = ?1 where id = ?2").setParameter(1, SECRET)
                .setParameter(2, Long.valueOf(made.caseId())).executeUpdate());
    }
}
