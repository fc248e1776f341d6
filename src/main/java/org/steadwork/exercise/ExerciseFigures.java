package org.steadwork.exercise;

import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.steadwork.drawing.figure.ExerciseFigure;
import org.steadwork.exercise.dayplan.Range;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** The figures of the exercises, drawn when first asked for; the usual ones are then kept. */
@ApplicationScoped
public class ExerciseFigures {

    private static final String FILE = "content/exercises/poses.yaml";

    private final Map<String, ExerciseFigure> figures = read();
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

    /** Poses nest lists in lists, which the content reader's entries do not offer, so they are read as plain data. */
    private static Map<String, ExerciseFigure> read() {
        try (InputStream in = ExerciseFigures.class.getClassLoader().getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException(FILE + " is missing from the content");
            }
            try (Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
                LoaderOptions options = new LoaderOptions();
                options.setAllowDuplicateKeys(false);
                Map<String, Object> file = new Yaml(new SafeConstructor(options)).load(reader);
                return figures(map(file, "presets"), map(file, "exercises"));
            }
        } catch (IOException e) {
            throw new IllegalStateException(FILE + " cannot be read", e);
        }
    }

    private static Map<String, ExerciseFigure> figures(Map<String, Object> presets, Map<String, Object> exercises) {
        Map<String, ExerciseFigure> figures = new LinkedHashMap<>();
        for (String key : exercises.keySet()) {
            try {
                figures.put(key, ExerciseFigure.of(key, presets, map(exercises, key)));
            } catch (IllegalArgumentException e) {
                throw new IllegalStateException(FILE + ", exercise " + key + ": " + e.getMessage(), e);
            }
        }
        return figures;
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> map(Map<String, Object> data, String key) {
        if (data.get(key) instanceof Map<?, ?> map) {
            return (Map<String, Object>) map;
        }
        throw new IllegalStateException(FILE + ": '" + key + "' must be a map");
    }
}
