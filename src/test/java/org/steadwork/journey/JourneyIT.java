package org.steadwork.journey;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Playwright;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The main job in a real browser against the packaged application: from the first account to Today, one invented case.
 * Every page on the way is checked for accessibility, for its width and for complaints of the browser.
 */
class JourneyIT {

    private static final Pattern FIRST_RUN = Pattern.compile("/first-run\\?key=[\\w-]+");
    private static final String PASSWORD = "wind-over-the-fen-7";

    private static PackagedApplication application;
    private static Playwright playwright;
    private static Browser browser;

    @BeforeAll
    static void start() {
        application = PackagedApplication.start(Map.of("steadwork.demo-now", "2030-03-04T09:20"));
        playwright = Browsers.playwright();
        browser = Browsers.chromium(playwright);
    }

    @AfterAll
    static void stop() {
        browser.close();
        playwright.close();
        application.close();
    }

    @Test
    void fromTheFirstAccountToToday() {
        try (BrowserSession clinician = new BrowserSession(browser, application.address(), 1440)) {
            makeTheFirstAccount(clinician);
            registerThePatient(clinician);
            openTheCase(clinician);
            reportSymptomsByKeyboardAlone(clinician);
            clinician.open("/").expectWords("Marisol Tverdal");
        }
    }

    private static void makeTheFirstAccount(BrowserSession clinician) {
        Matcher link = FIRST_RUN.matcher(application.log());
        if (!link.find()) {
            throw new AssertionError("no first-run link in the log:\n" + application.log());
        }
        clinician.open(link.group()).type("User name or e-mail", "tamsin").type("Your name", "Tamsin Okoro-Vale").type("Short name", "T. Okoro-Vale")
                .type("Registration number", "DEMO-PT-001").type("Password", PASSWORD).type("Password again", PASSWORD)
                .press("Make the account");
        clinician.press("Sign out").expectHeading("Sign in");
        clinician.type("E-mail or user name", "tamsin").type("Password", PASSWORD).press("Sign in");
    }

    private static void registerThePatient(BrowserSession clinician) {
        clinician.follow("Patients").follow("Add a patient");
        clinician.type("Given name", "Marisol").type("Family name", "Tverdal").type("Date of birth", "17 Sep 1991").choose("Sex", "female")
                .choose("Hand preferred", "right-handed").press("Register the patient").expectHeading("Marisol Tverdal");
    }

    private static void openTheCase(BrowserSession clinician) {
        clinician.follow("Open a case").type("Complaint", "Neck and right shoulder ache").type("Since", "21 Jan 2030")
                .press("Open the case").expectHeading("Symptoms");
    }

    /** From the chart to the saved report without a pointer: arrow keys find the zone, Enter opens its row, digits give the scores. */
    private static void reportSymptomsByKeyboardAlone(BrowserSession clinician) {
        Locator chart = clinician.page().locator("[data-zone][tabindex='0']");
        clinician.tabTo(chart).key("ArrowRight").key("ArrowDown").expectFocus("Back of neck").key("Enter");
        clinician.key("3").key("Tab").key("4").key("Tab").key("5").expectChecked("now-neck", "3").expectChecked("average-neck", "4")
                .expectChecked("worst-neck", "5");
        clinician.tabTo(clinician.button("Save symptoms")).key("Enter");
        clinician.page().waitForURL("**/symptoms/*");
        clinician.check().expectWords("Saved").expectChecked("worst-neck", "5");
    }
}
