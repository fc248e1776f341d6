package org.steadwork.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.nodes.Element;
import org.steadwork.account.Role;

/** A case with something on every page, entered through the pages, for tests that go through all of them. */
@ApplicationScoped
public class FullCase {

    private static final String DAY = "4 Mar 2026";
    private static final Map<String, String> WORK_PLACE = Map.ofEntries(Map.entry("assessedOn", DAY), Map.entry("place", "Desk 14"),
            Map.entry("popliteal_height", "370"), Map.entry("shoe", "20"), Map.entry("elbow_rest_height", "240"), Map.entry("seat_now", "450"),
            Map.entry("seat_low", "400"), Map.entry("seat_high", "530"), Map.entry("desk_now", "740"), Map.entry("desk_low", "740"),
            Map.entry("desk_high", "740"), Map.entry("PH-1", "does_not_fit"));
    private static final Map<String, String> REPORT = Map.of("text-request", "I ask for a headset by 4 December 2026.",
            "text-work_status", "Full hours and duties.", "text-can_do", "She can sit 45 minutes at a time and lift 5 kg.",
            "text-next", "I will review this on 15 January 2027. Please tell me if it is not practicable.");

    /**
     * What was made.
     *
     * @param parts the numbers of what stands in the case, by the names that paths give them
     */
    public record Made(String patient, String caseId, Map<String, String> parts) {

        public String path() {
            return "/cases/" + caseId;
        }
    }

    @Inject
    TestCases cases;

    @Inject
    TestAccounts accounts;

    @Inject
    Clock clock;

    /** Fills a new case; a signed note, a signed screen and a signed letter each stand beside one that is not signed. */
    public Made make(String given, String family) {
        String path = "/cases/" + cases.open(given, family);
        Visitor visitor = accounts.visitor(Role.LEAD);
        visitor.open(path);
        String patient = number(visitor, "/patients/(\\d+)");
        Map<String, String> parts = new LinkedHashMap<>(Map.of("number", "1", "page", "1", "key", "sh_rolls", "kind", "employer_report", "instrument", "ndi",
                "table", "responders", "period", "2025-h2"));
        send(visitor, "/patients/" + patient + "/edit", Map.of("employer", "Quayside Planning " + patient, "site", "North hall", "doctor", "Dr A. Fennick "
                + patient, "hoursAWeek", "38", "jobTitle", "Shift planner"));
        send(visitor, path + "/symptoms/new", Map.of("reportedOn", DAY, "now-neck", "3", "worst-neck", "6"), Map.of("zone", List.of("neck")));
        parts.put("reportId", number(visitor.open(path + "/symptoms").outerHtml(), "/symptoms/(\\d+)"));
        send(visitor, path + "/programme/add/sh_rolls", Map.of("startedOn", DAY));
        send(visitor, path + "/programme/day-plan", Map.of());
        parts.put("prescription", number(visitor.open(path + "/programme").outerHtml(), "/programme/(\\d+)"));
        send(visitor, path + "/work-place/edit", WORK_PLACE);
        parts.put("finding", number(visitor, "/work-place/findings/(\\d+)"));
        register(visitor, path, parts, "Quayside Planning " + patient);
        send(visitor, path + "/exposure/new/screen-breaks", Map.of("record-task", "Order entry", "start", "9:00", "end", "12:00", "breaks.count", "0", "do", "record"));
        parts.put("exposure", number(visitor.open(path + "/exposure").outerHtml(), "/exposure/(\\d+)"));
        outcomes(visitor, path);
        notes(visitor, path);
        redFlags(visitor, path, parts);
        letters(visitor, path, parts);
        ownPage(visitor, path, parts);
        parts.put("entry", number(visitor.open("/?case=" + path.substring("/cases/".length())).outerHtml(), "/today/entries/(\\d+)/snooze"));
        meeting(visitor, path, parts);
        diary(visitor, path, patient, parts);
        groupReport(visitor, "/employers/" + parts.get("employer") + "/group-report/" + parts.get("period"));
        clinic(visitor, patient, path.substring("/cases/".length()), parts);
        exchange(visitor, parts);
        return new Made(patient, path.substring("/cases/".length()), parts);
    }

