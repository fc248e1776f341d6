package org.steadwork.drawing.desk;

import java.awt.geom.Rectangle2D;
import java.util.List;

import org.steadwork.drawing.LabelPlaces;

/** Draws one state of a plan: room, desk, reach, chair, person, screens and what is off. */
final class PlanArt {

    private static final Ink GUIDE = Ink.line(Palette.LEVEL, .9).dash("1.5 3");
    private static final Ink MIDLINE = Ink.line(Palette.LEADER, .9).dash("10 3 2 3");
    private static final double SIDE_LIMIT = 35;

    private final PlanScene scene;
    private final PlanGeometry geometry;
    private final Pen pen;
    private final Frame frame;
    private final PlanExtent extent;
    private final Look look;
    private final LabelPlaces places;

    PlanArt(PlanScene scene, PlanGeometry geometry, Pen pen, Frame frame, PlanExtent extent, Look look) {
        this.scene = scene;
        this.geometry = geometry;
        this.pen = pen;
        this.frame = frame;
        this.extent = extent;
        this.look = look;
        Point corner = frame.at(extent.left(), extent.far());
        places = new LabelPlaces(new Rectangle2D.Double(corner.x(), corner.y(), frame.length(extent.width()), frame.length(extent.depth())));
    }

    void draw() {
        PlanState state = geometry.state;
        double half = scene.deskWidth() / 2;
        if (state.window() != null) {
            new WindowArt(pen, frame, extent, look).draw(state.window());
        }
        pen.path(frame.box(-half, state.edge(), half, state.edge() + scene.deskDepth(), 18), look.wooden());
        new ReachZones(pen, frame, scene.body(), state.edge(), scene.deskWidth(), scene.deskDepth()).draw();
        guides();
        chair();
        things();
        new PlanPerson(pen, frame, geometry, look).draw();
        geometry.faces.forEach(this::screen);
        obstacles();
        geometry.faces.forEach(this::angle);
        geometry.faces.forEach(this::distance);
        pointerOff();
        name(state.papers(), "papers");
        name(state.phone(), "phone");
        guideWords();
    }

    private void guides() {
        pen.line(frame.at(0, -60), frame.at(0, extent.far() - 30), MIDLINE);
        for (int side : new int[] {-1, 1}) {
            pen.line(frame.at(PlanGeometry.EYE), frame.at(ray(side * SIDE_LIMIT, guideLength())), GUIDE);
        }
    }

    private double guideLength() {
        return Math.min(1000, (extent.far() - PlanGeometry.EYE.y() - 60) / Math.cos(Math.toRadians(SIDE_LIMIT)));
    }

    private void guideWords() {
        for (int side : new int[] {-1, 1}) {
            Type type = new Type(10, Palette.MUTED, false, false, side > 0 ? "start" : "end", true);
            Point[] along = new Point[5];
            for (int i = 0; i < along.length; i++) {
                along[i] = frame.at(ray(side * SIDE_LIMIT, guideLength() - 60 * i)).plus(side * 4, 2);
            }
            label("35°", type, along);
        }
    }

    private void chair() {
        for (int i = 0; i < 5; i++) {
            double angle = Math.toRadians(90 + 72 * i);
            pen.path(PlanPerson.limb(frame, new Point(0, -20), new Point(300 * Math.cos(angle), -20 + 300 * Math.sin(angle)), 26, 16), look.padded());
        }
        pen.path(frame.box(-240, -225, 240, 215, 90), look.padded());
        pen.path(frame.box(-215, -250, 215, -195, 26), look.housing());
    }

    private void things() {
        PlanState state = geometry.state;
        box(state.papers(), 297, 4, look.edge().fill(look.present() ? Palette.PAPER : "#ffffff"));
        box(state.phone(), 150, 18, look.housing());
        box(state.keyboard(), 140, 12, look.edge().fill(look.present() ? Palette.PAPER : "#c9c2b6"));
        if (state.pointer() != null) {
            box(state.pointer(), 116, 32, look.housing());
            pen.line(frame.at(state.pointer().middle().plus(0, 10)), frame.at(state.pointer().middle().plus(0, 56)), look.edge());
        }
    }

    private void box(PlanThing thing, double depth, double corner, Ink ink) {
        if (thing != null) {
            pen.path(frame.box(thing.aside() - thing.width() / 2, thing.ahead() - depth / 2, thing.aside() + thing.width() / 2,
                    thing.ahead() + depth / 2, corner), ink);
        }
    }

    private void screen(PlanGeometry.Face face) {
        Point back = face.backwards();
        pen.path(frame.polygon(face.left(), face.right(), face.right().plus(30 * back.x(), 30 * back.y()), face.left().plus(30 * back.x(), 30 * back.y())),
                look.housing());
        pen.line(frame.at(face.left()), frame.at(face.right()), Ink.line(look.colour(), 2.6).dash(look.present() ? "5 3" : null));
        pen.line(frame.at(PlanGeometry.EYE), frame.at(face.middle()), Ink.line(look.colour(), 1.1).dash(look.present() ? "1.5 3.5" : "10 3"));
    }

