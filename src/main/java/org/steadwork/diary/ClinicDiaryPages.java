package org.steadwork.diary;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.diary.rules.Span;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Hours, leave and rooms, for the lead. */
@Path("/diary/clinic")
@RolesAllowed("lead")
class ClinicDiaryPages {

    @CheckedTemplate(basePath = "diary", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance clinicDiary(ClinicDiaryView view);

        static native TemplateInstance clinicRoom(ClinicRoom room, Form form);
    }

    /** Days are read up to the end of 2199. */
    private static final LocalDate LAST_DAY = LocalDate.of(2200, 1, 1);

    @Inject
    Availability availability;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    @GET
    public Response show() {
        return Answers.page(page(Form.empty()));
    }

    @POST
    @Path("/rooms")
    @Transactional
    public Response addRoom() {
        Form form = posted.read();
        String name = name(form, null);
        if (form.hasErrors()) {
            return Answers.unprocessable(page(form));
        }
        db.persist(new ClinicRoom(name));
        audit.record("added a room", null, null, name);
        return Answers.seeOther("/diary/clinic");
    }

    @GET
    @Path("/rooms/{clinicRoom: \\d+}")
    public Response room(@RestPath long clinicRoom) {
        ClinicRoom room = find(clinicRoom);
        return Answers.page(Templates.clinicRoom(room, shown(room)));
    }

    @POST
    @Path("/rooms/{clinicRoom: \\d+}")
    @Transactional
    public Response saveRoom(@RestPath long clinicRoom) {
        ClinicRoom room = find(clinicRoom);
        Form form = posted.read();
        String name = name(form, room);
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.clinicRoom(room, form));
        }
        try {
            room.requireVersion(form.version());
        } catch (StaleVersionException stale) {
            return Answers.conflict(Templates.clinicRoom(room, form.conflictsWith(shown(room), stale.stored())));
        }
        room.describe(name, form.ticked("inUse"));
        audit.record("changed a room", null, null, name);
        return Answers.seeOther("/diary/clinic");
    }

    private String name(Form form, ClinicRoom room) {
        String name = form.requiredText("name", "Name of the room", ClinicRoom.LONGEST_NAME);
        if (name != null && availability.allRooms().stream().anyMatch(one -> one.name().equalsIgnoreCase(name) && (room == null || !one.id().equals(room.id())))) {
            form.error("name", "There is a room of this name already.");
        }
        return name;
    }

    private ClinicRoom find(long id) {
        ClinicRoom room = db.find(ClinicRoom.class, id);
        if (room == null) {
            throw new NotFoundException();
        }
        return room;
    }

    private static Form shown(ClinicRoom room) {
        return Form.empty().with("version", room.version()).with("name", room.name()).with("inUse", room.inUse() ? "yes" : null);
    }

    private TemplateInstance page(Form room) {
        LocalDate today = LocalDate.now(clock);
        Openings openings = availability.between(today, LAST_DAY);
        List<ClinicDiaryView.Hours> hours = openings.clinicians().stream().map(one -> {
            WorkingWeek week = openings.weeks().get(one.id());
            Map<DayOfWeek, List<Span>> spans = week == null ? openings.usualWeek() : week.spans();
            return new ClinicDiaryView.Hours(one.id(), one.displayName(), week != null, Arrays.stream(DayOfWeek.values()).filter(day -> spans.containsKey(day))
                    .map(day -> new ClinicDiaryView.Day(DiaryWords.day(day), WeekColumn.shown(spans.get(day)).replace("-", "–"))).toList());
        }).toList();
        List<Appointment> inLeave = openings.appointments().stream().filter(Appointment::toCome).filter(one -> openings.away(one.clinician().id(), one.day()).stream()
                .anyMatch(leave -> leave.span().overlaps(one.span()))).toList();
        return Templates.clinicDiary(new ClinicDiaryView(hours, openings.leaves(), availability.allRooms(), room, inLeave));
    }
}
