package org.steadwork.diary;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoField;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.steadwork.account.Account;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.Visit;
import org.steadwork.web.Dates;
import org.steadwork.web.Option;

/** Makes the views of a day and a week: a fixed number of queries, however full they are. */
@ApplicationScoped
class DiaryViews {

    @Inject
    Availability availability;

    @Inject
    Appointments appointments;

    @Inject
    Attendances attendances;

    @Inject
    DiaryContent content;

    @Inject
    CurrentAccount account;

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    DiaryView day(LocalDate day, boolean byRoom, Long done) {
        Openings openings = availability.between(day, day);
        Columns columns = columns(openings, List.of(day));
        List<DiaryView.Column> laid = new ArrayList<>();
        if (byRoom) {
            roomsShown(openings, day).forEach(room -> laid.add(new DiaryView.Column(room.name(), "", "/diary/week?day=" + day + "&whose=room-" + room.id(), false,
                    columns.ofRoom(room.id(), day, book(day, null, room.id())))));
            List<Block> elsewhere = columns.elsewhere(day);
            if (!elsewhere.isEmpty()) {
                laid.add(new DiaryView.Column("Elsewhere", "by telephone, or at the work place", null, false, elsewhere));
            }
        } else {
            cliniciansShown(openings, day).forEach(one -> laid.add(new DiaryView.Column(one.displayName(), hours(openings, one, day),
                    "/diary/week?day=" + day + "&whose=clinician-" + one.id(), false, columns.ofClinician(one.id(), day, book(day, one.id(), null)))));
        }
        String by = byRoom ? "&by=room" : "";
        DiaryView.Ways ways = new DiaryView.Ways(day(day.minusDays(1)) + by, day(day.plusDays(1)) + by, day(today()) + by, day(day), day(day) + "&by=room",
                "/diary/week?day=" + day + (byRoom && !openings.rooms().isEmpty() ? "&whose=room-" + openings.rooms().get(0).id() : ""));
        return new DiaryView(Dates.shownWithDay(day), closed(openings, day), day, false, byRoom, null, List.of(), laid, called(openings, null, null),
                unbooked(day, day), ways, null, done(done));
    }

    DiaryView week(LocalDate day, String whose, Long done) {
        LocalDate monday = day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        LocalDate sunday = monday.plusDays(6);
        Openings openings = availability.between(monday, sunday);
        List<Option> choices = choices(openings);
        String chosen = choices.stream().map(Option::value).filter(value -> value.equals(whose)).findFirst()
                .or(() -> choices.stream().map(Option::value).filter(value -> value.equals("clinician-" + account.id())).findFirst())
                .or(() -> choices.stream().map(Option::value).findFirst()).orElse("");
        boolean byRoom = chosen.startsWith("room-");
        Long id = chosen.isEmpty() ? null : Long.valueOf(chosen.substring(chosen.indexOf('-') + 1));
        List<LocalDate> all = IntStream.range(0, 7).mapToObj(monday::plusDays).toList();
        List<LocalDate> days = all.stream().filter(one -> one.getDayOfWeek().getValue() < 6 || id != null && busy(openings, byRoom, id, one)).toList();
        Columns columns = columns(openings, days);
        List<DiaryView.Column> laid = id == null ? List.of() : days.stream().map(one -> new DiaryView.Column(Dates.shownWithDay(one), byRoom ? closed(openings, one)
                : hours(openings, id, one), day(one) + (byRoom ? "&by=room" : ""), one.equals(today()),
                byRoom ? columns.ofRoom(id, one, book(one, null, id)) : columns.ofClinician(id, one, book(one, id, null)))).toList();
        String keep = chosen.isEmpty() ? "" : "&whose=" + chosen;
        DiaryView.Ways ways = new DiaryView.Ways(week(monday.minusDays(7)) + keep, week(monday.plusDays(7)) + keep, week(today()) + keep, null, null, day(day));
        String calendar = byRoom || id == null ? null : "/diary/calendar.ics?clinician=" + id + "&from=" + monday + "&to=" + sunday;
        return new DiaryView("Week of " + Dates.shown(monday), "", day, true, byRoom, chosen, choices, laid, called(openings, byRoom ? id : null, byRoom ? null : id),
                unbooked(monday, sunday), ways, calendar, done(done));
    }