    /** The employer with a contact, a room and a desk in it, and a photograph of the work place. */
    private static void register(Visitor visitor, String path, Map<String, String> parts, String employerName) {
        visitor.open("/employers?q=" + employerName);
        parts.put("employer", number(visitor, "href=\"/employers/(\\d+)"));
        String employer = "/employers/" + parts.get("employer");
        send(visitor, employer + "/contacts/new", Map.of("name", "Jo Quayle"));
        parts.put("contact", number(visitor, "/contacts/(\\d+)"));
        parts.put("site", number(visitor, "/sites/(\\d+)"));
        String site = "/sites/" + parts.get("site");
        send(visitor, site + "/rooms/new", Map.of("name", "East"));
        parts.put("room", number(visitor, "/rooms/(\\d+)"));
        send(visitor, site + "/rooms/" + parts.get("room") + "/furniture", Map.of("name", "Desk 14", "desk_low", "740", "desk_high", "740"));
        parts.put("piece", number(visitor, "/furniture/(\\d+)"));
        visitor.open(path + "/work-place/photos/new");
        visitor.upload(path + "/work-place/photos/new", Map.of("caption", "The screen from the side"), "photo", "desk.png", TestPictures.png(60, 40));
        assertEquals(200, visitor.status(), visitor.page().text());
        parts.put("photo", number(visitor, "/photos/(\\d+)"));
    }

    /** A signed report on the employer's people, who are too few for a number. */
    private static void groupReport(Visitor visitor, String report) {
        visitor.open(report);
        visitor.page().select("form#edit").attr("action", report + "/sign");
        visitor.submit(report + "/sign", Map.of("password", TestAccounts.PASSWORD));
        assertEquals(200, visitor.status(), visitor.page().text());
    }

    /** A link that opens, one before it that no longer does, and a report that nobody has looked at. */
    private static void ownPage(Visitor visitor, String path, Map<String, String> parts) {
        send(visitor, path + "/own-page", path + "/own-page/links", Map.of(), Map.of());
        parts.put("link", number(visitor, "/links/(\\d+)/revoke"));
        send(visitor, path + "/own-page", path + "/own-page/links", Map.of(), Map.of());
        parts.put("token", number(visitor, "/own/([A-Za-z0-9_-]{43})"));
        Visitor patient = new Visitor();
        send(patient, "/own/" + parts.get("token"), Map.of("born", "3 May 1988"));
        send(patient, "/own/report", Map.of("words", "Better since Monday."));
        parts.put("own", number(visitor.open(path + "/own-page").outerHtml(), "/own-page/reports/(\\d+)"));
    }

    /** A meeting with the case on its agenda, a decision, an action, and somebody who asks for another discussion. */
    private static void meeting(Visitor visitor, String path, Map<String, String> parts) {
        String caseFile = path.substring("/cases/".length());
        String number = visitor.open(path).select(".rail__id").text().replaceAll(".*File ", "");
        String notes = first(visitor.open("/meetings/new"), "select[name=notes] option:not([value=''])");
        send(visitor, "/meetings/new", Map.of("notes", notes));
        parts.put("meeting", visitor.at().getPath().replaceAll("\\D", ""));
        parts.put("caseFile", caseFile);
        String meeting = "/meetings/" + parts.get("meeting");
        send(visitor, meeting, meeting + "/agenda/add", Map.of("number", number), Map.of());
        String page = meeting + "/cases/" + caseFile;
        send(visitor, page, Map.of("question", "What next?", "minutes", "Spoken about."));
        String who = first(visitor.open(page), "select[name=d-who] option:not([value=''])");
        String due = Dates.shown(LocalDate.of(2199, 1, 1));
        send(visitor, page, page + "/outcome/decisions", Map.of("d-words", "Go on.", "d-reason", "It helps.", "d-who", who, "d-due", due), Map.of());
        parts.put("decision", number(visitor, "/outcome/decisions/(\\d+)"));
        send(visitor, page, page + "/outcome/actions", Map.of("a-words", "Phone.", "a-who", who, "a-due", due), Map.of());
        parts.put("action", number(visitor, "/outcome/actions/(\\d+)"));
        send(visitor, path + "/meetings", path + "/meetings/asks", Map.of("kind", "member", "words", "A look, please."), Map.of());
        parts.put("ask", number(visitor, "/asks/(\\d+)"));
    }

