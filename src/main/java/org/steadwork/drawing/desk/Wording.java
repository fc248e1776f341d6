package org.steadwork.drawing.desk;

import static org.steadwork.drawing.desk.Millimetres.whole;
import static org.steadwork.drawing.desk.Setting.*;

import java.util.ArrayList;
import java.util.List;

/** Puts a stage into words. Numbers are rounded for show; states are judged on the unrounded ones. */
final class Wording {

    private static final double LEVEL = 3;
    private static final String NOT_JUDGED = "not judged";

    private final Stage stage;
    private final Show show;
    private final Deviations now;
    private final Deviations then;
    private final Settings is;
    private final Settings willBe;

    Wording(Stage stage, Show show) {
        this.stage = stage;
        this.show = show;
        now = stage.now().deviations();
        then = stage.then().deviations();
        is = stage.now().settings();
        willBe = stage.then().settings();
    }

    List<Label> labels() {
        List<Label> labels = new ArrayList<>();
        if (stage.standing()) {
            labels.add(label(Label.Topic.KEYS, change("Keys at", DESK_HEIGHT, is.home(), willBe.home()), Target.ELBOW,
                    d -> "standing elbow " + whole(d.elbowAt)));
            labels.add(desk());
        } else {
            labels.add(seat());
            labels.add(feet());
            labels.add(knee());
            if (is.has(ARMREST) || willBe.has(ARMREST)) {
                labels.add(armrest());
            }
            labels.add(desk());
            labels.add(label(Label.Topic.THIGH, "Thigh room", Target.THIGH, Wording::thighRoom));
        }
        labels.add(screen());
        labels.add(sight());
        return labels;
    }

    /** What one deviation means in words. */
    private interface Meaning {
        String of(Deviations d);
    }

    private Label label(Label.Topic topic, String head, Target target, Meaning meaning) {
        return new Label(topic, head, judged(now, target, meaning), now.state(target),
                then.missing(target).isPresent() ? NOT_JUDGED : meaning.of(then), then.state(target));
    }

    private static String judged(Deviations d, Target target, Meaning meaning) {
        return d.missing(target).map(word -> word + " not measured").orElseGet(() -> meaning.of(d));
    }

    private String change(String name, Setting setting) {
        return change(name, setting, is.of(setting), willBe.of(setting));
    }

    private String change(String name, Setting setting, double from, double to) {
        boolean known = is.measured(setting);
        boolean wanted = willBe.measured(setting);
        String a = known ? amount(setting, from) : "not measured";
        String b = wanted ? amount(setting, to) : "not measured";
        if (show == Show.PRESENT) {
            return name + " " + a;
        }
        if (show == Show.PROPOSED) {
            return name + " " + b;
        }
        return name + " " + (a.equals(b) ? a : a + " → " + b);
    }

    private static String amount(Setting setting, double value) {
        return setting.canBeAbsent() && value == 0 ? "none" : whole(value);
    }

    private static String off(double value, String above, String below) {
        return whole(Math.abs(value)) + " " + (value > 0 ? above : below);
    }

    private Label seat() {
        boolean deskFixed = Math.abs(is.of(DESK_HEIGHT) - willBe.of(DESK_HEIGHT)) < LEVEL;
        State nowState = seatState(now, deskFixed);
        State thenState = seatState(then, deskFixed);
        return new Label(Label.Topic.SEAT, change(willBe.wheelchair() ? "Wheelchair seat" : "Seat", SEAT_HEIGHT),
                judged(now, Target.FEET, d -> seatWords(d, deskFixed)), nowState,
                thenState == State.NOT_MEASURED ? NOT_JUDGED : seatWords(then, deskFixed), thenState);
    }

    private static State seatState(Deviations d, boolean deskFixed) {
        State feet = d.state(Target.FEET);
        State elbow = d.state(Target.ELBOW);
        return feet != State.NOT_MEASURED && deskFixed && elbow.off() ? State.worse(feet, elbow) : feet;
    }

    private String seatWords(Deviations d, boolean deskFixed) {
        List<String> words = new ArrayList<>();
        Band legs = stage.scene().bands().of(Target.FEET);
        if (d.feet > legs.to()) {
            words.add(whole(d.feet) + " too high for the legs");
        } else if (d.feet < legs.from()) {
            words.add(whole(-d.feet) + " too low for the legs");
        }
        if (deskFixed && d.state(Target.ELBOW).off()) {
            words.add(whole(Math.abs(d.elbow)) + " too " + (d.elbow > 0 ? "low" : "high") + " for the desk");
        }
        if (!words.isEmpty()) {
            return String.join(", ", words);
        }
        boolean onFootrest = (d == now ? is : willBe).has(FOOTREST_HEIGHT);
        boolean deskKnown = d.state(Target.ELBOW) != State.NOT_MEASURED;
        if (onFootrest && !willBe.wheelchair()) {
            return deskKnown ? "suits the desk; footrest takes the legs" : "suits the legs, on the footrest";
        }
        return deskFixed && deskKnown ? "suits legs and desk" : "suits the legs";
    }

