package org.steadwork.exercise;

import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.steadwork.content.Content;
import org.steadwork.content.PlainEntry;
import org.steadwork.content.ReadEarly;
import org.steadwork.drawing.figure.ExerciseFigure;
import org.steadwork.exercise.dayplan.Range;

/** The figures of the exercises, drawn when first asked for; the usual ones are then kept. */
@ApplicationScoped
public class ExerciseFigures implements ReadEarly {

    private final Map<String, ExerciseFigure> figures = read(Content.plain("exercises/poses.yaml"));
    private final Map<String, String> drawn = new ConcurrentHashMap<>();

    void readAtStart(@Observes StartupEvent start) {
        // observing makes the bean at the start, so that a wrong pose is found then
    }

    public Set<String> keys() {
        return figures.keySet();
    }

    /**
     * Draws the figure of an exercise as SVG; empty when it has none.
     *
     * @param side left or right where one side is meant; anything else leaves the side that is drawn
     * @param hold seconds to hold in place of those of the drawing, 0 for none; null leaves them
     */
    public Optional<String> svg(String key, String side, Range hold) {
        ExerciseFigure figure = figures.get(key);
        if (figure == null) {
            return Optional.empty();
        }
        boolean mirrored = "left".equals(side) && !figure.showsLeft() || "right".equals(side) && figure.showsLeft();
        if (hold == null) {
            return Optional.of(drawn.computeIfAbsent(mirrored ? key + " mirrored" : key, k -> mirrored ? figure.mirrored() : figure.svg()));
        }
        ExerciseFigure held = figure.held(hold.high() == 0 ? null : hold.toString());
        return Optional.of(mirrored ? held.mirrored() : held.svg());
    }

    /**
     * Makes and draws every figure once, so that a wrong pose, prop or arrow stops the start with file, line and reason. On all
     * processors, since it would lengthen the start else.
     */
    static Map<String, ExerciseFigure> read(PlainEntry file) {
        Map<String, Object> presets = new LinkedHashMap<>();
        file.entries("presets").forEach((name, preset) -> presets.put(name, preset.values()));
        Map<String, PlainEntry> exercises = file.entries("exercises");
        Map<String, ExerciseFigure> made = exercises.entrySet().parallelStream()
                .collect(Collectors.toConcurrentMap(Map.Entry::getKey, exercise -> figure(exercise.getKey(), presets, exercise.getValue())));
        Map<String, ExerciseFigure> figures = new LinkedHashMap<>();
        exercises.keySet().forEach(key -> figures.put(key, made.get(key)));
        return figures;
    }

    private static ExerciseFigure figure(String key, Map<String, Object> presets, PlainEntry poses) {
        try {
            ExerciseFigure figure = ExerciseFigure.of(key, presets, poses.values());
            figure.svg();
            return figure;
        } catch (IllegalArgumentException e) {
            throw poses.problem("exercise '" + key + "': " + e.getMessage());
        }
    }
}
