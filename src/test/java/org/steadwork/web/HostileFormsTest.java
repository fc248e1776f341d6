package org.steadwork.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.casefile.CaseTab;

/** Every form of a case with something on every page, sent with what nobody should send: each is answered in words, and nothing runs. */
@QuarkusTest
@Tag("longer")
class HostileFormsTest {

    private static final long SEED = 20260304;
    private static final String RUNS = "<script>hostile(1)</script>";
    private static final List<String> VALUES = List.of("", "   ", "-1", "0", "0.01", "12,5", "NaN", "Infinity", "1e999", "99999999999999999999",
            "999999999", "10000", "31.2.2026", "2026-13-45", "1 Jan 1066", "4 Mar 2199", "24:61", "9-1", "1-2", RUNS, "\"><img src=x onerror=hostile(1)>" + RUNS,
            "'; drop table patient; --", "{inject:x}", "{#if}", "{form.value}", "${7*7}", "%00%s%n", "\u0000", "a\u0007b\u001b[31m", "\u202Eright to left",
            "\u05E9\u05DC\u05D5\u05DD", "\uD83D\uDE00\uD83E\uDDD1\u200D\u2695\uFE0F", "e\u0301\u0327 \uFFFE", "../../etc/passwd", "a\tb\r\nc", "x".repeat(150),
            "x".repeat(450), "word ".repeat(700));
    private static final Pattern LIMIT = Pattern.compile("At most (\\d+) characters");
    private static final int TRIES_A_FIELD = 1;
    private static final int VALUES_A_FORM = 10;
    /** The usual run takes one part of the forms, by their shape; {@code -Dsteadwork.part=0} to 7 names another. */
    private static final int PARTS = 8;
    private static final int PART = Integer.getInteger("steadwork.part", 0);
    /** Every value in every form, for the long run; else a seeded choice. */
    private static final boolean EVERYTHING = Boolean.getBoolean("steadwork.everything");
    /** An address gets one value of so many in the usual run, the next address the next ones. */
    private static final int VALUES_IN_TURN = 4;
    private static final int FIELDS_TRIED = 1;
    private static final int LARGE_FORM = 40;

    @Inject
    TestAccounts accounts;

    @Inject
    FullCase cases;

    private final Random random = new Random(SEED);
    private final Map<String, Set<String>> wrong = new TreeMap<>();
    private final Map<Integer, Integer> statuses = new TreeMap<>();
    private Visitor visitor;

    @Test
    void everyFormAnswersEveryWrongInputInWords() {
        FullCase.Made made = cases.make("Hester", "Hostley-Ambrose");
        visitor = accounts.visitor(Role.LEAD);
        List<ShownForm> forms = forms(made);
        assertTrue(forms.size() >= 20, () -> "only " + forms.stream().map(ShownForm::shape).toList());
        for (ShownForm form : forms) {
            attack(form);
        }
        assertTrue(statuses.getOrDefault(422, 0) > 80, () -> "the forms were hardly reached: " + statuses);
        assertTrue(wrong.isEmpty(), () -> statuses + "\n" + report());
    }

    @Test
    void aPasswordOfAnyLengthOrKindIsJustWrong() {
        visitor = new Visitor();
        for (int i = 0; i < VALUES.size(); i++) {
            for (String sent : List.of(VALUES.get(i), VALUES.get(i) + "ä".repeat(100))) {
                visitor.from("198.19.0." + (1 + i)).open("/sign-in"); // a place of its own for each, since many from one have to wait
                visitor.submit("/sign-in", Map.of("userName", sent, "password", sent));
                assertEquals(422, visitor.status(), sent);
            }
        }
    }

