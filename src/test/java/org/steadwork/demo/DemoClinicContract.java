package org.steadwork.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.PersistenceException;
import java.net.URI;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.steadwork.account.DemoPassword;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseTab;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.VisitKind;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.journey.Guest;
import org.steadwork.redflag.RedFlags;
import org.steadwork.redflag.rules.Urgency;

/** What must hold of the demo clinic, and with it of everything that is stored, on every database the product serves. */
abstract class DemoClinicContract {

    @TestHTTPResource("/")
    URI address;

    @Inject
    EntityManager db;

    @Inject
    DemoLoader loader;

    @Inject
    RedFlags redFlags;

    private final Entry clinic = Content.yaml("demo/clinic.yaml");

    @Test
    void everyCaseIsThereWithItsVisits() {
        for (String key : clinic.texts("cases")) {
            Entry demo = Content.yaml("demo/" + key + ".yaml");
            CaseFile file = caseOf(demo);
            List<Visit> visits = db.createQuery("from Visit v where v.caseFile = ?1 order by v.number", Visit.class).setParameter(1, file).getResultList();
            List<Entry> written = demo.entries("visits");
            assertEquals(written.size() + demo.entries("booked").size(), visits.size(), key);
            for (int i = 0; i < written.size(); i++) {
                assertEquals(LocalDate.parse(written.get(i).text("date")), visits.get(i).visitedOn(), key);
                assertEquals(written.get(i).text("attendance"), visits.get(i).attendance().label(), key);
            }
        }
    }

    @Test
    void loadingAgainAddsNothing() {
        assertFalse(loader.clinic(clinic));
        for (String key : clinic.texts("cases")) {
            assertFalse(loader.caseOf(Content.yaml("demo/" + key + ".yaml"), clinic), key);
        }
        assertFalse(loader.meetings(Content.yaml("demo/meetings.yaml"), clinic));
        assertTrue(loader.marked());
        assertFalse(loader.empty());
    }

    @Test
    void aMeetingWasClosedAndTheNextFillsItself() {
        Guest guest = signedIn("idris");
        guest.open("/meetings").expect(200);
        assertMarked(guest);
        assertEquals(2, guest.page().select("section[aria-labelledby=coming] tbody tr").size());
        assertEquals("closed", guest.page().select("section[aria-labelledby=past] .status").text());
        String next = guest.page().select("section[aria-labelledby=coming] a.link-name").first().attr("href");
        String closed = guest.page().select("section[aria-labelledby=past] a.link-name").first().attr("href");
        String words = guest.open(next).expect(200).page().select("main").text();
        assertTrue(words.contains("Go for 35 hours in January") && words.contains("Telephone Dr G. Demo"), "the question, and the action that comes back: " + words);
        String minutes = guest.open(closed).expect(200).page().select(".minutes").text();
        assertTrue(minutes.contains("Ask for 35 hours a week from January") && minutes.contains("Other view"), minutes);
        assertFalse(minutes.contains("Vasquez"), minutes);
    }

    @Test
    void everyPageOfEveryCaseOpensAndIsMarkedAsDemo() {
        Guest guest = signedIn("tamsin");
        for (String key : clinic.texts("cases")) {
            CaseFile file = caseOf(Content.yaml("demo/" + key + ".yaml"));
            for (CaseTab tab : CaseTab.values()) {
                guest.open(tab.href(file.id())).expect(200);
                assertMarked(guest);
            }
        }
        for (String path : List.of("/", "/patients", "/clinic")) {
            guest.open(path).expect(200);
            assertMarked(guest);
        }
    }

    @Test
    void everyLetterThatWasSentIsSigned() {
        Guest guest = signedIn("tamsin");
        List<String> kinds = Content.yaml("letters/kinds/index.yaml").texts("kinds");
        for (String key : clinic.texts("cases")) {
            Entry demo = Content.yaml("demo/" + key + ".yaml");
            long sent = demo.entries("visits").stream().flatMap(visit -> visit.entries("letters").stream())
                    .filter(letter -> letter.has("sent") && kinds.contains(letter.text("kind")) && !letter.text("recipient").equals("worker")).count();
            guest.open(CaseTab.LETTERS.href(caseOf(demo).id())).expect(200);
            assertEquals(sent, guest.page().select("td[data-label=State]").eachText().stream().filter("signed"::equals).count(), key);
        }
    }