    /** What no word may cover: the screens; what words should not cross: the sight lines. */
    private void obstacles() {
        for (PlanGeometry.Face face : geometry.faces) {
            Point a = frame.at(face.left());
            Point b = frame.at(face.right());
            for (int i = 0; i <= 20; i++) {
                Point p = a.towards(b, i / 20.);
                places.take(new Rectangle2D.Double(p.x() - 5, p.y() - 9, 10, 14));
            }
            Point eye = frame.at(PlanGeometry.EYE);
            places.line(.15, eye.x(), eye.y(), frame.at(face.middle()).x(), frame.at(face.middle()).y());
        }
        Point keys = frame.at(geometry.state.keyboard().middle().plus(-geometry.state.keyboard().width() / 2, 70));
        places.take(new Rectangle2D.Double(keys.x(), keys.y(), frame.length(geometry.state.keyboard().width()), frame.length(140)));
    }

    /** The angle of a screen, as an arc from straight ahead. */
    private void angle(PlanGeometry.Face face) {
        if (Math.abs(face.angle()) < 2) {
            return;
        }
        double radius = face.screen().main() ? 430 : 560;
        radius = Math.min(radius, face.distance() * .8);
        Point from = frame.at(0, PlanGeometry.EYE.y() + radius);
        Point to = frame.at(ray(face.angle(), radius));
        double r = frame.length(radius);
        State state = PlanFindings.of(geometry, scene.bands(), face);
        String colour = state.off() && look.present() ? state.colour : look.colour();
        pen.path("M" + Frame.p(from.x(), from.y()) + "A" + Pen.number(r) + " " + Pen.number(r) + " 0 0 " + (face.angle() > 0 ? 1 : 0) + " "
                + Frame.p(to.x(), to.y()), Ink.line(colour, 1.2));
        Point middle = frame.at(ray(face.angle() / 2, radius + 62));
        String text = Millimetres.whole(Math.abs(face.angle())) + "°";
        label(text, new Type(11.5, colour, true, false, "middle", true), middle.plus(0, 4), middle.plus(0, -10), frame.at(ray(face.angle() / 2, radius - 80)));
    }

    private static Point ray(double degrees, double length) {
        return PlanGeometry.EYE.plus(length * Math.sin(Math.toRadians(degrees)), length * Math.cos(Math.toRadians(degrees)));
    }

    private void distance(PlanGeometry.Face face) {
        Point[] along = new Point[6];
        for (int i = 0; i < along.length; i++) {
            along[i] = frame.at(PlanGeometry.EYE.towards(face.middle(), .86 - i * .05)).plus(0, 4);
        }
        label(Millimetres.whole(face.distance()), new Type(10.5, look.colour(), false, false, "middle", true), along);
    }

    /** The arrow from the line of the shoulder out to the pointer. */
    private void pointerOff() {
        PlanThing pointer = geometry.state.pointer();
        if (pointer == null) {
            return;
        }
        double outside = geometry.outside(pointer);
        int side = PlanGeometry.side(pointer);
        double shoulder = side * scene.body().half();
        pen.line(frame.at(shoulder, -30), frame.at(shoulder, pointer.ahead() + 150), Ink.line(Palette.LEADER, .9).dash("4 3"));
        if (Math.abs(outside) <= 25) {
            return;
        }
        State state = scene.bands().judge(PlanTarget.POINTER, outside);
        Point to = frame.at(pointer.aside(), pointer.ahead() + 110);
        pen.arrow(frame.at(shoulder, pointer.ahead() + 110), to, Ink.line(state.colour, 1.4), 5);
        Type type = new Type(11.5, state.colour, true, false, side > 0 ? "start" : "end", true);
        label(Millimetres.signed(outside), type, to.plus(side * 6, 4), to.plus(side * 6, -8), to.plus(side * 6, 16));
    }

    private void name(PlanThing thing, String word) {
        if (thing != null) {
            Point middle = frame.at(thing.middle());
            label(word, new Type(10.5, Palette.MUTED, false, false, "middle", true), middle.plus(0, 4), middle.plus(0, 16), middle.plus(0, -8));
        }
    }

    private void label(String text, Type type, Point... candidates) {
        LabelPlaces.Place best = places.best(List.of(candidates).stream()
                .map(p -> LabelPlaces.Place.of(p.x(), p.y(), type.anchor(), text, type.size(), type.bold())).toList());
        places.take(best.box());
        pen.text(best.x(), best.y(), text, type);
    }
}