    /** A booked visit, a missed one, an entry of the waiting list, leave and a room of the clinic. */
    private void diary(Visitor visitor, String path, String patient, Map<String, String> parts) {
        String room = "Room " + patient;
        send(visitor, "/diary/clinic", "/diary/clinic/rooms", Map.of("name", room), Map.of());
        parts.put("clinicRoom", number(visitor, "/rooms/(\\d+)\">Change<span class=\"unseen\"> " + room));
        send(visitor, "/diary/clinic/leave/new", Map.of("who", "clinic", "firstOn", "25 Dec 2031", "words", "Closed"));
        parts.put("leave", number(visitor, "/leave/(\\d+)"));
        parts.put("clinician", accounts.of(Role.LEAD).id().toString());
        send(visitor, "/diary/waiting/new?patient=" + patient, "/diary/waiting/new", Map.of(), Map.of());
        parts.put("waiting", number(visitor, "/diary/waiting/(\\d+)"));
        visitor.open("/diary/book?patient=" + patient);
        Element offered = visitor.page().select("button[name=take]").first();
        send(visitor, "/diary/book?patient=" + patient, "/diary/book", Map.of("take", offered.val()), Map.of());
        parts.put("appointment", number(visitor, "/diary/appointments/(\\d+)\" method"));
        visitor.open(path + "/attendance");
        visitor.submit(path + "/attendance", Map.of("visitedOn", "25 Mar 2026"));
        Element planned = visitor.page().select("form[id^=visit-]").last();
        visitor.post(path + "/attendance", Map.of("csrf-token", List.of(planned.select("[name=csrf-token]").val()), "number", List.of("3"), "version",
                List.of(planned.select("[name=version]").val()), "attendance", List.of("missed")));
        parts.put("missed", number(visitor.open("/diary/missed").outerHtml(), "/diary/missed/(v\\d+)"));
    }

    /** A backup, and a hold on the case. */
    private static void clinic(Visitor visitor, String patient, String caseId, Map<String, String> parts) {
        parts.put("patient", patient);
        if (visitor.open("/clinic/backup").select("a[href$=.backup]").isEmpty()) {
            send(visitor, "/clinic/backup", Map.of());
            awaitTheBackup(visitor);
        }
        parts.put("file", number(visitor, "/clinic/backup/([^\"]+\\.backup)"));
        send(visitor, "/clinic/retention/" + patient, "/clinic/retention/" + patient + "/holds", Map.of("case", caseId, "reason", "Open claim"), Map.of());
        parts.put("hold", number(visitor, "/holds/(\\d+)/lift"));
    }

    /** A file on its way in, and a token for reporting. */
    private static void exchange(Visitor visitor, Map<String, String> parts) {
        visitor.open("/clinic/import");
        visitor.upload("/clinic/import", Map.of("kind", "patients"), "file", "patients.csv", "given_name,family_name,birth_date\nIda,Incoming,1990-04-02\n".getBytes(StandardCharsets.UTF_8));
        assertEquals(200, visitor.status(), visitor.page().text());
        parts.put("job", number(visitor, "/clinic/import/(\\d+)/discard"));
        visitor.open("/clinic/tokens");
        visitor.submit("/clinic/tokens", Map.of("name", "Quality report"), Map.of("scopes", List.of("figures:read")));
        assertEquals(200, visitor.status(), visitor.page().text());
        parts.put("reportToken", number(visitor, "/clinic/tokens/(\\d+)/revoke"));
    }

    private static void outcomes(Visitor visitor, String path) {
        send(visitor, path + "/outcomes/ndi", Map.of("on", DAY, "i1", "2", "i2", "3", "i3", "1"));
        send(visitor, path + "/goals", Map.of("newGoal", "A full shift at the belt"));
        send(visitor, path + "/outcomes", path + "/own-activities", Map.of("on", DAY, "newActivity", "Sit 30 minutes", "newRating", "4"), Map.of());
    }

