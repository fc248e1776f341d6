package org.steadwork.letter;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.steadwork.letter.disclosure.InformationCategory;

/** Keeps ticked categories in one column, their names parted by commas; empty means that none is ticked. */
@Converter
class TickedColumn implements AttributeConverter<Set<InformationCategory>, String> {

    @Override
    public String convertToDatabaseColumn(Set<InformationCategory> ticked) {
        return ticked == null ? null : new TreeSet<>(ticked).stream().map(Enum::name).collect(Collectors.joining(","));
    }

    @Override
    public Set<InformationCategory> convertToEntityAttribute(String column) {
        return column == null || column.isBlank() ? Set.of()
                : Arrays.stream(column.split(",")).map(InformationCategory::valueOf).collect(Collectors.toUnmodifiableSet());
    }
}
