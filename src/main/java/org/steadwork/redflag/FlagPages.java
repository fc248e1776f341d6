package org.steadwork.redflag;

import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.redflag.rules.Urgency;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.web.PostedForm;

/** One flag: changing its level, closing it. */
@Path("/cases/{id: \\d+}/red-flags/flags/{flagId: \\d+}")
@RolesAllowed("clinician")
class FlagPages {

    private static final int LONGEST_REASON = 1000;

    @Inject
    CaseHeads heads;

    @Inject
    Flags flags;

    @Inject
    FlagActions calls;

    @Inject
    FlagRows rows;

    @Inject
    CurrentAccount account;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response show(@RestPath long id, @RestPath long flagId) {
        CaseHead head = heads.open(id, CaseTab.RED_FLAGS);
        Flag flag = find(id, flagId);
        return Answers.page(page(head, flag, stored(flag)));
    }

    @POST
    @Path("/level")
    @Transactional
    public Response changeLevel(@RestPath long id, @RestPath long flagId) {
        CaseFile file = heads.find(id);
        Flag flag = find(id, flagId);
        Form form = posted.read();
        Urgency level = form.requiredChoice("level", "Level", Urgency.class);
        String reason = form.text("levelReason", LONGEST_REASON);
        if (level != null && level == flag.urgency()) {
            form.error("level", "That is the level the flag has. Choose another one.");
        }
        boolean lowering = level != null && level.compareTo(flag.urgency()) < 0;
        if (lowering && reason == null) {
            form.error("levelReason", "Lowering the level needs a reason in writing.");
        }
        if (lowering && flag.waitsForCall(calls.latestRecorded(id))) {
            form.error("level", "Record the call first: this level is lowered only after somebody was spoken to.");
        }
        return act(file, flag, form, () -> {
            if (lowering) {
                flag.lowerTo(level, reason, account.get());
            } else {
                flag.raiseTo(level, reason, account.get(), clock.instant());
            }
            audit.record(lowering ? "lowered red-flag level" : "raised red-flag level", file.patient().id(), id, "flag " + flagId + " to " + level.label());
        });
    }

    @POST
    @Path("/close")
    @Transactional
    public Response close(@RestPath long id, @RestPath long flagId) {
        CaseFile file = heads.find(id);
        Flag flag = find(id, flagId);
        Form form = posted.read();
        String seenBy = form.requiredText("seenBy", "Who saw the patient", 300);
        LocalDate seenOn = form.requiredDate("seenOn", "The day");
        String reason = form.requiredText("closeReason", "The reason", LONGEST_REASON);
        String result = form.text("result", 2000);
        if (seenOn != null && seenOn.isAfter(LocalDate.now(clock))) {
            form.error("seenOn", "The day is still to come. A flag is closed after the patient was seen.");
        }
        if (seenOn != null && seenOn.isBefore(flag.screen().screenedOn())) {
            form.error("seenOn", "The flag was raised later than that day.");
        }
        Instant latestCall = calls.latestRecorded(id);
        List<Flag> together = together(id, flag, form);
        if (together.stream().anyMatch(one -> one.waitsForCall(latestCall))) {
            form.error("closeReason", "Record the call first: a flag of this level is closed only with a call on record.");
        }
        return act(file, flag, form, () -> {
            for (Flag one : together) {
                one.close(account.get(), reason, seenBy, seenOn, result, clock.instant());
                audit.record("closed red flag", file.patient().id(), id, "flag " + one.id());
            }
        });
    }

    /** The flag and those ticked to be closed with it; one that changed since it was shown is refused. */
    private List<Flag> together(long caseId, Flag flag, Form form) {
        List<Flag> together = new ArrayList<>(List.of(flag));
        for (Flag other : othersOpen(caseId, flag)) {
            String shown = form.values("also").stream().filter(ticket -> ticket.startsWith(other.id() + ":")).findFirst().orElse(null);
            if (shown != null) {
                if (!shown.equals(other.id() + ":" + other.version())) {
                    form.error("also", "“" + other.name() + "” was changed meanwhile. Look at it and tick it again.");
                }
                together.add(other);
            }
        }
        return together;
    }

    private List<Flag> othersOpen(long caseId, Flag flag) {
        return flags.of(caseId).stream().filter(other -> other.open() && !other.id().equals(flag.id())).toList();
    }

    private Response act(CaseFile file, Flag flag, Form form, Runnable change) {
        CaseHead head = heads.head(file, CaseTab.RED_FLAGS);
        if (form.hasErrors()) {
            return Answers.unprocessable(page(head, flag, form));
        }
        try {
            flag.requireVersion(flag.open() ? form.version() : -1);
        } catch (StaleVersionException stale) {
            return Answers.conflict(page(head, flag, form.conflictsWith(stored(flag), stale.stored())));
        }
        change.run();
        return Answers.seeOther(CaseTab.RED_FLAGS.href(file.id()));
    }

    private Flag find(long caseId, long flagId) {
        return flags.of(caseId, flagId).orElseThrow(NotFoundException::new);
    }

    private Form stored(Flag flag) {
        return Form.empty().with("version", flag.version()).with("level", name(flag.urgency()));
    }

    private TemplateInstance page(CaseHead head, Flag flag, Form form) {
        List<Option> levels = Arrays.stream(Urgency.values()).sorted(Comparator.reverseOrder())
                .map(level -> new Option(name(level), level.label())).toList();
        Instant latestCall = calls.latestRecorded(head.id());
        return RedFlagPages.Templates.flag(head, rows.row(flag, latestCall, null), flag.open(), form, levels, calls.of(head.id()),
                rows.of(othersOpen(head.id(), flag), latestCall, null));
    }

    private static String name(Urgency level) {
        return level.name().toLowerCase(Locale.ROOT);
    }
}
