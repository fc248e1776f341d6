package org.steadwork.drawing;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.steadwork.body.BodyChart;
import org.steadwork.body.BodyRegion;
import org.steadwork.body.Direction;
import org.steadwork.body.Side;
import org.steadwork.body.View;
import org.steadwork.body.Zone;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.drawing.BodyFigure.Hint;
import org.steadwork.drawing.BodyFigure.Outline;
import org.steadwork.drawing.BodyFigure.PainStep;

/** Reads the body chart from {@code body/body-chart.yaml} and checks it; a wrong entry stops the start with file and line. */
@Singleton
public final class BodyChartContent {

    static final String FILE = "body/body-chart.yaml";

    private static final Pattern COLOUR = Pattern.compile("#[0-9a-f]{6}");
    private static final Pattern PATH = Pattern.compile("M-?[0-9. -]+(C[0-9. -]+)+Z?");

    private final BodyChart chart;
    private final BodyFigure figure;

    public BodyChartContent() {
        this(Content.yaml(FILE));
    }

    BodyChartContent(Entry file) {
        file.text("source");
        file.text("licence");
        List<Zone> zones = file.entries("zones").stream().map(BodyChartContent::zone).toList();
        try {
            chart = new BodyChart(zones);
        } catch (IllegalArgumentException e) {
            throw file.problem(e.getMessage());
        }
        figure = figure(file);
    }

    /** Returns the zones with look-ups by key, view and region. */
    @Produces
    @Singleton
    public BodyChart chart() {
        return chart;
    }

    BodyFigure figure() {
        return figure;
    }

    private static Zone zone(Entry entry) {
        entry.text("source");
        entry.text("evidence");
        Map<Direction, String> neighbours = new EnumMap<>(Direction.class);
        Entry next = entry.entry("next").orElseThrow(() -> entry.problem("'next' is missing"));
        for (String direction : next.keys()) {
            neighbours.put(direction(next, direction), next.text(direction));
        }
        Entry anchor = entry.entry("anchor").orElseThrow(() -> entry.problem("'anchor' is missing"));
        try {
            return new Zone(entry.text("key"), entry.text("label"), entry.constant("side", Side.class),
                    entry.constant("view", View.class), entry.constant("region", BodyRegion.class), entry.integer("order"),
                    new Zone.Anchor(anchor.number("x"), anchor.number("y")), entry.number("hit_stroke"), neighbours,
                    path(entry, "path"));
        } catch (IllegalArgumentException e) {
            throw entry.problem(e.getMessage());
        }
    }

    private static Direction direction(Entry entry, String key) {
        for (Direction direction : Direction.values()) {
            if (direction.key().equals(key)) {
                return direction;
            }
        }
        throw entry.problem("'" + key + "' is not a direction; use up, down, left or right");
    }

    private BodyFigure figure(Entry file) {
        List<PainStep> ramp = new ArrayList<>();
        for (Entry step : file.entries("ramp")) {
            if (step.integer("pain") != ramp.size() || !COLOUR.matcher(step.text("fill")).matches()) {
                throw step.problem("the ramp must give a colour like #1d2733 for each pain from 0 to 10 in order");
            }
            ramp.add(new PainStep(step.text("fill"), step.text("tone").equals("paper")));
        }
        if (ramp.size() != 11) {
            throw file.problem("the ramp must have 11 steps, but has " + ramp.size());
        }
        Map<View, Outline> outlines = new EnumMap<>(View.class);
        for (Entry entry : file.entries("figures")) {
            List<Hint> hints = entry.entries("hints").stream().map(this::hint).toList();
            outlines.put(entry.constant("view", View.class), new Outline(entry.integer("middle"), path(entry, "outline"),
                    entry.optionalText("chin"), hints));
        }
        if (outlines.size() != View.values().length) {
            throw file.problem("the chart needs a figure for each view");
        }
        return new BodyFigure(file.integer("width"), file.integer("height"), ramp, outlines);
    }

    private Hint hint(Entry entry) {
        if (chart.find(entry.text("zone")).isEmpty()) {
            throw entry.problem("there is no zone '" + entry.text("zone") + "'");
        }
        return new Hint(entry.text("zone"), path(entry, "path"));
    }

    private static String path(Entry entry, String key) {
        String path = entry.text(key);
        if (!PATH.matcher(path).matches()) {
            throw entry.problem("'" + key + "' must be path data of absolute M, C and Z");
        }
        return path;
    }
}
