package org.steadwork.diary;

import jakarta.persistence.AttributeConverter;
import java.time.DayOfWeek;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.steadwork.diary.rules.ClinicTime;
import org.steadwork.diary.rules.Span;
import org.steadwork.diary.rules.Spans;

/** Keeps a week as text, {@code monday 09:00-12:30, 13:30-17:00; tuesday …}, and reads the hours of one day as they are typed. */
class WeekColumn implements AttributeConverter<Map<DayOfWeek, List<Span>>, String> {

    @Override
    public String convertToDatabaseColumn(Map<DayOfWeek, List<Span>> week) {
        return new TreeMap<>(week).entrySet().stream().filter(day -> !day.getValue().isEmpty())
                .map(day -> day.getKey().name().toLowerCase() + " " + shown(day.getValue())).collect(Collectors.joining("; "));
    }

    @Override
    public Map<DayOfWeek, List<Span>> convertToEntityAttribute(String text) {
        Map<DayOfWeek, List<Span>> week = new EnumMap<>(DayOfWeek.class);
        for (String day : text.isBlank() ? new String[0] : text.split("; ")) {
            int gap = day.indexOf(' ');
            week.put(DayOfWeek.valueOf(day.substring(0, gap).toUpperCase()), read(day.substring(gap + 1)));
        }
        return week;
    }

    static String shown(List<Span> hours) {
        return hours.stream().map(span -> ClinicTime.shown(span.from()) + "-" + ClinicTime.shown(span.to())).collect(Collectors.joining(", "));
    }

    /** Reads {@code 9-12:30, 13:30–17}; throws when a part is no time, ends before it begins, is off the grid or overlaps another. */
    static List<Span> read(String typed) {
        if (typed == null || typed.isBlank()) {
            return List.of();
        }
        List<Span> spans = Stream.of(typed.split("[,;]")).map(WeekColumn::span).toList();
        if (Spans.joined(spans).stream().mapToInt(Span::minutes).sum() != spans.stream().mapToInt(Span::minutes).sum()) {
            throw new IllegalArgumentException("These hours overlap");
        }
        return Spans.joined(spans);
    }

    private static Span span(String part) {
        String[] ends = part.strip().split("\\s*[-\u2013\u2014]\\s*");
        List<Integer> times = Stream.of(ends).map(ClinicTime::read).map(time -> time.isPresent() ? time.getAsInt() : null).filter(Objects::nonNull).toList();
        if (ends.length != 2 || times.size() != 2 || times.get(0) >= times.get(1) || times.get(0) % DiaryContent.GRID != 0 || times.get(1) % DiaryContent.GRID != 0) {
            throw new IllegalArgumentException("Not hours of a day: " + part);
        }
        return new Span(times.get(0), times.get(1));
    }
}
