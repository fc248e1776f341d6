package org.steadwork.drawing.desk;

import java.util.ArrayList;
import java.util.List;

/** What a plan says of one state, in words with their states: the same under the drawing and in its text alternative. */
final class PlanFindings {

    record Line(String text, State state) {
    }

    private static final double STRAIGHT = 2;
    private static final double ON_THE_MIDLINE = 10;

    private final PlanGeometry geometry;
    private final PlanBands bands;
    private final List<Line> lines = new ArrayList<>();

    private PlanFindings(PlanGeometry geometry, PlanBands bands) {
        this.geometry = geometry;
        this.bands = bands;
    }

    static List<Line> of(PlanGeometry geometry, PlanBands bands) {
        PlanFindings findings = new PlanFindings(geometry, bands);
        findings.screens();
        findings.keys();
        findings.pointer();
        findings.papers();
        findings.phone();
        findings.window();
        return findings.lines;
    }

    private void add(String text, State state) {
        lines.add(new Line(text, state));
    }

    private void screens() {
        if (geometry.faces.isEmpty()) {
            add("Screens not looked at from above", State.NOT_MEASURED);
        }
        for (PlanGeometry.Face face : geometry.faces) {
            String place = Math.abs(face.angle()) < STRAIGHT ? "straight ahead" : Millimetres.whole(Math.abs(face.angle())) + "° " + side(face.angle());
            State square = bands.judge(PlanTarget.SQUARE, face.off());
            String turned = square == State.IN_RANGE ? "" : ", " + Millimetres.whole(face.off()) + "° off square";
            add(name(face) + " " + place + ", at " + Millimetres.whole(face.distance()) + " mm" + turned, State.worse(of(face), square));
        }
    }

    State of(PlanGeometry.Face face) {
        boolean only = face.screen().main() && !geometry.state.equalScreens();
        return bands.judge(only ? PlanTarget.SCREEN : PlanTarget.OTHER_SCREEN, Math.abs(face.angle()));
    }

    static State of(PlanGeometry geometry, PlanBands bands, PlanGeometry.Face face) {
        return new PlanFindings(geometry, bands).of(face);
    }

    private String name(PlanGeometry.Face face) {
        if (geometry.faces.size() == 1) {
            return "Screen";
        }
        if (geometry.state.equalScreens()) {
            return face.middle().x() < 0 ? "Left screen" : "Right screen";
        }
        return face.screen().main() ? "Main screen" : "Side screen";
    }

    private void keys() {
        double aside = geometry.state.keyboard().aside();
        add(Math.abs(aside) < ON_THE_MIDLINE ? "Keys on the midline" : "Keys " + Millimetres.whole(Math.abs(aside)) + " mm " + side(aside) + " of the midline",
                bands.judge(PlanTarget.KEYS, Math.abs(aside)));
    }

    private void pointer() {
        PlanThing pointer = geometry.state.pointer();
        if (pointer == null) {
            add("Pointer not looked at from above", State.NOT_MEASURED);
            return;
        }
        double outside = geometry.outside(pointer);
        add("Pointer " + Millimetres.whole(Math.abs(outside)) + " mm " + (outside > 0 ? "outside" : "inside") + " the shoulder line",
                bands.judge(PlanTarget.POINTER, outside));
        double reach = geometry.fromElbow(pointer);
        State state = reach <= geometry.body.everydayReach() ? State.IN_RANGE : geometry.fromShoulder(pointer) <= geometry.body.longestReach()
                ? State.A_LITTLE_OFF : State.OUT_OF_RANGE;
        add("Pointer " + Millimetres.whole(reach) + " mm from the elbow, everyday reach " + Millimetres.whole(geometry.body.everydayReach()) + " mm", state);
    }

    private void papers() {
        PlanThing papers = geometry.state.papers();
        if (papers != null) {
            double angle = PlanGeometry.angle(papers);
            State state = bands.judge(PlanTarget.PAPERS, Math.abs(angle));
            String place = Math.abs(angle) < STRAIGHT ? "straight ahead" : Millimetres.whole(Math.abs(angle)) + "° " + side(angle);
            add("Papers " + place + reach(papers), geometry.fromShoulder(papers) <= geometry.body.longestReach() ? state : State.worse(state, State.A_LITTLE_OFF));
        }
    }

    private void phone() {
        PlanThing phone = geometry.state.phone();
        if (phone != null) {
            add("Phone " + side(phone.aside()) + reach(phone), geometry.fromShoulder(phone) <= geometry.body.longestReach() ? State.IN_RANGE : State.A_LITTLE_OFF);
        }
    }

    private String reach(PlanThing thing) {
        String far = ", " + Millimetres.whole(geometry.fromShoulder(thing)) + " mm from the shoulder";
        return far + (geometry.fromShoulder(thing) <= geometry.body.longestReach() ? ""
                : ", longest reach " + Millimetres.whole(geometry.body.longestReach()) + " mm");
    }

    private void window() {
        PlanWindow window = geometry.state.window();
        if (window == null) {
            add("Window not looked at", State.NOT_MEASURED);
        } else {
            add("Window " + Millimetres.whole(window.offParallel()) + "° off parallel to the sight line", bands.judge(PlanTarget.WINDOW, window.offParallel()));
        }
    }

    private static String side(double value) {
        return value > 0 ? "right" : "left";
    }
}
