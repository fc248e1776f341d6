package org.steadwork.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.journey.FilledForm;
import org.steadwork.journey.Guest;

/** Walks one case file of the demo through the pages, whatever stands in it: nothing of a case is written here. */
final class VignetteWalk {

    /** The clinic in which the case is walked: opens it at a moment for one of its accounts. */
    interface Clinic {

        Guest at(LocalDateTime moment, String userName);
    }

    private static final Pattern PATIENT = Pattern.compile("/patients/(\\d+)");
    private static final Pattern CASE = Pattern.compile("/cases/(\\d+)");
    /** The words in which Today gives each reason that the files name. */
    private static final Map<String, Pattern> ON_TODAY = Map.of("review_overdue", Pattern.compile("^Overdue.*Review was due on"),
            "note_unsigned", Pattern.compile("^Unsigned.*The note of visit"), "letter_unsigned", Pattern.compile("^Unsigned.*drafted and not signed"),
            "got_worse", Pattern.compile("^Got worse"), "flag_open", Pattern.compile("(Record who saw them|Look at the flag|Record the call)"));
    private static final List<WalkStep> STEPS = List.of(new VisitStep(), new SymptomStep(), new RedFlagStep(),
            new WorkPlaceStep(), new ActionStep(), new MapStep(), new ProgrammeStep(), new FlagCallStep(), new OutcomeStep(), new WorkPlanStep(),
            FlagCloseStep::beforeADischarge, new NoteStep(), new CourseStep(),
            new LetterStep(), new FlagCloseStep(), new CloseStep());

    private final Entry clinic = Content.yaml("demo/clinic.yaml");
    private final Entry demo;
    private final Clinic open;

    VignetteWalk(String key, Clinic open) {
        this.demo = Content.yaml("demo/" + key + ".yaml");
        this.open = open;
    }

    static Guest signIn(URI address, String userName, String password) {
        Guest guest = new Guest(address);
        guest.open("/sign-in").expect(200);
        return guest.formWithButton("Sign in").set("userName", userName).set("password", password).send().expect(200);
    }

    void walk() {
        List<Entry> visits = demo.entries("visits");
        Guest guest = signedInFor(visits.get(0));
        register(guest);
        long caseId = openCase(guest, visits.get(0));
        for (Entry entry : visits) {
            for (WalkStep step : STEPS) {
                // the step before may have gone on to a later day, on which this session is over
                step.walk(new WalkedVisit(signedInFor(entry), moment -> open.at(moment, account(entry)), caseId, demo, clinic, entry));
            }
        }
        Entry last = visits.get(visits.size() - 1);
        checkTheCounts(signedInFor(last), caseId);
        CourseStep.check(signedInFor(last), "/cases/" + caseId + "/outcomes", demo.text("key") + ": ", demo.entry("expected").orElseThrow());
        checkToday(open.at(LocalDateTime.parse(clinic.text("demo_now")), account(last)), caseId);
    }

    /** What Today must say of the case on the demo day; a closed one is not there. */
    private void checkToday(Guest guest, long caseId) {
        Entry expected = demo.entry("expected").orElseThrow();
        guest.open("/").expect(200);
        List<String> entries = guest.page().select(".worklist__entry:has(a[href=/cases/" + caseId + "])").eachText();
        for (String reason : expected.texts("worklist")) {
            assertTrue(entries.stream().anyMatch(entry -> ON_TODAY.get(reason).matcher(entry).find()), demo.text("key") + ", " + reason + ": " + entries);
        }
        if (expected.text("status").equals("closed")) {
            assertEquals(List.of(), entries, demo.text("key") + " is closed");
        }
        assertEquals(expected.text("status").equals("closed"), guest.open("/cases/" + caseId + "/visits").expect(200).words().contains("The case was closed on"),
                demo.text("key") + ": " + guest.words());
    }

    /** What the Visits page must count at the end: days off for the problem, and visits missed. */
    private void checkTheCounts(Guest guest, long caseId) {
        Entry expected = demo.entry("expected").orElseThrow();
        String words = guest.open("/cases/" + caseId + "/visits").expect(200).words();
        expected.optionalText("days_lost").ifPresent(days -> assertTrue(words.contains(days + " calendar day"), demo.text("key") + ": " + words));
        expected.optionalText("missed").ifPresent(missed -> assertEquals(!missed.equals("0"), words.contains(missed + " missed"), demo.text("key")));
    }

    private Guest signedInFor(Entry visit) {
        LocalDateTime moment = LocalDateTime.of(LocalDate.parse(visit.text("date")), LocalTime.parse(visit.text("time")));
        return open.at(moment, account(visit));
    }

    private String account(Entry visit) {
        return DemoPeople.keyed(clinic, "accounts", visit.text("clinician")).text("user_name");
    }

    private void register(Guest guest) {
        Entry person = demo.entry("person").orElseThrow();
        Entry work = demo.entry("case").orElseThrow();
        Entry employer = DemoPeople.keyed(clinic, "employers", demo.text("employer"));
        guest.open("/patients").expect(200).follow("Add a patient").expect(200);
        FilledForm form = guest.formWithButton("Register the patient").set("givenName", person.text("given"))
                .set("familyName", person.text("family")).set("birthDate", person.text("born")).set("sex", person.text("sex"))
                .set("handedness", person.text("handed")).set("jobTitle", work.text("job")).set("employer", employer.text("name"))
                .set("site", DemoPeople.keyed(employer, "sites", demo.text("site")).text("name"))
                .set("hoursAWeek", work.text("hours_per_week")).set("phone", person.text("phone")).set("email", person.text("email"))
                .set("address", person.text("street") + "\n" + person.text("place") + " " + person.text("postcode"));
        person.optionalText("doctor").ifPresent(key -> form.set("doctor", DemoPeople.keyed(clinic, "correspondents", key).text("name")));
        form.send().expect(200);
        idIn(PATIENT, guest);
    }

    private long openCase(Guest guest, Entry first) {
        Entry described = demo.entry("case").orElseThrow();
        guest.follow("Open a case").expect(200).formWithButton("Open the case").set("complaint", described.text("title"))
                .set("onsetOn", described.text("onset")).set("referredBy", described.text("referral"))
                .set("history", described.text("history") + "\nMedicines: " + described.text("medicines"))
                .set("openedOn", described.text("opened")).set("nextReviewOn", first.optionalText("next_review").orElse("")).send().expect(200);
        return idIn(CASE, guest);
    }

    private static long idIn(Pattern pattern, Guest guest) {
        Matcher path = pattern.matcher(guest.at().getPath());
        if (!path.find()) {
            throw new AssertionError("no " + pattern + " in " + guest.at() + ": " + guest.words());
        }
        return Long.parseLong(path.group(1));
    }
}