    /** Who works here, and who no longer does but still has a visit on this day. */
    private static List<Account> cliniciansShown(Openings openings, LocalDate day) {
        return Stream.concat(openings.clinicians().stream(), openings.live(day).stream().map(Appointment::clinician)).distinct().toList();
    }

    private static List<ClinicRoom> roomsShown(Openings openings, LocalDate day) {
        return Stream.concat(openings.rooms().stream(), openings.live(day).stream().map(Appointment::room).filter(Objects::nonNull)).distinct().toList();
    }

    private Columns columns(Openings openings, List<LocalDate> days) {
        return new Columns(openings, days, content.offered(), today(), LocalTime.now(clock).get(ChronoField.MINUTE_OF_DAY), clock.getZone());
    }

    private static boolean busy(Openings openings, boolean byRoom, long id, LocalDate day) {
        return byRoom ? !openings.open(day).isEmpty() : !openings.work(id, day).isEmpty() || openings.live(day).stream().anyMatch(one -> one.clinician().id() == id);
    }

    private static List<Option> choices(Openings openings) {
        List<Option> choices = new ArrayList<>();
        openings.clinicians().forEach(one -> choices.add(new Option("clinician-" + one.id(), one.displayName())));
        openings.rooms().forEach(room -> choices.add(new Option("room-" + room.id(), room.name())));
        return choices;
    }

    private static String hours(Openings openings, Account clinician, LocalDate day) {
        return hours(openings, clinician.id(), day);
    }

    private static String hours(Openings openings, long clinician, LocalDate day) {
        List<Leave> away = openings.away(clinician, day);
        String hours = WeekColumn.shown(openings.work(clinician, day)).replace("-", " to ");
        return hours.isEmpty() ? away.isEmpty() ? "no visits" : away.get(0).words() : hours;
    }

    private static String closed(Openings openings, LocalDate day) {
        return openings.leaves().stream().filter(Leave::clinic).filter(leave -> leave.concerns(null, day)).map(leave -> leave.words() + ", " + leave.times())
                .findFirst().orElse("");
    }

    /** What was called off, in the order of time; of one room or clinician in a week. */
    private static List<Appointment> called(Openings openings, Long room, Long clinician) {
        return openings.appointments().stream().filter(one -> !one.live() && (room == null || one.room() != null && one.room().id().equals(room))
                && (clinician == null || one.clinician().id().equals(clinician))).toList();
    }

    private List<Visit> unbooked(LocalDate first, LocalDate last) {
        return db.createQuery("from Visit v join fetch v.caseFile c join fetch c.patient join fetch c.clinician where v.visitedOn between ?1 and ?2"
                        + " and v.attendance = ?3 and c.closedOn is null and not exists (select 1 from Appointment a where a.visit = v and a.live = true)"
                        + " order by v.visitedOn, v.id", Visit.class)
                .setParameter(1, first).setParameter(2, last).setParameter(3, Attendance.PLANNED).getResultList();
    }

    DiaryView.Done done(Long id) {
        Appointment one = id == null ? null : appointments.whole(id).orElse(null);
        if (one == null) {
            return null;
        }
        AppointmentChange latest = appointments.changes(id).stream().findFirst().orElse(null);
        AppointmentChange undoable = attendances.undoable(id);
        String words = one.patient().name() + ": " + (latest == null ? "" : latest.act().label().toLowerCase()) + ", "
                + (one.cancelled() ? one.attendance().label() + " by " + Objects.toString(one.cancelledBy() == null ? null : one.cancelledBy().label().toLowerCase(), "somebody")
                : DiaryWords.place(one.place())) + ".";
        return new DiaryView.Done(id, one.version(), words, undoable != null && latest != null && latest.act() != Act.UNDONE);
    }

    private LocalDate today() {
        return LocalDate.now(clock);
    }

    private static String day(LocalDate day) {
        return "/diary?day=" + day;
    }

    private static String week(LocalDate day) {
        return "/diary/week?day=" + day;
    }

    private static String book(LocalDate day, Long clinician, Long room) {
        return "/diary/book?day=" + day + (clinician == null ? "" : "&clinician=" + clinician) + (room == null ? "" : "&room=" + room);
    }
}
