package org.steadwork.journey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.LoadState;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The patient's own page on a phone of 360 px: in, ticked, reported, without reception, and back. */
@Tag("long")
class OwnPageJourneyIT {

    private static final Pattern FIRST_RUN = Pattern.compile("/first-run\\?key=[\\w-]+");
    private static final Pattern LINK = Pattern.compile("/own/[A-Za-z0-9_-]{43}");
    private static final String PASSWORD = "wind-over-the-fen-7";
    private static final List<String> NAMES = List.of("Basilia Thornquist", "Caspian Oduya", "Delphine Marchetti", "Emeric Vandersloot", "Aurelio Brandvik", "Celestine Dumarest", "Evander Fjelstrup", "Gudrun Hazelwick", "Ignatius Jellema", "Katriona Lofthus",
            "Marisol Tverdal", "Oswin Pellegrew");

    /** One thumb: WCAG 2.2, 2.5.5 (level AAA) asks for 44 px. */
    private static final double THUMB = 44;

    private static PackagedApplication application;
    private static Playwright playwright;
    private static Browser browser;
    private static Guest clinician;
    private static int patients;

    private String born;
    private String path;
    private String link;
    private BrowserSession phone;

    @BeforeAll
    static void start() {
        application = PackagedApplication.start(Map.of("steadwork.demo-now", "2030-03-04T09:20", "steadwork.clinic.phone", "01632 960100"));
        playwright = Browsers.playwright();
        browser = Browsers.chromium(playwright);
        Matcher key = FIRST_RUN.matcher(application.log());
        if (!key.find()) {
            throw new AssertionError("no first-run link in the log:\n" + application.log());
        }
        clinician = new Guest(application.address());
        clinician.open(key.group()).formWithButton("Make the account").set("fullName", "Tamsin Okoro-Vale").set("displayName", "T. Okoro-Vale")
                .set("userName", "tamsin").set("password", PASSWORD).set("passwordAgain", PASSWORD).send().expect(200);
    }

    @AfterAll
    static void stop() {
        browser.close();
        playwright.close();
        application.close();
    }

    @BeforeEach
    void aPatientWithTwoExercisesAndALink() {
        String[] name = NAMES.get(patients).split(" ");
        born = "17 Sep " + (1970 + patients++);
        clinician.open("/patients/new").formWithButton("Register the patient").set("givenName", name[0]).set("familyName", name[1]).set("birthDate", born).set("sex", "female").set("handedness", "right").send().expect(200);
        clinician.follow("Open a case").formWithButton("Open the case").set("complaint", "Neck ache").set("openedOn", "4 Mar 2030").send().expect(200);
        path = clinician.at().getPath().replaceFirst("/symptoms.*", "");
        clinician.open(path + "/symptoms/new").formWithButton("Add the zone").set("add", "neck").send().expect(200).formWithButton("Save symptoms").set("now-neck", "2")
                .send().expect(200);
        for (String exercise : new String[] {"sh_rolls", "nk_rotation"}) {
            FilledForm give = clinician.open(path + "/programme/add/" + exercise).expect(200).formWithButton("Give this exercise");
            if (give.offers("considered")) {
                give.tickEach("considered");
            }
            give.send().expect(200);
        }
        clinician.open(path + "/own-page").formWithButton("Make a link").send().expect(200);
        Matcher made = LINK.matcher(clinician.page().select(".own-card code").text());
        assertTrue(made.find(), clinician.words());
        link = made.group();
        phone = new BrowserSession(browser, application.address(), 360);
    }

    @AfterEach
    void putThePhoneAway() {
        phone.close();
    }

    private void enter() {
        phone.open(link).expectHeading("Your exercises").type("Your date of birth", born).press("Open my page");
        assertEquals("Mon 4 Mar 2030", phone.heading().replace('\u00a0', ' '));
    }

    private Locator box(int number) {
        return phone.page().locator("input[name=done]").nth(number);
    }

    private void waitFor(String saved) {
        phone.page().locator("[data-kept] b").and(phone.page().getByText(saved, new Page.GetByTextOptions().setExact(true))).waitFor();
    }

