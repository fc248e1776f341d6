package org.steadwork.ownpage;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.PermitAll;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.steadwork.account.AuditTrail;
import org.steadwork.casefile.CaseFile;
import org.steadwork.exercise.OwnProgramme;
import org.steadwork.exercise.OwnProgrammes;
import org.steadwork.exercise.Prescription;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Today on the patient's own page: the programme, a tick for each session, pain before and after. */
@Path("/own/today")
@PermitAll
class OwnTodayPages {

    @CheckedTemplate(basePath = "ownpage", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {

        private Templates() {
        }

        static native TemplateInstance ownToday(OwnToday own);
    }

    @Inject
    OwnGuest guest;

    @Inject
    OwnLinks links;

    @Inject
    OwnDays days;

    @Inject
    OwnProgrammes programmes;

    @Inject
    SessionTicks ticks;

    @Inject
    LateTicks late;

    @Inject
    PainRise pain;

    @Inject
    EntityManager db;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    @Transactional
    public Response today() {
        Optional<OwnLink> link = guest.link();
        if (link.isEmpty()) {
            return Answers.seeOther("/own");
        }
        CaseFile file = link.get().caseFile();
        audit.record("viewed the own page", file.patient().id(), file.id(), "the patient, through the private link");
        return Answers.page(Templates.ownToday(view(file, LocalDate.now(clock))));
    }

    /** Takes the whole day as the phone shows it. Sent twice it says the same; what was ticked by mistake is taken back. */
    @POST
    @Transactional
    public Response tick() {
        Optional<OwnLink> link = guest.link();
        if (link.isEmpty()) {
            return Answers.seeOther("/own");
        }
        CaseFile file = link.get().caseFile();
        links.hold(file);
        Form form = posted.read();
        LocalDate day = days.told(file, form);
        OwnToday stored = view(file, day);
        stored.programme().items().forEach(item -> item.slots().forEach(slot -> {
            before(form, item, slot);
            after(form, item, slot);
        }));
        late.check(stored.programme(), form);
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.ownToday(stored.with(form)));
        }
        Map<String, SessionTick> known = ticks.on(file.id(), day).stream().collect(Collectors.toMap(OwnToday::key, Function.identity()));
        stored.programme().items().forEach(item -> take(item, day, form, known));
        late.take(file, stored.programme(), day, form, known);
        audit.record("ticked exercises", file.patient().id(), file.id(), "the patient, through the private link");
        return Answers.seeOther("/own/today");
    }

    /** Pain told of a session says that it was done; what was stored as done and is no longer ticked is taken back. */
    private void take(OwnProgramme.Item item, LocalDate day, Form form, Map<String, SessionTick> known) {
        List<String> done = form.values("done");
        List<String> was = form.values("was");
        for (OwnProgramme.Slot slot : item.slots()) {
            String key = item.key(slot);
            SessionTick tick = known.get(key);
            Integer before = before(form, item, slot);
            Integer after = after(form, item, slot);
            if (done.contains(key) || (before != null || after != null) && !was.contains(key)) {
                if (tick == null) {
                    tick = new SessionTick(db.getReference(Prescription.class, item.id()), day, slot.number(), Instant.now(clock));
                    ticks.persist(tick);
                }
                tick.done(before, after, pain.beyondError(before, after), Instant.now(clock));
            } else if (tick != null && was.contains(key)) {
                tick.takeBack();
            }
        }
    }

    private static Integer before(Form form, OwnProgramme.Item item, OwnProgramme.Slot slot) {
        return form.integer(item.before(slot), "Pain before", 0, 10);
    }

    private static Integer after(Form form, OwnProgramme.Item item, OwnProgramme.Slot slot) {
        return form.integer(item.after(slot), "Pain after", 0, 10);
    }

    private OwnToday view(CaseFile file, LocalDate day) {
        LocalDate today = LocalDate.now(clock);
        boolean lateAlarm = ticks.alarms(file.id()).stream().anyMatch(tick -> LocalDate.ofInstant(tick.receivedAt(), clock.getZone()).equals(today));
        return OwnToday.of(file, day, programmes.of(file), ticks.on(file.id(), day), lateAlarm, LocalTime.now(clock));
    }
}