    private Label feet() {
        String name = willBe.wheelchair() ? "Footplate" : "Footrest";
        return label(Label.Topic.FEET, change(name, FOOTREST_HEIGHT), Target.FEET, this::feetWords);
    }

    private String feetWords(Deviations d) {
        boolean raised = (d == now ? is : willBe).has(FOOTREST_HEIGHT);
        String support = !raised ? "floor" : willBe.wheelchair() ? "footplate" : "footrest";
        if (d.feet > PostureWords.FEET_HANG) {
            return "feet hang " + whole(d.feet) + " over the " + support;
        }
        if (d.feet > Legs.FEET_LEAVE) {
            return "heels " + whole(d.feet) + " off the " + support + ", toes touch";
        }
        if (d.feet < stage.scene().bands().of(Target.FEET).from()) {
            return "knees " + whole(-d.feet) + " above seat level";
        }
        return "feet flat on " + support;
    }

    private Label knee() {
        String head = change("Seat depth", SEAT_DEPTH);
        if (is.has(CUSHION) || willBe.has(CUSHION)) {
            head += ", back cushion " + whole((show == Show.PRESENT ? is : willBe).of(CUSHION));
        }
        return label(Label.Topic.KNEE, head, Target.KNEE, this::kneeWords);
    }

    private String kneeWords(Deviations d) {
        if (d.knee < Legs.CALF_MEETS_SEAT) {
            return "knee gap " + whole(d.knee) + ", back " + whole(Legs.CALF_MEETS_SEAT - d.knee) + " off the rest";
        }
        Band band = stage.scene().bands().of(Target.KNEE);
        return "knee gap " + whole(d.knee) + (d.knee > band.to() ? ", seat too short" : d.knee < band.from() ? ", seat too long" : "");
    }

    private Label armrest() {
        boolean removed = is.has(ARMREST) && !willBe.has(ARMREST);
        String head = removed && show == Show.BOTH ? "Arm rest " + whole(is.of(ARMREST)) + " → remove" : change("Arm rest", ARMREST);
        Meaning meaning = d -> Math.abs(d.armrest) < LEVEL ? "at elbow height" : off(d.armrest, "above elbow", "below elbow");
        State nowState = is.has(ARMREST) ? now.state(Target.ARMREST) : State.IN_RANGE;
        State thenState = willBe.has(ARMREST) ? then.state(Target.ARMREST) : State.IN_RANGE;
        return new Label(Label.Topic.ARMREST, head,
                is.has(ARMREST) ? judged(now, Target.ARMREST, meaning) : is.measured(ARMREST) ? "none" : "not looked at",
                is.measured(ARMREST) ? nowState : State.NOT_MEASURED,
                !willBe.has(ARMREST) ? "removed" : then.missing(Target.ARMREST).isPresent() ? NOT_JUDGED : meaning.of(then), thenState);
    }

    private Label desk() {
        double lower = is.of(DESK_HEIGHT) - willBe.of(DESK_HEIGHT);
        String change = Math.abs(lower) >= LEVEL && show == Show.BOTH && now.state(Target.ELBOW).off() ? off(lower, "too high: ", "too low: ") : "";
        Meaning meaning = d -> (d == now ? change : "")
                + (Math.abs(d.elbow) < LEVEL ? "keys at elbow height" : "keys " + off(d.elbow, "above elbow", "below elbow"));
        return label(Label.Topic.DESK, change("Desk", DESK_HEIGHT), Target.ELBOW, meaning);
    }

    private static String thighRoom(Deviations d) {
        if (d.thigh < 0) {
            return whole(d.thigh) + ": thigh meets the desk";
        }
        return d.thigh < LEVEL ? "no room over the thigh" : whole(d.thigh) + " free over thigh";
    }

    private Label screen() {
        Target target = Bands.screenTarget(stage.scene().glasses());
        Meaning meaning = d -> (Math.abs(d.drop) < LEVEL ? "level with the eye" : off(d.drop, "below the eye", "above the eye"))
                + (d.acceptedByGaze() ? ", accepted by gaze angle" : "");
        Label plain = label(Label.Topic.SCREEN, change("Screen top", SCREEN_TOP), target, meaning);
        return new Label(plain.topic(), plain.head(), plain.now(), now.screen(), plain.then(), then.screen());
    }

    private Label sight() {
        return new Label(Label.Topic.SIGHT, change("Sight line", SCREEN_DISTANCE), sightWords(now), now.sight(), sightWords(then), then.sight());
    }

    private String sightWords(Deviations d) {
        State distance = d.state(Target.DISTANCE);
        Band band = stage.scene().bands().of(Target.DISTANCE);
        String reach = distance == State.NOT_MEASURED ? "distance not measured, " : d.distance < band.from() ? "near, " : d.distance > band.to() ? "far, " : "";
        if (d.state(Target.GAZE) == State.NOT_MEASURED) {
            return reach + "gaze not judged";
        }
        return reach + (Math.abs(d.gaze) < 1.5 ? "gaze level" : "gaze " + whole(Math.abs(d.gaze)) + "° " + (d.gaze > 0 ? "down" : "up"));
    }
}
