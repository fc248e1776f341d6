package org.steadwork.exercise;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import org.steadwork.exercise.dayplan.Range;

/** Keeps a number or range of a dose as it is written: {@code 10-15}. */
@Converter(autoApply = true)
class RangeColumn implements AttributeConverter<Range, String> {

    @Override
    public String convertToDatabaseColumn(Range range) {
        return range == null ? null : range.toString();
    }

    @Override
    public Range convertToEntityAttribute(String written) {
        return written == null ? null : Range.parse(written);
    }
}