    @Test
    void addressesWithAnythingInThemAreAnsweredInWords() {
        FullCase.Made made = cases.make("Queenie", "Hostley-Query");
        visitor = accounts.visitor(Role.LEAD);
        List<String> paths = List.of("/patients?q=", "/sign-in?to=", "/first-run?key=", "/figures/sh_rolls.svg?hold=", "/figures/sh_rolls.svg?side=",
                made.path() + "/outcomes?on=", made.path() + "/outcomes/ndi?on=", made.path() + "/ties?from=", made.path() + "/ties?to=",
                made.path() + "/visits/2?draft=", made.path() + "/programme/add?region=", made.path() + "/programme/add/sh_rolls?dose=",
                made.path() + "/consents/new?to=", made.path() + "/work-place/edit?again=", made.path() + "/letters/1/file/page-", made.path() + "/letters/new/", "/diary?day=", "/diary?done=", "/diary/week?whose=",
                "/diary/book?q=", "/diary/book?day=", "/diary/book?patient=" + made.patient() + "&start=", "/diary/waiting/new?patient=", "/diary/calendar.ics?from=",
                "/caseload?from=", "/caseload?to=2026-01-01&from=2025-01-01&complaint=", "/caseload?region=",
                "/caseload?employer=", "/caseload/time?second=region-neck&first=", "/caseload/responders.csv?clinician=", "/employers/" + made.parts().get("employer") + "/group-report/",
                "/clinic/audit?person=", "/clinic/audit?patient=", "/clinic/audit?action=", "/clinic/audit?from=", "/clinic/audit?page=",
                "/clinic/audit/export.csv?patient=", "/clinic/audit/export.", "/account?after=", "/sign-in/link/", "/sign-in?after=", "/sign-in/openid?to=", "/sign-in/openid/back?code=");
        List<String> values = VALUES.stream().filter(one -> one.length() < 500).toList();
        int turn = 0;
        for (String path : paths) {
            turn++;
            for (int i = EVERYTHING ? 0 : turn % VALUES_IN_TURN; i < values.size(); i += EVERYTHING ? 1 : VALUES_IN_TURN) {
                String value = values.get(i);
                visitor.openEncoded(path + URLEncoder.encode(value, StandardCharsets.UTF_8).replace("+", "%20"));
                judge("GET " + path, value);
            }
        }
        for (String broken : List.of("/patients?q=%ff%fe", "/cases/1%00/visits", "/cases//visits", "/%2e%2e/", "/q/", "/x".repeat(900))) {
            visitor.openEncoded(broken);
            judge("GET " + broken, "");
        }
        assertTrue(wrong.isEmpty(), this::report);
    }

    /** Eight send the same at one moment: one is stored, whoever collides with it is told so. */
    @Test
    void whatIsSavedTwiceAtOneMomentIsStoredOrRefusedInWords() {
        FullCase.Made made = cases.make("Dora", "Hostley-Double");
        Map<String, Map<String, String>> forms = Map.of("/visits", Map.of("visitedOn", "1 Apr 2026"), "/outcomes", Map.of("s_nprs_now", "4"),
                "/symptoms/new", Map.of("reportedOn", "1 Apr 2026", "symptomFree", "yes"),
                "/programme/conditions", Map.of("pregnant", "yes"), "/work-place/edit", Map.of("assessedOn", "1 Apr 2026"));
        ExecutorService atOnce = Executors.newFixedThreadPool(8);
        forms.forEach((path, changes) -> {
            List<Visitor> eight = Stream.generate(() -> accounts.visitor(Role.CLINICIAN)).limit(8).toList();
            eight.forEach(one -> one.open(made.path() + path));
            CompletableFuture.allOf(eight.stream().map(one -> CompletableFuture.runAsync(() -> one.submit(made.path() + path, changes), atOnce))
                    .toArray(CompletableFuture[]::new)).join();
            List<Integer> answers = eight.stream().map(Visitor::status).sorted().toList();
            assertEquals(200, answers.get(0), path + " " + answers);
            assertTrue(Set.of(200, 409, 422).containsAll(answers), path + " " + answers);
        });
        atOnce.shutdown();
    }

