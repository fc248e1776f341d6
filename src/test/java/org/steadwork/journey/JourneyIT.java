package org.steadwork.journey;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Playwright;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steadwork.account.DemoPassword;

/**
 * The main job in a real browser against the packaged application: from the first account to Today, one invented case.
 * Every page on the way is checked for accessibility, for its width and for complaints of the browser.
 */
class JourneyIT {

    private static final Pattern FIRST_RUN = Pattern.compile("/first-run\\?key=[\\w-]+");
    private static final String PASSWORD = "wind-over-the-fen-7";

    private static final List<String> PAGES = List.of("/symptoms", "/red-flags", "/work-place", "/programme", "/outcomes", "/visits", "/letters");

    private static PackagedApplication application;
    private static Playwright playwright;
    private static Browser browser;

    @BeforeAll
    static void start() {
        application = PackagedApplication.start(Map.of("steadwork.demo-now", "2030-03-04T09:20", "steadwork.clinic.name",
                "Alderwick Occupational Physiotherapy", "steadwork.clinic.phone", "01632 960100"));
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
            long id = Long.parseLong(clinician.page().url().replaceAll(".*/cases/(\\d+)/.*", "$1"));
            String caseFile = "/cases/" + id;
            answerTheRedFlags(clinician, caseFile);
            measureTheWorkPlace(clinician, caseFile);
            giveAnExercise(clinician, caseFile);
            enterAScore(clinician, caseFile);
            signTheNote(clinician, caseFile);
            writeToTheEmployer(clinician, caseFile);
            clinician.open(caseFile).expectHeading("Map").open("/").expectWords("Marisol Tverdal");
            for (String page : PAGES) {
                clinician.open(caseFile + page);
            }
        }
    }

    /** In the long run only. */
    @Test
    @Tag("long")
    void theDemoOnAPhone() {
        try (PackagedApplication demo = PackagedApplication.start(Map.of("quarkus.profile", "demo"));
                BrowserSession clinician = new BrowserSession(browser, demo.address(), 360)) {
            clinician.open("/sign-in").type("E-mail or user name", "tamsin").type("Password", DemoPassword.VALUE).press("Sign in");
            clinician.open("/patients?q=Tverdal").follow("Marisol Tverdal");
            String caseFile = clinician.page().locator("a[href^='/cases/']").first().getAttribute("href");
            clinician.open("/").open(caseFile);
            for (String page : PAGES) {
                clinician.open(caseFile + page);
            }
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
                .choose("Hand preferred", "right-handed").type("Employer", "Harbourline Call Services").press("Register the patient").expectHeading("Marisol Tverdal");
    }

    private static void openTheCase(BrowserSession clinician) {
        clinician.follow("Open a case").type("Complaint", "Neck and right shoulder ache").type("Since", "21 Jan 2030").type("Next review", "11 Mar 2030")
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

    /** Answers no to every question that is due, saves as often as new ones come, and signs. */
    private static void answerTheRedFlags(BrowserSession clinician, String caseFile) {
        clinician.open(caseFile + "/red-flags");
        for (int round = 0; round < 4; round++) {
            Locator due = clinician.page().locator("form > .question input[value='no'], .red-flag-rule .question input[value='no']");
            due.all().stream().filter(no -> !no.isChecked()).forEach(Locator::check);
            clinician.press("Save answers");
        }
        clinician.press("Sign the screen").expectWords("Clear on");
    }

    private static void measureTheWorkPlace(BrowserSession clinician, String caseFile) {
        clinician.open(caseFile + "/work-place/edit");
        Map.of("stature", "1640", "popliteal_height", "405", "elbow_rest_height", "240", "eye_height_sitting", "745", "thigh_clearance", "150",
                "seat_now", "430", "desk_now", "645", "screen_top_now", "1025", "distance_now", "620").forEach(
                        (field, value) -> clinician.page().locator("[name='" + field + "']").fill(value));
        clinician.press("Save the assessment").expectHeading("Work place").expectWords("mm");
    }

    private static void giveAnExercise(BrowserSession clinician, String caseFile) {
        clinician.open(caseFile + "/programme/add").open(caseFile + "/programme/add/sh_blade_squeeze");
        clinician.page().locator("input[name='considered']").all().forEach(Locator::check);
        clinician.press("Give this exercise").expectHeading("Programme").expectWords("Shoulder blade squeeze");
    }

    private static void enterAScore(BrowserSession clinician, String caseFile) {
        clinician.open(caseFile + "/outcomes/ndi");
        clinician.page().locator("table.grid input").all().forEach(item -> item.fill("2"));
        clinician.press("Save the answers");
        clinician.open(caseFile + "/outcomes").expectWords("40");
    }

    private static void signTheNote(BrowserSession clinician, String caseFile) {
        clinician.open(caseFile + "/visits").open(caseFile + "/visits/1");
        clinician.type("Assessment", "Posture at the screen may contribute.").type("Plan", "Shoulder blade squeeze; review in a week.")
                .press("Sign the note").expectWords("Signed note");
    }

    /** Fills a field of a letter, unfolding the part it stands in. */
    private static void fill(Locator field, String words) {
        if (!field.isVisible()) {
            field.locator("xpath=ancestor::details[1]/summary").click();
        }
        field.fill(words);
    }

    private static void writeToTheEmployer(BrowserSession clinician, String caseFile) {
        clinician.open(caseFile + "/consents/new").choose("To", "Harbourline Call Services").press("Choose the reader");
        clinician.choose("How it was given", "signed on paper").type("Given on", "4 Mar 2030").type("Until", "4 Sep 2030").press("Record the consent");
        clinician.open(caseFile + "/letters/new/employer_report").choose("To", "Harbourline Call Services").press("Draft the letter");
        Map.of("text-request", "I ask for a headset by 11 March 2030.", "text-work_status", "Full hours.", "text-can_do", "She can type and talk for her full hours.")
                .forEach((section, words) -> fill(clinician.page().locator("[name='" + section + "']"), words));
        Locator first = clinician.page().locator("[name='rows-modifications']");
        fill(first.nth(0), "Headset for calls");
        fill(first.nth(1), "One headset");
        fill(first.nth(2), "4 Mar 2030");
        fill(first.nth(3), "24 Apr 2030");
        clinician.press("Save as draft");
        clinician.choose("The worker’s answer", "Shown to the worker: agreed").type("Day", "4 Mar 2030").type("How", "In the visit").press("Record the answer");
        clinician.page().locator("[name^='why-']").all().forEach(why -> fill(why, "Needed to make sense of the request."));
        clinician.page().locator("[name='password']").fill(PASSWORD);
        clinician.press("Sign the letter").expectWords("It cannot be changed");
    }
}
