package org.steadwork.diary;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.steadwork.account.Account;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.casefile.VisitKind;
import org.steadwork.diary.rules.ClinicTime;
import org.steadwork.diary.rules.Span;
import org.steadwork.diary.rules.Spans;
import org.steadwork.people.Patient;
import org.steadwork.people.Patients;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/** Gathers what the booking page offers: hours, rooms, free times near the wanted one, and who waits. */
@ApplicationScoped
class BookViews {

    private static final int DAYS_BEFORE = 3;
    private static final int DAYS_AFTER = 14;
    private static final int PROPOSED = 8;
    private static final int PROPOSED_A_DAY = 3;
    private static final int HITS = 12;
    private static final int MID_MORNING = 600;
    /** What the search of a patient carries along. */
    private static final List<String> KEPT = List.of("clinician", "room", "day", "start", "kind", "minutes");

    @Inject
    Availability availability;

    @Inject
    Proposals proposals;

    @Inject
    WaitingLists waiting;

    @Inject
    Appointments appointments;

    @Inject
    Patients patients;

    @Inject
    CaseFiles cases;

    @Inject
    DiaryContent content;

    @Inject
    Clock clock;

    /** The page with its form as it stands; without a patient, the search and who waits. */
    BookView of(Form form, Patient patient, String q) {
        LocalDate today = LocalDate.now(clock);
        LocalDate wanted = Typed.day(form.value("day"), today);
        LocalDate from = wanted.minusDays(DAYS_BEFORE).isBefore(today) ? today : wanted.minusDays(DAYS_BEFORE);
        LocalDate middle = wanted.isBefore(today) ? today : wanted;
        Openings openings = availability.between(from, middle.plusDays(DAYS_AFTER));
        String keep = KEPT.stream().filter(form::has).map(field -> "&" + field + "=" + URLEncoder.encode(form.value(field), StandardCharsets.UTF_8))
                .collect(Collectors.joining());
        OptionalInt start = ClinicTime.read(form.value("start"));
        Account clinician = clinician(openings, form, wanted, start);
        if (patient == null) {
            return new BookView(form, null, keep, gap(wanted, start, clinician), q == null ? "" : q, patients.search(q, HITS), List.of(), List.of(), List.of(), "",
                    List.of(), List.of(), fits(openings, clinician, wanted, start));
        }
        List<CaseFile> open = openCases(patient);
        VisitKind kind = kind(form);
        Integer minutes = minutes(form);
        DiaryContent.Length length = kind == null ? null : new DiaryContent.Length(minutes == null ? content.length(kind).minutes() : minutes,
                content.length(kind).room() && !form.is("room", BookForm.NO_ROOM));
        List<Account> asked = clinician == null ? openings.clinicians() : List.of(clinician);
        List<Proposal> offered = length == null ? List.of() : proposals.of(openings, asked, days(from, middle.plusDays(DAYS_AFTER)),
                new Proposals.Search(patient.id(), length, middle, start.orElse(MID_MORNING), PROPOSED, PROPOSED_A_DAY));
        List<Appointment> coming = appointments.ofPatient(patient.id()).stream().filter(one -> one.toCome() && !one.day().isBefore(today)).toList();
        return new BookView(form, patient, keep, "", "", List.of(), open, clinicians(openings), rooms(openings), content.lengthsInWords(), offered, coming, List.of());
    }

    List<CaseFile> openCases(Patient patient) {
        return cases.ofPatient(patient.id()).stream().filter(CaseFile::open).toList();
    }

    /** Fills what an address leaves open: the case's clinician, the usual kind, the day of the next review. */
    Form opened(Form form, Patient patient) {
        CaseFile file = patient == null ? null : openCases(patient).stream()
                .filter(one -> !form.has("caseId") || one.id().toString().equals(form.value("caseId"))).findFirst().orElse(null);
        if (!form.has("kind")) {
            form.with("kind", BookForm.value(file == null ? VisitKind.INITIAL : VisitKind.FOLLOW_UP));
        }
        if (file != null && !form.has("caseId")) {
            form.with("caseId", file.id());
        }
        if (file != null && !form.has("clinician")) {
            form.with("clinician", file.clinician().id());
        }
        if (!form.has("day") && file != null && file.nextReviewOn() != null && !file.nextReviewOn().isBefore(LocalDate.now(clock))) {
            form.with("day", Dates.shown(file.nextReviewOn()));
        }
        if (!form.has("room")) {
            form.with("room", BookForm.ANY_ROOM);
        }
        return form;
    }

    private Account clinician(Openings openings, Form form, LocalDate day, OptionalInt start) {
        Long id = Typed.number(form.value("clinician").strip());
        Account chosen = openings.clinicians().stream().filter(one -> one.id().equals(id)).findFirst().orElse(null);
        if (chosen != null || start.isEmpty() || start.getAsInt() + DiaryContent.GRID > Span.DAY || id != null) {
            return chosen;
        }
        // a time pressed in the column of a room: the first who is free then
        return openings.clinicians().stream().filter(one -> Spans.hold(openings.free(one.id(), day),
                new Span(start.getAsInt(), start.getAsInt() + DiaryContent.GRID))).findFirst().orElse(null);
    }

    private List<WaitingLists.Fit> fits(Openings openings, Account clinician, LocalDate day, OptionalInt start) {
        return clinician == null || start.isEmpty() ? List.of() : waiting.fitting(openings, clinician.id(), day, start.getAsInt(), waiting.open());
    }

    private static String gap(LocalDate day, OptionalInt start, Account clinician) {
        return start.isEmpty() ? "" : Dates.shownWithDay(day) + ", " + ClinicTime.shown(start.getAsInt()) + (clinician == null ? "" : ", " + clinician.displayName());
    }

    private static VisitKind kind(Form form) {
        return Stream.of(VisitKind.values()).filter(one -> BookForm.value(one).equals(form.value("kind"))).findFirst().orElse(null);
    }

    private static Integer minutes(Form form) {
        String typed = form.value("minutes").strip();
        Integer minutes = typed.matches("\\d{1,3}") ? Integer.valueOf(typed) : null;
        return minutes == null || minutes < DiaryContent.GRID || minutes > DiaryContent.longest() || minutes % DiaryContent.GRID != 0 ? null : minutes;
    }

    static List<Option> clinicians(Openings openings) {
        return openings.clinicians().stream().map(one -> new Option(one.id().toString(), one.displayName())).toList();
    }

    static List<Option> rooms(Openings openings) {
        List<Option> rooms = new ArrayList<>(List.of(new Option(BookForm.ANY_ROOM, "Any free room, where one is needed")));
        openings.rooms().forEach(room -> rooms.add(new Option(room.id().toString(), room.name())));
        rooms.add(new Option(BookForm.NO_ROOM, "No room: telephone or elsewhere"));
        return rooms;
    }

    static List<LocalDate> days(LocalDate from, LocalDate to) {
        return Stream.iterate(from, day -> !day.isAfter(to), day -> day.plusDays(1)).toList();
    }
}
