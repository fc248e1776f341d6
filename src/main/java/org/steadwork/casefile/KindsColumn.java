package org.steadwork.casefile;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.steadwork.body.SymptomKind;

/** Keeps the kinds of a symptom in one column, their keys between semicolons. */
@Converter
public class KindsColumn implements AttributeConverter<Set<SymptomKind>, String> {

    @Override
    public String convertToDatabaseColumn(Set<SymptomKind> kinds) {
        return kinds == null ? "" : kinds.stream().sorted().map(SymptomKind::key).collect(Collectors.joining(";"));
    }

    @Override
    public Set<SymptomKind> convertToEntityAttribute(String column) {
        Set<SymptomKind> kinds = EnumSet.noneOf(SymptomKind.class);
        if (column != null && !column.isEmpty()) {
            for (String key : column.split(";")) {
                kinds.add(SymptomKind.of(key));
            }
        }
        return Collections.unmodifiableSet(kinds);
    }
}