    private int ticked() {
        clinician.open(path + "/own-page").expect(200);
        return clinician.page().select("section[aria-labelledby=s-kept] td:last-child").stream()
                .mapToInt(cell -> Integer.parseInt(cell.text().replaceFirst(" of .*", ""))).sum();
    }

    @Test
    void theWayThroughThePage() {
        phone.open(link).type("Your date of birth", "1 Jan 1960");
        phone.button("Open my page").click();
        phone.page().locator("#born-error").waitFor();
        phone.expectComplaint("422").check().expectWords("This is not the date we have");
        enter();
        box(0).check();
        waitFor("Sent");
        phone.page().getByText("Pain before and after").first().click();
        phone.page().getByLabel("Before").first().selectOption("2");
        phone.page().getByLabel("After").first().selectOption("7");
        phone.page().getByRole(AriaRole.ALERT).waitFor();
        everythingToTapIsLargeEnoughForAThumb();
        phone.check().expectWords("Your pain rose clearly after an exercise").expectWords("nobody watches this page round the clock");
        phone.page().getByText("How to do it").first().click();
        phone.check();
        phone.follow("Tell how it has been").expectHeading("How has it been?");
        phone.page().getByRole(AriaRole.RADIOGROUP, new Page.GetByRoleOptions().setName("Pain now, Back of neck")).getByLabel("3").check();
        phone.page().locator("input[name=sign][value=today0]").check();
        sendReport().expectHeading("Thank you").expectWords("Phone the clinic or a doctor today").expectWords("Nobody watches this page round the clock");
        phone.follow("Back to the exercises").press("Close my page on this phone").expectHeading("Your page is closed");
        clinician.open("/").expect(200);
        assertTrue(clinician.words().contains("Ticked at home, to phone about the same day"), clinician.words());
        assertTrue(clinician.words().contains("Pain rose from 2 to 7 with an exercise"), clinician.words());
    }

    private void everythingToTapIsLargeEnoughForAThumb() {
        for (String wanted : new String[] {".slot", ".own-pain select", ".tickrow summary", ".phone button"}) {
            for (Locator target : phone.page().locator(wanted).all()) {
                BoundingBox size = target.boundingBox();
                if (size != null) {
                    assertTrue(size.height >= THUMB, wanted + " is " + size.height + " px high");
                }
            }
        }
    }

    @Test
    void whatIsTickedWithoutReceptionIsKeptAndArrivesOnce() {
        enter();
        phone.withoutReception(() -> {
            box(0).check();
            waitFor("Kept");
            box(1).check();
        });
        waitFor("Sent");
        phone.check();
        assertEquals(2, ticked());
        phone.page().reload();
        assertTrue(box(0).isChecked() && box(1).isChecked());
        phone.press("Send to T. Okoro-Vale");
        waitFor("Sent");
        assertEquals(2, ticked());
        box(0).uncheck();
        waitFor("Sent");
        phone.page().waitForCondition(() -> ticked() == 1);
    }

    @Test
    void whatWasKeptIsSentWhenAClosedPageIsOpenedAgain() {
        enter();
        phone.withoutReception(() -> {
            box(0).check();
            waitFor("Kept");
            phone.forgetCookies();
        });
        phone.page().getByText("Your page has closed").waitFor();
        phone.expectComplaint("400"); // the token of the form went with the cookies
        assertEquals(0, ticked());
        phone.open("/own/today").expectHeading("Your page is closed");
        enter();
        waitFor("Sent");
        assertTrue(box(0).isChecked());
        assertEquals(1, ticked());
    }

    /** The page loads, its ticks do not get through: the next tick must not push out the one before. */
    @Test
    void aTickThatDidNotGetThroughSurvivesLoadingThePageAnew() {
        enter();
        phone.page().route("**/own/today", route -> {
            if (route.request().method().equals("POST")) {
                route.abort();
            } else {
                route.resume();
            }
        });
        box(0).check();
        waitFor("Kept");
        phone.page().reload();
        assertTrue(box(0).isChecked());
        box(1).check();
        waitFor("Kept");
        phone.page().unroute("**/own/today");
        box(2).check();
        waitFor("Sent");
        assertEquals(3, ticked());
    }