    /** Walks from page to page and takes one form of each shape; those that end something come last. */
    private List<ShownForm> forms(FullCase.Made made) {
        Deque<String> open = new ArrayDeque<>(List.of(
                "/",
                "/patients",
                "/patients/new",
                "/patients/" + made.patient(),
                "/patients/" + made.patient() + "/edit",
                "/patients/" + made.patient() + "/cases/new",
                "/clinic/accounts/new",
                "/clinic/accounts/" + accounts.fresh(Role.CLINICIAN).id(),
                "/clinic/audit",
                "/account",
                "/account/password",
                "/account/codes",
                made.path() + "/team",
                "/bench/screen-breaks",
                "/clinic/import",
                "/clinic/tokens",
                "/patients/fhir",
                made.path() + "/edit",
                made.path() + "/close",
                made.path() + "/hand-over",
                "/today/entries/" + made.parts().get("entry") + "/snooze",
                made.path() + "/attendance",
                made.path() + "/ties",
                made.path() + "/programme/conditions",
                made.path() + "/programme/add/gn_breathing",
                made.path() + "/programme/sets/achilles",
                made.path() + "/letters/new/routine_referral"));
        open.addAll(List.of("/diary", "/diary/week", "/diary/book?patient=" + made.patient(), "/diary/appointments/" + made.parts().get("appointment"), "/diary/waiting",
                "/diary/waiting/new?patient=" + made.patient(), "/diary/waiting/" + made.parts().get("waiting"), "/diary/missed/" + made.parts().get("missed"),
                "/diary/reminders", "/diary/to-book", "/diary/clinic", "/diary/clinic/hours/" + made.parts().get("clinician"), "/diary/clinic/leave/new",
                "/diary/clinic/leave/" + made.parts().get("leave"), "/diary/clinic/rooms/" + made.parts().get("clinicRoom")));
        String site = "/sites/" + made.parts().get("site");
        open.addAll(List.of("/employers", "/employers/new", "/employers/" + made.parts().get("employer"), "/employers/" + made.parts().get("employer") + "/edit",
                "/employers/" + made.parts().get("employer") + "/contacts/new", "/employers/" + made.parts().get("employer") + "/contacts/" + made.parts().get("contact"),
                "/employers/" + made.parts().get("employer") + "/sites/" + made.parts().get("site"), site, site + "/rooms/new",
                site + "/rooms/" + made.parts().get("room"), site + "/rooms/" + made.parts().get("room") + "/furniture",
                "/furniture/" + made.parts().get("piece"), "/furniture/" + made.parts().get("piece") + "/edit",
                "/employers/" + made.parts().get("employer") + "/group-report/2025-h1"));
        String meeting = "/meetings/" + made.parts().get("meeting");
        open.addAll(List.of("/meetings", "/meetings/new", meeting, meeting + "/edit", meeting + "/cases/" + made.caseId(), meeting + "/close",
                made.path() + "/meetings"));
        for (CaseTab tab : CaseTab.values()) {
            open.add(tab.href(Long.parseLong(made.caseId())));
        }
        Set<String> seen = new LinkedHashSet<>();
        Map<String, ShownForm> forms = new LinkedHashMap<>();
        while (!open.isEmpty()) {
            String path = open.poll();
            if (!seen.add(path)) {
                continue;
            }
            visitor.open(path);
            judge("GET " + path, "");
            ShownForm.of(path, visitor.page()).forEach(form -> forms.putIfAbsent(form.shape(), form));
            visitor.page().select("main a[href^=" + made.path() + "/]").eachAttr("href").stream().map(href -> href.replaceFirst("[?#].*", ""))
                    .filter(href -> !href.matches(".*/programme/(add|sets)/.*") && !href.matches(".*\\.(svg|png|pdf|ics|json|zip)")).forEach(open::add);
        }
        List<ShownForm> sorted = new ArrayList<>(forms.values());
        sorted.removeIf(form -> form.action().equals("/sign-out")); // ends the session; RoutesTest sends it
        sorted.sort(Comparator.comparing(form -> form.action().matches(".*/(close|reopen|end|withdraw|sign|withdrawn|call-off|off|remove|cancel)") || form.values().getOrDefault("do",
                List.of()).contains("sign")));
        return EVERYTHING ? sorted : sorted.stream().filter(form -> Math.floorMod(form.shape().hashCode(), PARTS) == PART).toList();
    }

    private void attack(ShownForm shown) {
        ShownForm form = shown;
        boolean large = form.values().size() > LARGE_FORM;
        send(form, form.values(), "as it stands");
        form = anew(form);
        List<String> values = new ArrayList<>(VALUES);
        if (!EVERYTHING) {
            Collections.shuffle(values, random);
            values = values.subList(0, large ? 3 : VALUES_A_FORM);
        }
        for (String value : form.typed().isEmpty() ? List.<String>of() : values) {
            Map<String, List<String>> all = new LinkedHashMap<>(form.values());
            form.typed().forEach(field -> all.put(field, List.of(value)));
            send(form, all, value);
        }
        for (String field : some(form.typed())) {
            for (int i = 0; i < TRIES_A_FIELD; i++) {
                form = one(form, field, List.of(VALUES.get(random.nextInt(VALUES.size()))));
            }
            longest(form, field);
            form = anew(form);
            send(form, changed(form, field, List.of("y".repeat(70_000))), "70 000 characters in " + field);
        }
        for (String field : some(form.choices())) {
            form = one(form, field, List.of("no_such_word"));
            form = one(form, field, List.of(RUNS));
            form = one(form, field, List.of("yes", "no", ""));
        }
        for (String field : some(form.values().keySet())) {
            if (!field.equals("csrf-token")) {
                form = one(form, field, List.of());
                String first = form.values().get(field) == null ? "" : form.values().get(field).stream().findFirst().orElse("");
                form = one(form, field, List.of(first, first, "other"));
            }
        }
        for (String version : List.of("", "-1", "999999", "99999999999", "one", RUNS)) {
            if (form.values().containsKey("version")) {
                form = one(form, "version", List.of(version));
            }
        }
        send(form, Map.of("csrf-token", form.values().get("csrf-token")), "nothing but the token");
        Map<String, List<String>> forged = changed(form, "csrf-token", List.of("forged"));
        send(form, forged, "a forged token");
        if (visitor.status() != 400) {
            note(form.action(), "took a forged token with " + visitor.status());
        }
    }

