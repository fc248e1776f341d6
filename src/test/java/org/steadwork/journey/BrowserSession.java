package org.steadwork.journey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.AxeResults;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.SelectOption;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** One person at a real browser. Everything is found as the person finds it: by role and words. */
final class BrowserSession implements AutoCloseable {

    private final URI address;
    private final BrowserContext context;
    private final Page page;
    private final List<String> complaints = new ArrayList<>();

    BrowserSession(Browser browser, URI address, int width) {
        this.address = address;
        this.context = browser.newContext(new Browser.NewContextOptions().setViewportSize(width, width < 600 ? 800 : 1000).setLocale("en-GB"));
        this.page = context.newPage();
        page.setDefaultTimeout(8_000);
        page.onConsoleMessage(message -> {
            if (message.type().equals("error")) {
                complaints.add(message.location() + ": " + message.text());
            }
        });
        page.onPageError(error -> complaints.add(page.url() + ": " + error));
    }

    Page page() {
        return page;
    }

    /** Does something without reception. What the browser complains of meanwhile is expected: nothing can be fetched. */
    BrowserSession withoutReception(Runnable what) {
        context.setOffline(true);
        what.run();
        complaints.clear();
        context.setOffline(false);
        return this;
    }

    /** The browser complained of exactly this, as it should. */
    BrowserSession expectComplaint(String words) {
        assertTrue(!complaints.isEmpty() && complaints.stream().allMatch(one -> one.contains(words)), () -> words + " was expected, but the browser complained of " + complaints);
        complaints.clear();
        return this;
    }

    /** Makes the browser forget who it is, as after a day. */
    BrowserSession forgetCookies() {
        context.clearCookies();
        return this;
    }

    /** Opens a page by its path and checks it. */
    BrowserSession open(String path) {
        Response response = page.navigate(address.resolve(path).toString());
        assertEquals(200, response.status(), path);
        return check();
    }

    /** Checks the page shown: no accessibility violation, nothing wider than the window, no complaint of the browser. */
    BrowserSession check() {
        assertEquals(List.of(), complaints, "the browser complained");
        AxeResults found = new AxeBuilder(page).analyze();
        assertTrue(found.violationFree(), () -> page.url() + ": " + found.getViolations().stream()
                .map(rule -> rule.getId() + " (" + rule.getHelp() + "): " + rule.getNodes().stream().map(node -> node.getHtml()).toList()).toList());
        int excess = (int) page.evaluate("() => document.documentElement.scrollWidth - document.documentElement.clientWidth");
        assertTrue(excess <= 0, () -> page.url() + " is " + excess + " px wider than the window");
        complaints.clear(); // what the checker itself tried, the page's policy rightly refused
        return this;
    }

    /** Types into the field with this label, whether or not the page calls it optional. */
    BrowserSession type(String label, String text) {
        field(label).fill(text);
        return this;
    }

    BrowserSession choose(String label, String option) {
        field(label).selectOption(new SelectOption().setLabel(option));
        return this;
    }

    private Locator field(String label) {
        // the browser reads the pattern, so it is quoted the browser's way
        return page.getByLabel(Pattern.compile("^\\s*" + label.replaceAll("[.*+?^${}()|\\[\\]\\\\]", "\\\\$0") + "(\\s+optional)?\\s*$"));
    }

    BrowserSession press(String button) {
        button(button).click();
        page.waitForLoadState();
        return check();
    }

    BrowserSession follow(String link) {
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName(link).setExact(true)).first().click();
        page.waitForLoadState();
        return check();
    }

    /** Presses one key where the focus stands. */
    BrowserSession key(String key) {
        page.keyboard().press(key);
        return this;
    }

    /** Walks with the Tab key until the focus stands on what the locator names; fails when it cannot be reached that way. */
    BrowserSession tabTo(Locator wanted) {
        for (int i = 0; i < 200; i++) {
            if ((boolean) wanted.evaluate("e => e === document.activeElement")) {
                return this;
            }
            page.keyboard().press("Tab");
        }
        throw new AssertionError("the keyboard does not reach " + wanted + " on " + page.url());
    }

    Locator button(String words) {
        return page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(words).setExact(true)).first();
    }

    /** Fails unless the focus stands on something whose name begins so. */
    BrowserSession expectFocus(String name) {
        String focused = (String) page.evaluate("() => document.activeElement.getAttribute('aria-label') ?? document.activeElement.textContent");
        assertTrue(focused.startsWith(name), () -> "the focus is on '" + focused + "', not on '" + name + "'");
        return this;
    }

    BrowserSession expectChecked(String field, String value) {
        assertTrue(page.locator("input[name='" + field + "'][value='" + value + "']").isChecked(), () -> field + " is not " + value);
        return this;
    }

    String heading() {
        return page.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setLevel(1)).first().innerText();
    }

    BrowserSession expectHeading(String words) {
        assertEquals(words, heading(), page.url());
        return this;
    }

    BrowserSession expectWords(String words) {
        assertTrue(page.locator("main").innerText().contains(words), () -> "'" + words + "' is not on " + page.url() + ":\n" + page.locator("main").innerText());
        return this;
    }

    @Override
    public void close() {
        context.close();
    }
}