    /** The sciatica case: the bladder flag was raised on 10 May and closed on the 11th. */
    @Test
    void theRedFlagsOfAnEarlierVisitAreThoseOfItsDay() {
        long id = caseOf(Content.yaml("demo/demo-03.yaml")).id();
        assertEquals(Optional.of(Urgency.EMERGENCY_NOW), redFlags.status(id, LocalDate.of(2030, 5, 10)).highestOpen());
        assertEquals(Optional.of(LocalDate.of(2030, 5, 10)), redFlags.status(id, LocalDate.of(2030, 5, 10)).screenedOn());
        assertTrue(redFlags.status(id, LocalDate.of(2030, 5, 9)).highestOpen().isEmpty());
        assertTrue(redFlags.status(id, LocalDate.of(2030, 5, 11)).highestOpen().filter(Urgency.EMERGENCY_NOW::equals).isEmpty(), "closed on that day");
    }

    @Test
    void aPatientIsFoundByHalfANameBySlipsByNumberByBirthDateAndByEmployer() {
        Guest guest = signedIn("philippa");
        for (String typed : List.of("tver", "Marisol Tverdl", "17 Sep 1991", "harbourline")) {
            List<String> names = guest.open("/patients?q=" + typed.replace(" ", "%20")).expect(200).page().select("#hits .link-name").eachText();
            assertTrue(names.contains("Marisol Tverdal"), typed + " found " + names);
        }
    }

    @Test
    void whatIsTypedComesBackLetterByLetterAndAStaleSaveIsRefused() {
        Guest one = signedIn("tamsin");
        Guest other = signedIn("idris");
        String edit = "/cases/" + caseOf(Content.yaml("demo/demo-11.yaml")).id() + "/edit";
        String unusual = "Zoë’s note: “≥ 30 %”, łódź, 北京, 😀\n" + "long ".repeat(700) + "end";
        one.open(edit).expect(200);
        other.open(edit).expect(200);
        one.formWithButton("Save the case").set("history", unusual).send().expect(200);
        assertEquals(unusual, one.open(edit).page().selectFirst("textarea[name=history]").wholeText());
        other.formWithButton("Save the case").set("history", "Something else").send().expect(409);
        assertEquals("Something else", other.page().selectFirst("textarea[name=history]").wholeText());
        assertTrue(other.words().contains("Stored meanwhile"));
    }

    @Test
    void aSecondVisitWithTheSameNumberIsRefusedByTheDatabase() {
        long id = caseOf(Content.yaml("demo/demo-11.yaml")).id();
        assertThrows(PersistenceException.class, () -> QuarkusTransaction.requiringNew().run(() -> {
            db.persist(new Visit(db.find(CaseFile.class, id), 1, LocalDate.of(2030, 12, 16), VisitKind.PHONE, Attendance.ATTENDED));
            db.flush();
        }));
    }

    private CaseFile caseOf(Entry demo) {
        Entry person = demo.entry("person").orElseThrow();
        return db.createQuery("from CaseFile c join fetch c.patient p where p.givenName = ?1 and p.familyName = ?2", CaseFile.class)
                .setParameter(1, person.text("given")).setParameter(2, person.text("family")).getSingleResult();
    }

    private Guest signedIn(String userName) {
        Guest guest = new Guest(address);
        guest.open("/sign-in").expect(200);
        guest.formWithButton("Sign in").set("userName", userName).set("password", DemoPassword.VALUE).send().expect(200);
        return guest;
    }

    private static void assertMarked(Guest guest) {
        Element mark = guest.page().selectFirst("header .demo");
        assertTrue(mark != null && mark.text().equals("Demo data"), guest.at() + " is not marked as demo");
        assertTrue(guest.page().select("footer").text().startsWith("Demo data"), guest.at().toString());
    }
}
