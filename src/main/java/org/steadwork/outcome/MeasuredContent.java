package org.steadwork.outcome;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.steadwork.body.Side;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.outcome.scoring.Grip;
import org.steadwork.outcome.scoring.GripNorm;
import org.steadwork.outcome.scoring.Motion;
import org.steadwork.outcome.scoring.MotionReference;
import org.steadwork.outcome.scoring.NormGroup;
import org.steadwork.outcome.scoring.RangeOfMotion;
import org.steadwork.outcome.scoring.Threshold;
import org.steadwork.outcome.scoring.Thresholds;

/** Reads grip strength with its norms and the motions with their published values; a wrong entry stops the start. */
final class MeasuredContent {

    private MeasuredContent() {
    }

    static Grip grip() {
        String name = Content.yaml("instruments/index.yaml").text("grip");
        return grip(Content.yaml("instruments/" + name + ".yaml"), Content.csv("instruments/" + name + "-norms.csv"));
    }

    static Grip grip(Entry entry, List<Entry> rows) {
        List<GripNorm> norms = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Entry row : rows) {
            GripNorm norm = AboutContent.checked(row, () -> new GripNorm(row.constant("group", NormGroup.class), row.constant("hand", Side.class),
                    row.integer("from_age"), row.integer("to_age"), row.number("mean_lb"), row.number("sd_lb")));
            if (!seen.add(norm.group() + " " + norm.hand() + " " + norm.fromAge())) {
                throw row.problem("this group, hand and age stands twice");
            }
            norms.add(norm);
        }
        return new Grip(AboutContent.about(entry), entry.integer("trials"), norms, new Thresholds(AboutContent.thresholds(entry)));
    }

    static RangeOfMotion rangeOfMotion() {
        return rangeOfMotion(Content.yaml("instruments/" + Content.yaml("instruments/index.yaml").text("range_of_motion") + ".yaml"));
    }

    static RangeOfMotion rangeOfMotion(Entry entry) {
        List<Motion> motions = new ArrayList<>();
        Set<String> keys = new HashSet<>();
        for (Entry motion : entry.entries("motions")) {
            if (!keys.add(motion.text("key"))) {
                throw motion.problem("the key '" + motion.text("key") + "' is used twice");
            }
            motions.add(AboutContent.checked(motion, () -> motion(motion)));
        }
        List<Threshold> errors = AboutContent.thresholds(entry);
        return new RangeOfMotion(AboutContent.about(entry), motions, level(entry, errors, "same assessor"), level(entry, errors, "other assessor"));
    }

    private static Threshold level(Entry entry, List<Threshold> errors, String level) {
        return errors.stream().filter(error -> error.level().equals(level)).findFirst()
                .orElseThrow(() -> entry.problem("a threshold of the level '" + level + "' is missing"));
    }

    private static Motion motion(Entry entry) {
        List<MotionReference> references = new ArrayList<>();
        for (Entry reference : entry.entries("references")) {
            references.add(AboutContent.checked(reference, () -> reference(reference)));
        }
        return new Motion(entry.text("key"), entry.text("name"), entry.text("joint"), entry.texts("regions"), entry.flag("sided"),
                entry.constant("device", Motion.Device.class), entry.text("position"), entry.integer("most_degrees"), references);
    }

    private static MotionReference reference(Entry entry) {
        double low = entry.number("degrees");
        return new MotionReference(entry.text("by"), low, entry.has("to_degrees") ? entry.number("to_degrees") : low, entry.flag("at_least"),
                entry.has("sd") ? entry.number("sd") : Double.NaN, entry.text("population"), entry.text("source"), AboutContent.tag(entry));
    }
}
