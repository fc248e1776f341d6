package org.steadwork.demo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.steadwork.account.Account;
import org.steadwork.account.Accounts;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.VisitKind;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.diary.DiaryImport;
import org.steadwork.people.Directory;
import org.steadwork.people.Employer;
import org.steadwork.people.Handedness;
import org.steadwork.people.Patient;
import org.steadwork.people.Patients;
import org.steadwork.people.Sex;

/** The diary of the demo clinic: rooms, hours, leave, times of the visits, newcomers, the waiting list. */
@ApplicationScoped
class DemoDiary {

    private static final String FRONT_DESK = "P. Grennan-Osei";

    @Inject
    DiaryImport diary;

    @Inject
    Accounts accounts;

    @Inject
    Patients patients;

    @Inject
    Directory directory;

    @Inject
    EntityManager db;

    void load(Entry written, Entry clinic) {
        written.texts("rooms").forEach(diary::room);
        Map<String, Map<DayOfWeek, String>> weeks = new HashMap<>();
        written.entries("hours").forEach(hours -> hours.texts("days").forEach(day -> weeks.computeIfAbsent(hours.text("clinician"), key -> new HashMap<>())
                .put(DayOfWeek.valueOf(day.toUpperCase(Locale.ROOT)), hours.text("hours"))));
        weeks.forEach((clinician, week) -> diary.hours(account(written, clinic, clinician), week));
        for (Entry leave : written.entries("leave")) {
            diary.leave(leave.has("clinician") ? account(leave, clinic, leave.text("clinician")) : null, day(leave, "first"), day(leave, "last"),
                    leave.optionalText("from").orElse(null), leave.optionalText("to").orElse(null), leave.text("words"));
        }
        written.entries("booked").forEach(booked -> book(booked, clinic));
        Map<String, Patient> newcomers = new HashMap<>();
        written.entries("newcomers").forEach(one -> newcomers.put(one.text("family"), newcomer(one, clinic)));
        for (Entry contact : written.entries("contacts")) {
            diary.contact(newcomers.get(contact.text("family")), at(LocalDateTime.parse(contact.text("at"))), contact.text("route"), contact.text("outcome"), contact.text("by"));
        }
        for (Entry waits : written.entries("waiting")) {
            CaseFile file = waits.has("case") ? caseOf(waits) : null;
            diary.waiting(file == null ? newcomers.get(waits.text("family")) : file.patient(), file, waits.constant("kind", VisitKind.class),
                    waits.has("clinician") ? account(waits, clinic, waits.text("clinician")) : null, day(waits, "earliest"), day(waits, "latest"), waits.texts("times"),
                    waits.text("priority"), day(waits, "since"), FRONT_DESK);
        }
    }

    private void book(Entry booked, Entry clinic) {
        CaseFile file = caseOf(booked);
        LocalDate day = day(booked, "date");
        Visit visit = db.createQuery("from Visit v where v.caseFile = ?1 and v.visitedOn = ?2 and v.kind = ?3 and not exists"
                        + " (select 1 from Appointment a where a.visit = v) order by v.number", Visit.class).setParameter(1, file).setParameter(2, day)
                .setParameter(3, booked.constant("kind", VisitKind.class)).setMaxResults(1).getResultStream().findFirst()
                .orElseThrow(() -> booked.problem("no such visit on " + day));
        Instant arrived = booked.optionalText("arrived").map(time -> at(day.atTime(LocalTime.parse(time)))).orElse(null);
        diary.book(file.patient(), visit, visit.kind(), time(booked, clinic), visit.attendance(), arrived, FRONT_DESK, at(day.minusDays(7).atTime(9, 0)));
    }

    private Patient newcomer(Entry one, Entry clinic) {
        Patient patient = new Patient(patients.nextFileNumber(), one.text("given"), one.text("family"), day(one, "born"), day(one, "registered"));
        patient.describe(one.constant("sex", Sex.class), one.constant("handed", Handedness.class));
        Entry employed = DemoPeople.keyed(clinic, "employers", one.text("employer"));
        Employer employer = directory.employer(employed.text("name"));
        patient.worksAs(one.text("job"), employer, directory.site(employer, DemoPeople.keyed(employed, "sites", one.text("site")).text("name")), null,
                new BigDecimal(one.text("hours_per_week")));
        patient.contactAt(one.text("phone"), one.text("email"), null);
        patients.persist(patient);
        if (one.has("date")) {
            Attendance attendance = one.has("attendance") ? one.constant("attendance", Attendance.class) : Attendance.PLANNED;
            diary.book(patient, null, VisitKind.INITIAL, time(one, clinic), attendance, null, FRONT_DESK, at(day(one, "registered").atTime(9, 30)));
        }
        return patient;
    }

    private DiaryImport.Time time(Entry entry, Entry clinic) {
        return new DiaryImport.Time(day(entry, "date"), entry.text("time"), account(entry, clinic, entry.text("clinician")), entry.optionalText("room").orElse(null));
    }

    private CaseFile caseOf(Entry entry) {
        Entry person = Content.yaml("demo/" + entry.text("case") + ".yaml").entry("person").orElseThrow(() -> entry.problem("no person"));
        return db.createQuery("from CaseFile c join fetch c.patient p where p.givenName = ?1 and p.familyName = ?2", CaseFile.class)
                .setParameter(1, person.text("given")).setParameter(2, person.text("family")).getSingleResult();
    }

    private Account account(Entry entry, Entry clinic, String key) {
        return accounts.named(DemoPeople.keyed(clinic, "accounts", key).text("user_name")).orElseThrow(() -> entry.problem("no account " + key));
    }

    private static LocalDate day(Entry entry, String key) {
        return LocalDate.parse(entry.text(key));
    }

    private static Instant at(LocalDateTime local) {
        return local.atZone(ZoneId.systemDefault()).toInstant();
    }
}