    private static void notes(Visitor visitor, String path) {
        send(visitor, path + "/visits/1", path + "/visits/1/note", Map.of("assessment", "Better.", "plan", "Go on.", "do", "sign"), Map.of());
        send(visitor, path + "/visits", Map.of("visitedOn", "18 Mar 2026", "kind", "follow_up"));
        send(visitor, path + "/visits/2", path + "/visits/2/note", Map.of("assessment", "Draft.", "plan", "Draft.", "do", "save"), Map.of());
    }

    private static void redFlags(Visitor visitor, String path, Map<String, String> parts) {
        String flags = path + "/red-flags";
        send(visitor, flags, flags, Map.of("answer.nk_arm_power", "yes", "answer.nk_cord_hands", "yes"), Map.of("region", List.of("neck")));
        String page = visitor.page().outerHtml();
        parts.put("flagId", number(page, "/flags/(\\d+)"));
        parts.put("screenId", number(page, "/screens/(\\d+)"));
        visitor.submit(flags + "/screens/" + parts.get("screenId") + "/sign", Map.of());
        assertEquals(200, visitor.status(), visitor.page().text());
        send(visitor, flags, flags + "/screens", Map.of("occasion", "full"), Map.of());
    }

    private void letters(Visitor visitor, String path, Map<String, String> parts) {
        String letters = path + "/letters";
        String employer = option(visitor.open(path + "/consents/new"), "employer-");
        send(visitor, path + "/consents/new?to=" + employer, path + "/consents/new", Map.of("how", "spoken"), Map.of());
        parts.put("consent", number(visitor.open(letters).outerHtml(), "/consents/(\\d+)"));
        send(visitor, letters + "/new/employer_report", Map.of("to", employer));
        send(visitor, letters + "/1", letters + "/1", REPORT, Map.of("rows-modifications", List.of("Headset", "2 h of calls a day", "4 Dec 2026", "15 Jan 2027")));
        String day = visitor.page().select("form[action$=/record/shown] [name=happenedOn]").val();
        send(visitor, letters + "/1", letters + "/1/record/shown", Map.of("answer", "agreed", "how", "in the visit", "happenedOn",
                day.isEmpty() ? Dates.shown(LocalDate.now(clock)) : day), Map.of());
        visitor.page().select("form#edit").attr("action", letters + "/1/sign");
        Map<String, String> signed = new LinkedHashMap<>(Map.of("password", TestAccounts.PASSWORD));
        visitor.page().select("input[form=edit]:not([type=password])").forEach(asked -> signed.put(asked.attr("name"), "Needed for the request."));
        visitor.submit(letters + "/1/sign", signed);
        assertEquals(200, visitor.status(), visitor.page().text());
        send(visitor, letters + "/new/employer_report", Map.of("to", employer));
    }

    private static String first(Element page, String options) {
        return page.select(options).get(0).val();
    }

    private static String option(Element page, String start) {
        return page.select("select[name=to] option[value^=" + start + "], input[name=to][value^=" + start + "]").get(0).val();
    }

    private static void send(Visitor visitor, String path, Map<String, String> changes) {
        send(visitor, path, path, changes, Map.of());
    }

    private static void send(Visitor visitor, String path, Map<String, String> changes, Map<String, List<String>> several) {
        send(visitor, path, path, changes, several);
    }

    private static void send(Visitor visitor, String page, String action, Map<String, String> changes, Map<String, List<String>> several) {
        visitor.open(page);
        visitor.submit(action, changes, several);
        assertEquals(200, visitor.status(), () -> action + ": " + visitor.page().text());
    }

    /** On a busy machine a backup is still being made when the page is there. */
    private static void awaitTheBackup(Visitor visitor) {
        for (int i = 0; i < 120 && visitor.open("/clinic/backup").select("a[href$=.backup]").isEmpty(); i++) {
            try {
                Thread.sleep(500);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    private static String number(Visitor visitor, String pattern) {
        return number(visitor.page().outerHtml(), pattern);
    }

    private static String number(String html, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(html);
        if (!found.find()) {
            throw new AssertionError("No " + pattern + " in " + html);
        }
        return found.group(1);
    }
}
