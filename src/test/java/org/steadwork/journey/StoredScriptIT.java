package org.steadwork.journey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steadwork.account.DemoPassword;

/**
 * Scripts typed into every text field of a case, a person, an employer and a letter, then every page of them looked at in Chromium: none runs. The
 * log of all this names no patient and holds nothing that was typed.
 */
@Tag("long")
class StoredScriptIT {

    private static final String MARK = "hostileRan";
    private static final String PAYLOAD = "\"'></textarea></title><img src=x onerror=\"window." + MARK + "=1\"><script>window." + MARK + "=1;alert(1)</script><svg onload=\"window." + MARK
            + "=1\">";
    /** For fields of one line, the shortest of which takes 60 characters. */
    private static final String SHORT = "\"'><svg onload=\"window." + MARK + "=1\">";
    private static final int FEWEST_STORED = 15;
    private static final int MOST_PAGES = 90;

    private final Set<String> pages = new LinkedHashSet<>();
    private final List<String> refused = new ArrayList<>();
    private int stored;

    @Test
    void nothingThatIsTypedRunsAnywhereAndTheLogSaysNothingOfIt() {
        try (PackagedApplication demo = PackagedApplication.start(Map.of("quarkus.profile", "demo")); Playwright playwright = Browsers.playwright();
                Browser browser = Browsers.chromium(playwright)) {
            Guest guest = new Guest(demo.address()).open("/sign-in").expect(200).formWithButton("Sign in").set("userName", "tamsin").set("password", DemoPassword.VALUE).send()
                    .expect(200);
            walk(guest);
            assertTrue(stored >= FEWEST_STORED, "only " + stored + " forms took it, not " + refused);
            look(browser, demo);
            assertLogSaysNothing(demo.log(), guest);
        }
    }

    /** Goes from page to page of one case and types the scripts into every text field of every form. */
    private void walk(Guest guest) {
        Deque<String> open = new ArrayDeque<>(List.of("/cases/1", "/cases/1/edit", "/cases/1/symptoms", "/cases/1/visits", "/cases/1/letters", "/cases/1/outcomes", "/cases/1/programme",
                "/cases/1/work-place", "/cases/1/red-flags", "/employers", "/patients/new", "/clinic",
                "/employers/new", "/employers/1/contacts/new", "/patients/1/cases/new", "/meetings/new", "/diary/waiting/new?patient=1", "/diary/clinic", "/diary/clinic/leave/new",
                "/clinic/tokens", "/cases/1/hand-over", "/cases/1/team"));
        Set<String> sent = new LinkedHashSet<>();
        guest.open("/cases/1").expect(200);
        guest.page().select("a[href^=/patients/]").eachAttr("href").stream().filter(href -> href.matches("/patients/\\d+")).findFirst().ifPresent(href -> {
            open.add(href);
            open.add(href + "/edit");
        });
        while (!open.isEmpty() && pages.size() < MOST_PAGES) {
            String path = open.poll();
            if (!pages.add(path)) {
                continue;
            }
            guest.open(path);
            guest.page().select("main a[href^=/cases/1/], main a[href^=/employers/], main a[href^=/sites/]").eachAttr("href").stream().map(href -> href.replaceFirst("[?#].*", ""))
                    .filter(href -> !href.matches(".*\\.(svg|png|pdf|ics|zip|jpg)") && !href.matches(".*/programme/(add|sets)/.*")).forEach(open::add);
            for (String action : guest.page().select("main form[method=post]").eachAttr("action")) {
                if (sent.add(action.replaceAll("\\d+", "#")) && !action.matches(".*/(close|remove|end|withdraw|revoke|sign).*")) {
                    send(guest, path, action);
                }
            }
        }
    }

    private void send(Guest guest, String path, String action) {
        guest.open(path);
        Element form = guest.page().selectFirst("main form[method=post][action='" + action + "']");
        if (form == null) {
            return;
        }
        FilledForm filled = guest.form("main form[method=post][action='" + action + "']");
        boolean typed = false;
        for (Element field : form.select("textarea[name], input[name]:not([type]), input[name][type=text]")) {
            Element box = field.closest(".field");
            if (box == null || !box.hasClass("field--num") && !box.hasClass("field--date")) {
                filled.set(field.attr("name"), field.tagName().equals("textarea") ? PAYLOAD : SHORT);
                typed = true;
            }
        }
        if (typed) {
            filled.send();
            if (guest.status() == 200) {
                stored++;
            } else {
                refused.add(guest.status() + " " + action + " " + guest.page().select(".field__error").eachText());
            }
        }
    }

    private void look(Browser browser, PackagedApplication demo) {
        List<String> ran = Collections.synchronizedList(new ArrayList<>());
        try (BrowserContext context = browser.newContext()) {
            Page page = context.newPage();
            page.onDialog(dialog -> {
                ran.add("a dialog on " + page.url());
                dialog.dismiss();
            });
            page.setContent("<p title=\"" + PAYLOAD + "\">");
            page.waitForTimeout(200);
            assertTrue((boolean) page.evaluate("() => window." + MARK + " === 1"), "the script does not run even where nothing stops it, so this test shows nothing");
            ran.clear();
            page.navigate(demo.address().resolve("/sign-in").toString());
            page.getByLabel("E-mail or user name").fill("tamsin");
            page.getByLabel("Password").fill(DemoPassword.VALUE);
            page.locator("main button[type=submit]").first().click();
            page.waitForLoadState();
            int shown = 0;
            for (String path : pages) {
                page.navigate(demo.address().resolve(path).toString());
                shown += page.content().contains(MARK) ? 1 : 0;
                if (!(boolean) page.evaluate("() => window." + MARK + " === undefined") || page.locator("img[src=x]").count() > 0) {
                    ran.add(path);
                }
            }
            int pagesWithIt = shown;
            assertTrue(pagesWithIt > 10, () -> "the words stand on only " + pagesWithIt + " pages");
        }
        assertEquals(List.of(), ran);
    }

    private static void assertLogSaysNothing(String log, Guest guest) {
        assertFalse(log.contains(MARK), "what was typed stands in the log");
        List<String> names = new ArrayList<>();
        for (int id = 2; id < 13; id++) {
            guest.open("/cases/" + id);
            if (guest.status() == 200) {
                names.add(guest.page().select("a[href^=/patients/]").text());
            }
        }
        Set<String> words = new LinkedHashSet<>();
        names.forEach(name -> words.addAll(List.of(name.split("\\s+"))));
        words.removeIf(word -> word.length() < 5 || word.equals("Patients") || !Character.isUpperCase(word.charAt(0)));
        assertTrue(words.size() > 10, "only these names: " + words);
        for (String word : words) {
            assertFalse(log.contains(word), () -> word + " stands in the log");
        }
        assertFalse(log.matches("(?s).*(NDI|pain|Pain|score|Score) .*\\d.*"), () -> "a score stands in the log:\n" + log);
    }
}
