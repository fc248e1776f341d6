package org.steadwork.exercise;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Keeps days of the week by their first three letters: {@code MON,TUE}. */
@Converter
class WorkDaysColumn implements AttributeConverter<Set<DayOfWeek>, String> {

    @Override
    public String convertToDatabaseColumn(Set<DayOfWeek> days) {
        return days == null ? null : new TreeSet<>(days).stream().map(day -> day.name().substring(0, 3)).collect(Collectors.joining(","));
    }

    @Override
    public Set<DayOfWeek> convertToEntityAttribute(String written) {
        return written == null ? null : Arrays.stream(DayOfWeek.values()).filter(day -> written.contains(day.name().substring(0, 3)))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
