package org.steadwork.demo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.steadwork.account.Account;
import org.steadwork.account.Accounts;
import org.steadwork.account.DemoPassword;
import org.steadwork.account.Role;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.casefile.CloseReason;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.VisitKind;
import org.steadwork.casefile.Visits;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.meeting.DemoMeetings;
import org.steadwork.people.Patient;
import org.steadwork.web.DemoClock;

/** Loads the clinic and its cases, each in one transaction with its mark, so that a load broken off goes on at the next start. */
@ApplicationScoped
class DemoLoader {

    private static final String CLINIC = "clinic";
    private static final String MEETINGS = "meetings";
    private static final String DIARY = "diary";

    @Inject
    EntityManager db;

    @Inject
    Accounts accounts;

    @Inject
    DemoPeople people;

    @Inject
    DemoDiary diary;

    @Inject
    CaseFiles cases;

    @Inject
    Visits visits;

    @Inject
    DemoMeetings meetings;

    @Inject
    @Any
    Instance<DemoVisitPart> parts;

    @Inject
    Clock clock;

    @ConfigProperty(name = "steadwork.password-cost")
    int passwordCost;

    @Transactional
    boolean marked() {
        return db.createQuery("select count(p) from DemoPart p", Long.class).getSingleResult() > 0;
    }

    /** True when nobody works here yet and nobody was seen. */
    @Transactional
    boolean empty() {
        return accounts.none() && db.createQuery("select count(p) from Patient p", Long.class).getSingleResult() == 0;
    }

    /** True when a part is there already. */
    @Transactional
    boolean loaded(String part) {
        return db.find(DemoPart.class, part) != null;
    }

    /** Loads accounts, employers and correspondents; returns false when they are there already. */
    @Transactional
    boolean clinic(Entry clinic) {
        if (!begin(CLINIC)) {
            return false;
        }
        for (Entry entry : clinic.entries("accounts")) {
            Account account = new Account(entry.text("user_name"), entry.text("name"), entry.text("short_name"),
                    entry.constant("role", Role.class), Instant.now(clock));
            account.describeProfession(entry.text("profession"), entry.optionalText("registration").orElse(null));
            account.usePassword(DemoPassword.VALUE, passwordCost);
            accounts.persist(account);
        }
        people.addressBook(clinic);
        return true;
    }

    /** Loads one case with its visits, each on its own day; returns false when it is there already. */
    @Transactional
    boolean caseOf(Entry demo, Entry clinic) {
        if (!begin(demo.text("key"))) {
            return false;
        }
        try {
            load(demo, clinic);
        } finally {
            if (clock instanceof DemoClock demoClock) {
                demoClock.goHome();
            }
        }
        return true;
    }

    /** Loads the review meetings, once all cases are there; returns false when they are there already. */
    @Transactional
    boolean meetings(Entry file, Entry clinic) {
        if (!begin(MEETINGS)) {
            return false;
        }
        try {
            meetings.load(file, new DemoMeetings.Known(key -> accounts.named(DemoPeople.keyed(clinic, "accounts", key).text("user_name")).orElseThrow(),
                    this::caseOf, key -> people.correspondent(clinic, key), this::clock));
        } finally {
            if (clock instanceof DemoClock demoClock) {
                demoClock.goHome();
            }
        }
        return true;
    }

    private CaseFile caseOf(String key) {
        Entry person = Content.yaml("demo/" + key + ".yaml").entry("person").orElseThrow();
        return db.createQuery("from CaseFile c join fetch c.patient p join fetch c.clinician where p.givenName = ?1"
                + " and p.familyName = ?2 order by c.id", CaseFile.class).setParameter(1, person.text("given")).setParameter(2, person.text("family"))
                .setMaxResults(1).getSingleResult();
    }

    /** Loads the diary; returns false when it is there already. */
    @Transactional
    boolean diary(Entry written, Entry clinic) {
        if (!begin(DIARY)) {
            return false;
        }
        diary.load(written, clinic);
        return true;
    }

    private void load(Entry demo, Entry clinic) {
        Patient patient = people.register(demo, clinic);
        List<Entry> contacts = demo.entries("visits");
        Entry described = demo.entry("case").orElseThrow(() -> demo.problem("'case' is missing"));
        CaseFile file = new CaseFile(patient, account(clinic, contacts.get(0)), described.text("title"),
                LocalDate.parse(described.text("onset")), LocalDate.parse(described.text("opened")));
        file.describe(described.text("title"), LocalDate.parse(described.text("onset")), described.text("referral"), history(described));
        cases.persist(file);
        for (Entry contact : contacts) {
            DemoVisit visit = new DemoVisit(demo, clinic, contact, file, add(file, contact), account(clinic, contact));
            contact.optionalText("next_review").ifPresent(day -> file.reviewOn(LocalDate.parse(day)));
            clock(visit.moment());
            parts.stream().sorted(Comparator.comparingInt(DemoVisitPart::order)).forEach(part -> part.load(visit));
            contact.entry("close").ifPresent(end -> file.close(LocalDate.parse(end.text("on")), end.constant("reason", CloseReason.class),
                    end.optionalText("note").orElse(null)));
        }
        for (Entry booked : demo.entries("booked")) {
            visits.add(file, LocalDate.parse(booked.text("date")), booked.constant("kind", VisitKind.class), Attendance.PLANNED);
        }
    }

    /** What the pages' own classes note with the time of day gets the time of the visit. */
    private void clock(Instant moment) {
        if (clock instanceof DemoClock demoClock) {
            demoClock.runFrom(moment);
        }
    }

    private boolean begin(String part) {
        if (db.find(DemoPart.class, part) != null) {
            return false;
        }
        db.persist(new DemoPart(part, Instant.now(clock)));
        return true;
    }

    private Visit add(CaseFile file, Entry contact) {
        return visits.add(file, LocalDate.parse(contact.text("date")), contact.constant("kind", VisitKind.class),
                contact.constant("attendance", Attendance.class));
    }

    private Account account(Entry clinic, Entry contact) {
        String key = contact.text("clinician");
        Entry entry = DemoPeople.keyed(clinic, "accounts", key);
        return accounts.named(entry.text("user_name")).orElseThrow(() -> contact.problem("no account " + key));
    }

    private static String history(Entry described) {
        return described.text("history") + "\nMedicines: " + described.text("medicines");
    }
}