    /** Sends a form with one field changed, and takes the form anew when it was taken, since its version is old then. */
    private ShownForm one(ShownForm form, String field, List<String> values) {
        send(form, changed(form, field, values), field + " = " + values);
        return visitor.status() == 200 ? anew(form) : form;
    }

    /** Finds the longest text that a field says it takes, and sends exactly that: the database must take it too. */
    private void longest(ShownForm form, String field) {
        send(form, changed(form, field, List.of("z".repeat(30_000))), "30 000 characters in " + field);
        Matcher limit = LIMIT.matcher(visitor.page().text());
        if (visitor.status() == 422 && limit.find()) {
            ShownForm again = anew(form);
            send(again, changed(again, field, List.of("ü".repeat(Integer.parseInt(limit.group(1))))), "the longest " + field);
        }
    }

    private ShownForm anew(ShownForm form) {
        visitor.open(form.page());
        return ShownForm.of(form.page(), visitor.page()).stream().filter(now -> now.shape().equals(form.shape())).findFirst().orElse(form);
    }

    private List<String> some(Set<String> fields) {
        List<String> some = new ArrayList<>(fields);
        Collections.shuffle(some, random);
        return some.subList(0, Math.min(FIELDS_TRIED, some.size()));
    }

    private static Map<String, List<String>> changed(ShownForm form, String field, List<String> values) {
        Map<String, List<String>> all = new LinkedHashMap<>(form.values());
        all.put(field, values);
        if (values.isEmpty()) {
            all.remove(field);
        }
        return all;
    }

    private void send(ShownForm form, Map<String, List<String>> values, String what) {
        visitor.post(form.action(), values);
        judge(form.shape(), what);
        // who changes what the page holds for itself has lost the page
        boolean intact = form.values().keySet().stream().filter(field -> !form.typed().contains(field) && !form.choices().contains(field))
                .allMatch(field -> field.equals("version") || form.values().get(field).equals(values.get(field)));
        if (intact && (visitor.status() == 422 || visitor.status() == 409)) {
            kept(form, values, what);
        }
        if (visitor.status() == 422) {
            for (Element link : visitor.page().select(".notice--stop a[href^=#]")) {
                if (visitor.page().getElementById(link.attr("href").substring(1)) == null) {
                    note(form.shape(), "an error leads to no field: " + link.attr("href"));
                }
            }
            if (visitor.page().select(".notice--stop, .notice--caution, [id$=-error]").isEmpty()) {
                note(form.shape(), "refused without a word after " + what);
            }
        }
    }

    /** What was typed stands in the page again, as far as a page can hold it: a field sent more often than it stands there keeps the first. */
    private void kept(ShownForm form, Map<String, List<String>> values, String what) {
        for (String field : form.typed()) {
            List<String> sent = values.getOrDefault(field, List.of());
            for (String value : sent.subList(0, Math.min(sent.size(), form.values().get(field).size()))) {
                if (value.isBlank() || value.chars().anyMatch(c -> c < ' ' || c >= 0xFFFE) || form.secret().contains(field)) {
                    continue;
                }
                boolean there = visitor.page().select("input, textarea").stream().filter(e -> e.attr("name").equals(field))
                        .anyMatch(e -> (e.tagName().equals("textarea") ? e.wholeText() : e.val()).strip().equals(value.strip()));
                if (!there && !visitor.page().wholeText().contains(value.strip())) {
                    note(form.shape(), visitor.status() + " loses what was typed into " + field + ": " + visitor.page().select("h1").text());
                }
            }
        }
    }

    private void judge(String where, String what) {
        int status = visitor.status();
        statuses.merge(status, 1, Integer::sum);
        String body = String.valueOf(visitor.answer().contentType()).startsWith("image/p") ? "" : visitor.answer().asString();
        if (status >= 500) {
            note(where, status + " after " + what.substring(0, Math.min(50, what.length())).replace("\u0000", "NUL"));
        }
        boolean page = String.valueOf(visitor.answer().contentType()).startsWith("text/html");
        if (page && (body.contains("<script>hostile") || body.contains("<img src=x"))) {
            note(where, "markup comes back alive");
        }
        if (body.contains("org.steadwork.") || body.contains("java.lang.") || body.contains("\tat ")) {
            note(where, status + " shows its inside");
        }
        if (status >= 400 && !body.contains("<h1>") && !body.contains("<h1 ")) {
            note(where, status + " has no page");
        }
    }

    private void note(String where, String what) {
        wrong.computeIfAbsent(where, key -> new LinkedHashSet<>()).add(what);
    }

    private String report() {
        StringBuilder report = new StringBuilder("Seed " + SEED + "\n");
        wrong.forEach((where, what) -> report.append(where).append("\n    ").append(String.join("\n    ", what)).append('\n'));
        return report.toString();
    }
}
