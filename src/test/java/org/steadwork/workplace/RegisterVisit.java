package org.steadwork.workplace;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.steadwork.web.Visitor;

/** Fills the register through its pages: employer, site with a room, desks and chairs in it. */
final class RegisterVisit {

    private RegisterVisit() {
    }

    static String employer(Visitor visitor, String name) {
        send(visitor, "/employers/new", Map.of("name", name));
        return visitor.page().select("a[href$=/edit]").attr("href").replace("/edit", "");
    }

    /** Adds a site with a room; returns the room's address. */
    static String site(Visitor visitor, String employer, String room) {
        send(visitor, employer + "/sites/new", Map.of("name", "Main site"));
        String rooms = visitor.page().select("a[href$=/rooms/new]").attr("href");
        send(visitor, rooms, Map.of("name", room));
        return visitor.page().select("a[href~=/rooms/\\d+$]").attr("href");
    }

    static String piece(Visitor visitor, String room, String kind, Map<String, String> values) {
        visitor.open(room + "/furniture?kind=" + kind);
        visitor.submit(room + "/furniture", values);
        assertEquals(200, visitor.status(), visitor.page().text());
        return visitor.page().select("a[href~=/furniture/\\d+/edit$]").attr("href").replace("/edit", "");
    }

    /** Lets the patient of a case work at an employer's main site. */
    static void employ(Visitor visitor, long caseId, String employer) {
        String patient = visitor.open("/cases/" + caseId).select("a[href^=/patients/]").attr("href");
        Map<String, String> work = Map.of("employer", employer, "site", "Main site");
        visitor.open(patient + "/edit");
        visitor.submit(patient + "/edit", work);
        if (!visitor.page().select("input[name=anotherPerson]").isEmpty()) {
            visitor.submit(patient + "/edit", Map.of("anotherPerson", "yes"));
        }
        assertEquals(200, visitor.status(), () -> visitor.page().text());
    }

    static void send(Visitor visitor, String path, Map<String, String> values) {
        visitor.open(path);
        visitor.submit(path, values);
        assertEquals(200, visitor.status(), () -> path + ": " + visitor.page().text());
    }
}
