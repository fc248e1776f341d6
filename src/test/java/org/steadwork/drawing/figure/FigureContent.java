package org.steadwork.drawing.figure;

import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.stream.Stream;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** The figures that ship with the product, as the tests use them. */
final class FigureContent {

    private static final Map<String, Object> POSES = read();

    private FigureContent() {
    }

    static Stream<String> keys() {
        return map("exercises").keySet().stream();
    }

    static ExerciseFigure figure(String key) {
        return ExerciseFigure.of(key, map("presets"), data(key));
    }

    static FigureData figureData(String key) {
        return FigureData.of(key, map("presets"), data(key));
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> data(String key) {
        return (Map<String, Object>) map("exercises").get(key);
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> map(String part) {
        return (Map<String, Object>) POSES.get(part);
    }

    private static Map<String, Object> read() {
        try (Reader reader = new InputStreamReader(FigureContent.class.getResourceAsStream("/content/exercises/poses.yaml"), StandardCharsets.UTF_8)) {
            return new Yaml(new SafeConstructor(new LoaderOptions())).load(reader);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
