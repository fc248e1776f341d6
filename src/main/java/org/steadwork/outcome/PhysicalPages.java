package org.steadwork.outcome;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.body.Side;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.outcome.scoring.Motion;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Grip strength, three trials of each hand, and the active motions of the regions that hurt. */
@Path("/cases/{id: \\d+}/grip-and-motion")
@RolesAllowed("clinician")
class PhysicalPages {

    @CheckedTemplate(basePath = "outcome", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance gripAndMotion(CaseHead head, PhysicalView view);
    }

    private static final BigDecimal MOST_KG = new BigDecimal("100");

    @Inject
    CaseHeads heads;

    @Inject
    PhysicalViews views;

    @Inject
    PhysicalMeasurements measurements;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response show(@RestPath long id, @RestQuery String on) {
        CaseHead head = heads.open(id, CaseTab.OUTCOMES);
        return Answers.page(Templates.gripAndMotion(head, views.of(head.file(), ScoreDay.of(on, head.file(), LocalDate.now(clock)), null)));
    }

    @POST
    @Transactional
    public Response save(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        LocalDate today = LocalDate.now(clock);
        LocalDate on = ScoreDay.read(form, file, today);
        List<GripMeasurement> grips = measurements.grips(id);
        List<MotionMeasurement> motions = measurements.motions(id);
        List<Runnable> changes = new ArrayList<>();
        for (Side hand : List.of(Side.RIGHT, Side.LEFT)) {
            readHand(form, file, on, hand, grips, changes);
        }
        for (Motion motion : views.asked(file, motions)) {
            for (Side side : PhysicalViews.sides(motion)) {
                readMotion(form, file, on, motion, side, motions, changes);
            }
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.gripAndMotion(heads.head(file, CaseTab.OUTCOMES), views.of(file, on == null ? today : on, form)));
        }
        int stored = PhysicalViews.version(on, grips, motions);
        if (form.version() != stored) {
            form.conflictsWith(PhysicalViews.show(on, grips, motions), stored);
            return Answers.conflict(Templates.gripAndMotion(heads.head(file, CaseTab.OUTCOMES), views.of(file, on, form)));
        }
        changes.forEach(Runnable::run);
        audit.record("entered grip and motion", file.patient().id(), id, null);
        return Answers.seeOther("/cases/" + id + "/grip-and-motion?on=" + on);
    }

    private void readHand(Form form, CaseFile file, LocalDate on, Side hand, List<GripMeasurement> grips, List<Runnable> changes) {
        List<BigDecimal> kg = new ArrayList<>();
        for (int i = 0; i < GripMeasurement.TRIALS; i++) {
            kg.add(form.decimal(PhysicalView.trial(hand, i), "Trial " + (i + 1) + ", " + hand.label(), BigDecimal.ZERO, MOST_KG, 1, "kg"));
        }
        String why = form.text(PhysicalView.why(hand), 120);
        if (why != null && kg.stream().allMatch(value -> value != null)) {
            form.error(PhysicalView.why(hand), "All three trials of the " + hand.label() + " hand have a reading, so none is missing for a reason.");
        }
        Optional<GripMeasurement> stored = grips.stream().filter(grip -> grip.hand() == hand && grip.testedOn().equals(on)).findFirst();
        if (stored.isPresent() || why != null || kg.stream().anyMatch(value -> value != null)) {
            changes.add(() -> {
                GripMeasurement grip = stored.orElseGet(() -> new GripMeasurement(file, on, hand));
                grip.record(kg, why, account.displayName(), Instant.now(clock));
                measurements.keep(grip);
            });
        }
    }

    private void readMotion(Form form, CaseFile file, LocalDate on, Motion motion, Side side, List<MotionMeasurement> motions, List<Runnable> changes) {
        String key = PhysicalView.key(motion.key(), side);
        BigDecimal degrees = form.decimal("d_" + key, motion.name(), BigDecimal.ZERO, BigDecimal.valueOf(motion.mostDegrees()), 1, "\u00b0");
        String why = form.text("w_" + key, 120);
        Motion.Device device = form.choice("t_" + key, "Device", Motion.Device.class);
        boolean pain = form.ticked("p_" + key);
        if (degrees != null && why != null) {
            form.error("w_" + key, motion.name() + " has a value, so it was measured.");
        }
        Optional<MotionMeasurement> stored = motions.stream().filter(m -> m.motion().equals(motion.key()) && m.side() == side && m.testedOn().equals(on))
                .findFirst();
        if (stored.isPresent() || degrees != null || why != null) {
            changes.add(() -> {
                MotionMeasurement measured = stored.orElseGet(() -> new MotionMeasurement(file, on, motion.key(), side));
                measured.record(degrees, device == null ? motion.device() : device, pain, why, account.displayName(), Instant.now(clock));
                measurements.keep(measured);
            });
        }
    }
}
