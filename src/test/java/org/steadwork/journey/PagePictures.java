package org.steadwork.journey;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.steadwork.account.DemoPassword;

/** Takes the pictures of README and docs from the packaged demo. Not a test: run by {@code ./mvnw -Ppictures verify}. */
class PagePictures {

    private static final Path FOLDER = Path.of("docs", "screens");
    private static final int WIDTH = 1440;

    /** File name, and the case (by patient) with its page; an empty case stands for a page of the clinic. */
    private static final Map<String, String[]> PAGES = new LinkedHashMap<>();

    static {
        PAGES.put("today", new String[] {"", "/"});
        PAGES.put("map", new String[] {"Marisol Tverdal", ""});
        PAGES.put("red-flags", new String[] {"Ignatius Bellweather", "/red-flags"});
        PAGES.put("work-place", new String[] {"Saoirse Vantongeren", "/work-place"});
        PAGES.put("programme", new String[] {"Leopold Marchetti-Hale", "/programme"});
        PAGES.put("outcomes", new String[] {"Petronella Vasquez-Rimmer", "/outcomes"});
        PAGES.put("diary", new String[] {"", "/diary"});
        PAGES.put("review-meeting", new String[] {"", "/meetings/2"});
        PAGES.put("caseload", new String[] {"", "/caseload"});
        PAGES.put("bench", new String[] {"", "/bench"});
        PAGES.put("letter", new String[] {"Cornelius Abara-Whitlock", "/letters/1"});
    }

    @Test
    void takeThem() {
        try (PackagedApplication demo = PackagedApplication.start(Map.of("quarkus.profile", "demo"));
                Playwright playwright = Browsers.playwright();
                Browser browser = Browsers.chromium(playwright);
                BrowserSession session = new BrowserSession(browser, demo.address(), WIDTH)) {
            session.open("/sign-in").type("E-mail or user name", "tamsin").type("Password", DemoPassword.VALUE).press("Sign in");
            PAGES.forEach((file, page) -> take(session, file, page[0], page[1]));
        }
    }

    private static void take(BrowserSession session, String file, String patient, String path) {
        if (patient.isEmpty()) {
            session.open(path);
        } else {
            session.open(path(session, patient) + path);
        }
        session.page().screenshot(new Page.ScreenshotOptions().setPath(FOLDER.resolve(file + ".png")).setFullPage(true));
    }

    private static String path(BrowserSession session, String patient) {
        session.open("/patients?q=" + patient.replace(" ", "%20")).follow(patient);
        Locator first = session.page().locator("a[href^='/cases/']").first();
        return first.getAttribute("href");
    }
}
