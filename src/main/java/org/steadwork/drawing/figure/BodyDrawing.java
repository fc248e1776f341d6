package org.steadwork.drawing.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Draws a posed body or hand: limb by limb from far to near, the segments of a limb in one outline, moving parts tinted. */
final class BodyDrawing {

    private static final String SKIN = "#e9e0d4";
    private static final String MOVING = "#d9c2d3";
    private static final String FAR_SKIN = "#f5f0e9";
    private static final String FAR_MOVING = "#ece0e9";
    private static final String FAR_INK = "#7d858e";
    private static final String GHOST = "#a3a8ae";
    private static final double HEAD_IN_FRONT = 3;
    private static final double THUMB_IN_FRONT = .3;
    private static final double FINGERS_IN_FRONT = .6;

    private final Panel panel;
    private final FigureData figure;
    private final Values frame;
    private final Set<String> moving;

    /** @param frame the frame whose own {@code moves} and {@code only} go before the figure's, or null */
    BodyDrawing(Panel panel, FigureData figure, Pose frame) {
        this.panel = panel;
        this.figure = figure;
        this.frame = frame == null ? new Values(Map.of()) : frame.values();
        this.moving = BodyParts.expand(this.frame.has("moves") ? this.frame.texts("moves") : figure.values().texts("moves"));
    }

    /** @param under what is drawn just before a limb, by layer */
    String draw(Skeleton skeleton, Map<String, String> under) {
        List<String> only = frame.has("only") ? frame.texts("only") : figure.values().texts("only");
        Map<String, List<Segment>> layers = layers(skeleton);
        StringBuilder svg = new StringBuilder();
        for (String layer : farToNear(layers)) {
            svg.append(under.getOrDefault(layer, ""));
            if (!only.isEmpty() && !only.contains(layer)) {
                continue;
            }
            boolean far = isFar(layer, skeleton);
            String ink = far ? FAR_INK : Svg.INK;
            if (layer.equals("head")) {
                svg.append(new HeadDrawing(panel, skeleton.head(), ink, colour("head", far)).draw());
            } else {
                svg.append(limb(layers.get(layer), far, ink));
            }
        }
        return svg.toString();
    }

    /** The start position of the parts that move, dashed. */
    String ghost(Skeleton skeleton) {
        Map<String, List<Segment>> layers = layers(skeleton);
        StringBuilder svg = new StringBuilder();
        for (String layer : farToNear(layers)) {
            if (layers.get(layer).stream().anyMatch(s -> moving.contains(s.name()))) {
                String d = String.join("", layers.get(layer).stream().map(s -> panel.outline(s.balls())).toList());
                svg.append("<path d=\"").append(d).append("\" fill=\"none\" stroke=\"").append(GHOST).append("\" stroke-width=\"")
                        .append(Svg.num(panel.outlineStroke())).append("\" stroke-dasharray=\"5 3.5\"/>").append(Svg.fill(d, Svg.PAPER));
            }
        }
        return svg.toString();
    }

    private String limb(List<Segment> segments, boolean far, String ink) {
        Map<String, StringBuilder> byColour = new LinkedHashMap<>();
        StringBuilder all = new StringBuilder();
        for (Segment segment : segments) {
            String d = panel.outline(segment.balls());
            all.append(d);
            byColour.computeIfAbsent(colour(segment.name(), far), c -> new StringBuilder()).append(d);
        }
        StringBuilder svg = new StringBuilder(Svg.solid(all.toString(), ink, panel.outlineStroke()));
        String tint = far ? FAR_MOVING : MOVING;
        boolean movingFirst = figure.values().flag("static_top", false);
        byColour.entrySet().stream().sorted(Comparator.comparing(e -> e.getKey().equals(tint) != movingFirst))
                .forEach(e -> svg.append(Svg.fill(e.getValue().toString(), e.getKey())));
        return svg.toString();
    }

    private String colour(String segment, boolean far) {
        if (moving.contains(segment)) {
            return far ? FAR_MOVING : MOVING;
        }
        return far ? FAR_SKIN : SKIN;
    }

    private boolean isFar(String layer, Skeleton skeleton) {
        return skeleton.head() != null && panel.camera().isSideOn() && !figure.values().flag("no_far", false)
                && layer.endsWith("_" + panel.camera().nearSide().other());
    }

    private static Map<String, List<Segment>> layers(Skeleton skeleton) {
        Map<String, List<Segment>> layers = new LinkedHashMap<>();
        for (Segment segment : skeleton.joints().segments()) {
            layers.computeIfAbsent(segment.layer(), l -> new ArrayList<>()).add(segment);
        }
        return layers;
    }

    private List<String> farToNear(Map<String, List<Segment>> layers) {
        Values bias = figure.values().one("bias");
        return layers.keySet().stream().sorted(Comparator.comparingDouble(layer -> nearness(layer, layers.get(layer), bias))).toList();
    }

    private double nearness(String layer, List<Segment> segments, Values bias) {
        double depth = segments.stream().flatMap(s -> s.balls().stream()).mapToDouble(b -> panel.camera().depth(b.centre())).average().orElse(0);
        double ahead = layer.equals("head") ? HEAD_IN_FRONT : layer.startsWith("thumb") ? THUMB_IN_FRONT
                : layer.startsWith("fingers_") ? FINGERS_IN_FRONT : 0;
        return depth + bias.number(layer, 0) + ahead;
    }
}
