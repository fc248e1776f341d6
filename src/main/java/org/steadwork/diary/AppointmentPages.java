package org.steadwork.diary;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.casefile.Attendance;
import org.steadwork.diary.rules.ClinicTime;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.web.PostedForm;

/** One appointment: arrived, seen, missed, moved, cancelled, and each of it undone. */
@Path("/diary/appointments/{appointment: \\d+}")
@RolesAllowed("staff")
class AppointmentPages {

    @CheckedTemplate(basePath = "diary", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance appointment(AppointmentView view, Form form);
    }

    private static final int PROPOSED = 6;
    private static final int DAYS_AHEAD = 14;

    @Inject
    Appointments appointments;

    @Inject
    Attendances attendances;

    @Inject
    BookingDesk desk;

    @Inject
    Availability availability;

    @Inject
    Proposals proposals;

    @Inject
    AuditTrail audit;

    @Inject
    DiaryContent content;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response show(@RestPath long appointment) {
        Appointment one = find(appointment);
        audit.record("viewed appointment", one.patient().id(), Bookings.caseId(one), null);
        return Answers.page(page(one, shown(one), Form.empty()));
    }

    @POST
    public Response act(@RestPath long appointment) {
        Form form = posted.read();
        int version = form.version();
        return doing(appointment, form, () -> {
            switch (form.value("do")) {
                case "arrived" -> attendances.mark(appointment, version, Act.ARRIVED);
                case "seen" -> attendances.mark(appointment, version, Act.SEEN);
                case "missed" -> attendances.mark(appointment, version, Act.MISSED);
                case "undo" -> desk.undo(appointment, version);
                default -> throw new Refused("act", "Say what is to be noted: arrived, seen or missed.", false);
            }
        });
    }

    @POST
    @Path("/cancel")
    public Response cancel(@RestPath long appointment) {
        Form form = posted.read();
        int version = form.version();
        Appointment one = find(appointment);
        if (!one.toCome()) {
            return past(one, form);
        }
        CancelledBy by = form.requiredChoice("by", "Who cancelled", CancelledBy.class);
        if (by == null) {
            return Answers.unprocessable(page(one, shown(one), form));
        }
        return doing(appointment, form, () -> attendances.cancel(appointment, version, by));
    }

    @POST
    @Path("/move")
    public Response move(@RestPath long appointment) {
        Form form = posted.read();
        Appointment one = find(appointment);
        if (!one.toCome()) {
            return past(one, form);
        }
        BookForm.When when = BookForm.when(form, one.kind(), content);
        if (form.hasErrors() || !when.complete()) {
            return Answers.unprocessable(page(one, form, form));
        }
        int version = form.version();
        return doing(appointment, form, () -> desk.move(appointment, version, when.clinicianId(), when.room(), when.day(), when.start(), when.minutes()));
    }

    private Response past(Appointment one, Form form) {
        form.error("act", "Only a visit still to come can be moved or cancelled; this one is " + DiaryWords.state(one, clock.getZone()) + ".");
        return Answers.unprocessable(page(one, shown(one), form));
    }

    private Response doing(long id, Form form, Runnable act) {
        LocalDate before = find(id).day();
        try {
            act.run();
        } catch (StaleVersionException stale) {
            Appointment now = afresh(id);
            form.conflictsWith(shown(now), stale.stored());
            return Answers.conflict(page(now, moving(form) ? form : shown(now), form));
        } catch (Refused refused) {
            form.error(refused.field(), refused.getMessage());
            Appointment now = afresh(id);
            TemplateInstance page = page(now, moving(form) ? form : shown(now), form);
            return refused.taken() ? Answers.conflict(page) : Answers.unprocessable(page);
        }
        LocalDate day = moving(form) ? afresh(id).day() : before;
        boolean off = form.has("by");
        // a time that became free is shown with who waits for it
        return Answers.seeOther(off ? "/diary/appointments/" + id + "#freed" : "/diary?day=" + day + "&done=" + id + "#a-" + id);
    }

    private static boolean moving(Form form) {
        return form.fields().contains("minutes");
    }

    private Appointment afresh(long id) {
        return appointments.afresh(id).orElseThrow(NotFoundException::new);
    }

    private Appointment find(long id) {
        return appointments.whole(id).orElseThrow(NotFoundException::new);
    }

    private Form shown(Appointment one) {
        return Form.empty().with("version", one.version()).with("clinician", one.clinician().id()).with("day", Dates.shown(one.day())).with("start", one.from())
                .with("minutes", one.minutes()).with("room", one.room() == null ? BookForm.NO_ROOM : one.room().id());
    }

    private TemplateInstance page(Appointment one, Form change, Form form) {
        LocalDate today = LocalDate.now(clock);
        LocalDate near = Typed.day(change.value("day"), one.day());
        LocalDate from = near.isBefore(today) ? today : near;
        Openings openings = availability.between(from, from.plusDays(DAYS_AHEAD));
        List<Proposal> offered = one.toCome() ? proposals.of(openings, openings.clinicians().stream().filter(who -> who.id().toString().equals(change.value("clinician")))
                .toList(), BookViews.days(from, from.plusDays(DAYS_AHEAD)), new Proposals.Search(one.patient().id(),
                new DiaryContent.Length(one.minutes(), one.room() != null), from, one.start(), PROPOSED, 2)) : List.of();
        List<Option> rooms = BookViews.rooms(openings);
        return Templates.appointment(new AppointmentView(one, change, DiaryWords.state(one, clock.getZone()), DiaryWords.mark(one), appointments.changes(one.id()),
                attendances.undoable(one.id()) != null, BookViews.clinicians(openings), rooms, offered, missed(one), one.day().equals(today),
                one.day().isBefore(today) || one.day().equals(today)
                        || !ClinicTime.at(one.day(), one.start(), clock.getZone()).isAfter(Instant.now(clock))), form);
    }

    private static String missed(Appointment one) {
        return one.attendance() != Attendance.MISSED ? null : "/diary/missed/" + (one.visit() == null ? "a" + one.id() : "v" + one.visit().id());
    }
}
