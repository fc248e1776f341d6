package org.steadwork.meeting;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.casefile.access.CaseAccess;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Changing the agenda: order and minutes, a case added by hand, a case taken off with a reason. */
@Path("/meetings/{meeting: \\d+}/agenda")
@RolesAllowed("clinician")
class AgendaPages {

    private static final int MOST_MINUTES = 60;

    @Inject
    MeetingDesk desk;

    @Inject
    Meetings meetings;

    @Inject
    Agendas agendas;

    @Inject
    AgendaSheet sheet;

    @Inject
    CaseFiles cases;

    @Inject
    CaseAccess access;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    PostedForm posted;

    /** Order and minutes of all cases; places that are the same keep their order. */
    @POST
    @Transactional
    public Response order(@RestPath long meeting) {
        ReviewMeeting open = desk.forChange(meeting);
        Form form = posted.read();
        Optional<Response> shut = Shut.answer(desk, open, form);
        if (shut.isPresent()) {
            return shut.get();
        }
        Agenda agenda = agendas.of(open);
        if (form.version() != agenda.version()) {
            return Answers.conflict(sheet.page(agenda, form.conflictsWith(AgendaSheet.show(agenda), agenda.version())));
        }
        Map<Long, Integer> places = new HashMap<>();
        Map<Long, Integer> minutes = new HashMap<>();
        for (Agenda.Row row : agenda.rows()) {
            Integer place = form.integer("place" + row.file().id(), "Place", 1, 999);
            Integer planned = form.integer("minutes" + row.file().id(), "Minutes", 1, MOST_MINUTES);
            places.put(row.file().id(), place == null ? row.place() : place);
            minutes.put(row.file().id(), planned == null ? row.minutes() : planned);
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(sheet.page(agenda, form));
        }
        List<AgendaCase> kept = new ArrayList<>(desk.keep(open));
        kept.sort(Comparator.comparing(item -> places.get(item.caseFile().id())));
        int place = 1;
        for (AgendaCase item : kept) {
            item.stand(place++, minutes.get(item.caseFile().id()));
        }
        return done(open, null, "ordered agenda of review meeting");
    }

    /** Puts a case on by its file number; one that was taken off comes back. */
    @POST
    @Path("/add")
    @Transactional
    public Response add(@RestPath long meeting) {
        ReviewMeeting open = desk.forChange(meeting);
        Form form = posted.read();
        Optional<Response> shut = Shut.answer(desk, open, form);
        if (shut.isPresent()) {
            return shut.get();
        }
        String number = form.requiredText("number", "The file number", 40);
        List<CaseFile> found = number == null ? List.of() : cases.list("from CaseFile c join fetch c.patient where c.closedOn is null"
                + " and lower(c.patient.fileNumber) = lower(?1) order by c.id", number);
        if (!found.isEmpty() && !found.stream().allMatch(file -> access.opens(file.id()))) {
            form.error("number", "This case is closed to you. Somebody of its care team, or the lead, puts it on.");
        }
        if (number != null && found.isEmpty()) {
            form.error("number", "No open case has the file number “" + number + "”.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(sheet.page(open, form));
        }
        desk.keep(open);
        found.forEach(file -> desk.touch(open, file).add(account.displayName()));
        return done(open, found.get(0), "put case on agenda of review meeting");
    }

    @POST
    @Path("/remove")
    @Transactional
    public Response remove(@RestPath long meeting) {
        ReviewMeeting open = desk.forChange(meeting);
        Form form = posted.read();
        Optional<Response> shut = Shut.answer(desk, open, form);
        if (shut.isPresent()) {
            return shut.get();
        }
        Agenda agenda = agendas.of(open);
        String chosen = form.value("case").strip();
        Optional<CaseFile> file = agenda.rows().stream().map(Agenda.Row::file).filter(one -> chosen.equals(String.valueOf(one.id()))).findFirst();
        if (agenda.rows().isEmpty()) {
            return Shut.answer(open, form, "No case is on the agenda any more: somebody took the last one off.");
        }
        if (file.isEmpty()) {
            form.error("case", "The case to take off is missing, or is not on the agenda any more. Choose one.");
        }
        String why = form.requiredText("why", "The reason", 500);
        if (form.hasErrors()) {
            return Answers.unprocessable(sheet.page(agenda, form));
        }
        desk.touch(open, file.get()).remove(account.displayName(), why);
        return done(open, file.get(), "took case off agenda of review meeting");
    }

    private Response done(ReviewMeeting meeting, CaseFile file, String action) {
        desk.changed(meeting);
        audit.record(action, file == null ? null : file.patient().id(), file == null ? null : file.id(), null);
        return Answers.seeOther("/meetings/" + meeting.id());
    }
}
