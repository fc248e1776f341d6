package org.steadwork.demo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.util.Locale;
import org.steadwork.body.Side;
import org.steadwork.content.Entry;
import org.steadwork.outcome.GripMeasurement;
import org.steadwork.outcome.Instruments;
import org.steadwork.outcome.MotionMeasurement;
import org.steadwork.outcome.scoring.Motion;

/** Grip strength and active motion as measured at the visits, each motion with its usual device. */
@ApplicationScoped
class DemoMeasurements implements DemoVisitPart {

    @Inject
    Instruments instruments;

    @Inject
    EntityManager db;

    @Override
    public int order() {
        return 45;
    }

    @Override
    public void load(DemoVisit visit) {
        for (Entry hand : visit.entry().entries("grip")) {
            GripMeasurement grip = new GripMeasurement(visit.file(), visit.day(), side(hand, "hand"));
            grip.record(hand.texts("kg").stream().map(BigDecimal::new).toList(), null, visit.clinician().displayName(), visit.moment());
            db.persist(grip);
        }
        for (Entry moved : visit.entry().entries("motion")) {
            String key = moved.text("motion");
            Motion motion = instruments.rangeOfMotion().find(key).orElseThrow(() -> moved.problem("no such motion: " + key));
            MotionMeasurement measured = new MotionMeasurement(visit.file(), visit.day(), key, side(moved, "side"));
            measured.record(new BigDecimal(moved.text("degrees")), motion.device(), moved.has("pain_limited") && moved.flag("pain_limited"), null,
                    visit.clinician().displayName(), visit.moment());
            db.persist(measured);
        }
    }

    private static Side side(Entry entry, String name) {
        return Side.valueOf(entry.text(name).toUpperCase(Locale.ROOT));
    }
}