    private void tell() {
        phone.follow("Tell how it has been").expectHeading("How has it been?");
    }

    private Locator workAbility(int answer) {
        return phone.page().locator("input[name=q_was_1][value='" + answer + "']");
    }

    /** The page sends by script, so the click alone loads nothing. */
    private BrowserSession sendReport() {
        phone.button("Send it").click();
        phone.page().waitForURL("**/own/report/thanks");
        return phone.check();
    }

    private int reports() {
        clinician.open(path + "/own-page").expect(200);
        return clinician.page().select(".own-report").size();
    }

    @Test
    void aReportFilledInWithoutReceptionIsKeptAndArrivesOnce() {
        enter();
        tell();
        phone.withoutReception(() -> {
            workAbility(6).check();
            phone.button("Send it").click();
            waitFor("Kept");
            phone.page().getByText("Back to the exercises").click();
            phone.page().getByText("This page stays open").waitFor();
            phone.expectHeading("How has it been?");
            assertEquals(0, reports());
        });
        phone.page().waitForURL("**/own/report/thanks");
        phone.check().expectHeading("Thank you");
        assertEquals(1, reports());
        assertTrue(clinician.words().contains("Work ability (0-10): 6"), clinician.words());
        phone.follow("Back to the exercises").page().reload();
        phone.check();
        assertEquals(1, reports(), "nothing of it is left on the phone to be sent again");
    }

    /** The report reaches the clinic, its answer does not reach the phone: the phone sends it again, and it stands once. */
    @Test
    void aReportWhoseAnswerWasLostIsSentAgainAndStandsOnce() {
        enter();
        tell();
        workAbility(6).check();
        phone.page().route("**/own/report", route -> {
            if (route.request().method().equals("POST")) {
                route.fetch();
                route.abort();
            } else {
                route.resume();
            }
        });
        phone.button("Send it").click();
        waitFor("Kept");
        phone.page().unroute("**/own/report");
        assertEquals(1, reports());
        phone.expectComplaint("net::ERR_FAILED");
        phone.open("/own/today");
        phone.page().getByText("Your report was sent").waitFor();
        assertEquals(1, reports());
    }

    @Test
    void aHalfFilledReportStaysOnThePhoneAndAWarningSignSaysAtOnceWhatToDo() {
        enter();
        tell();
        workAbility(4).check();
        phone.type("Anything else", "A long week");
        phone.page().locator("input[name=sign][value=now0]").check();
        phone.page().getByText("Call the emergency number now.").waitFor();
        phone.check();
        phone.follow("Back to the exercises");
        assertEquals(0, reports(), "a half-filled report is not sent");
        tell();
        assertTrue(workAbility(4).isChecked());
        assertEquals("A long week", phone.page().getByLabel("Anything else").inputValue());
        assertTrue(phone.page().getByText("Call the emergency number now.").isVisible());
        phone.page().locator("input[name=sign][value=now0]").uncheck();
        assertTrue(phone.page().getByText("Call the emergency number now.").isHidden());
        sendReport().expectHeading("Thank you");
        assertEquals(1, reports());
    }

    @Test
    void thePageIsNotLeftWithoutReceptionAndItsFiguresAreThere() {
        enter();
        phone.page().waitForLoadState(LoadState.NETWORKIDLE);
        phone.withoutReception(() -> {
            phone.page().getByText("Tell how it has been").click();
            phone.page().getByText("This page stays open").waitFor();
            assertEquals("Mon 4 Mar 2030", phone.heading().replace('\u00a0', ' '));
            phone.page().getByText("How to do it").first().click();
            assertTrue((boolean) phone.page().locator(".own-figure").first().evaluate("figure => figure.complete && figure.naturalWidth > 0"), "the figure was fetched before");
            box(0).check();
            waitFor("Kept");
        });
        waitFor("Sent");
        assertEquals(1, ticked());
    }
}
