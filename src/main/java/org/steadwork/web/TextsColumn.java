package org.steadwork.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import java.util.LinkedHashMap;
import java.util.Map;

/** Keeps words by name in one column as JSON. */
@Converter
public class TextsColumn implements AttributeConverter<Map<String, String>, String> {

    private static final ObjectMapper JSON = new ObjectMapper();

    @Override
    public String convertToDatabaseColumn(Map<String, String> texts) {
        try {
            return texts == null ? null : JSON.writeValueAsString(texts);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("These words cannot be kept", e);
        }
    }

    @Override
    public Map<String, String> convertToEntityAttribute(String column) {
        try {
            return column == null ? null : JSON.readValue(column, new TypeReference<LinkedHashMap<String, String>>() {
            });
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("These words cannot be read", e);
        }
    }
}
