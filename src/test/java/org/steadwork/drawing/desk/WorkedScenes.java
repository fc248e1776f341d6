package org.steadwork.drawing.desk;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import org.steadwork.content.Content;
import org.steadwork.content.Entry;

/** Reads the worked scenes of the test resources. */
public final class WorkedScenes {

    public static final List<String> ALL = List.of("case-1", "case-1-unmeasured", "case-4", "case-5-standing", "case-6", "case-9", "case-10", "case-wheelchair");

    private WorkedScenes() {
    }

    static Entry entry(String name) {
        try (Reader reader = new InputStreamReader(WorkedScenes.class.getResourceAsStream(name + ".yaml"), StandardCharsets.UTF_8)) {
            return Content.yaml(name, reader);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static DeskScene scene(String name) {
        Entry e = entry(name);
        return new DeskScene(e.text("id"), e.text("title"), e.text("note"), e.constant("posture", Posture.class),
                e.constant("glasses", Glasses.class), numbers(e.entry("body").orElseThrow(), BodyMeasure.class),
                state(e.entry("present").orElseThrow()), state(e.entry("proposed").orElseThrow()), BandContent.read());
    }

    private static DeskState state(Entry e) {
        return new DeskState(e.constant("seat", SeatKind.class), e.constant("screen", ScreenKind.class), numbers(e, Setting.class));
    }

    static <E extends Enum<E>> Map<E, Double> numbers(Entry entry, Class<E> type) {
        Map<E, Double> numbers = new EnumMap<>(type);
        for (E constant : type.getEnumConstants()) {
            String key = constant.name().toLowerCase(java.util.Locale.ROOT);
            if (entry.has(key)) {
                numbers.put(constant, entry.number(key));
            }
        }
        return numbers;
    }

    /** The same scene with some body measures left out. */
    static DeskScene without(DeskScene s, BodyMeasure... measures) {
        Map<BodyMeasure, Double> body = new EnumMap<>(s.body());
        List.of(measures).forEach(body::remove);
        return new DeskScene(s.id(), s.title(), s.note(), s.posture(), s.glasses(), body, s.present(), s.proposed(), s.bands());
    }

    /** The same scene with one setting left out of the present state, and nothing proposed. */
    static DeskScene asFoundWithout(DeskScene s, Setting... settings) {
        Map<Setting, Double> now = new EnumMap<>(s.present().settings());
        List.of(settings).forEach(now::remove);
        return new DeskScene(s.id(), s.title(), s.note(), s.posture(), s.glasses(), s.body(),
                new DeskState(s.present().seat(), s.present().screen(), now), null, s.bands());
    }
}
