package org.steadwork.exercise;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.steadwork.exercise.dayplan.FixedBlock;

/** Keeps the fixed times of a day, one a line: {@code 750-780 REST Lunch}. */
@Converter
class FixedBlocksColumn implements AttributeConverter<List<FixedBlock>, String> {

    private static final Pattern LINE = Pattern.compile("(\\d+)-(\\d+) ([A-Z_]+) (.*)");

    @Override
    public String convertToDatabaseColumn(List<FixedBlock> blocks) {
        return blocks == null || blocks.isEmpty() ? null : blocks.stream()
                .map(b -> b.from() + "-" + b.to() + " " + b.kind().name() + " " + b.label()).collect(Collectors.joining("\n"));
    }

    @Override
    public List<FixedBlock> convertToEntityAttribute(String written) {
        return written == null ? List.of() : written.lines().map(FixedBlocksColumn::block).toList();
    }

    private static FixedBlock block(String line) {
        Matcher parts = LINE.matcher(line);
        if (!parts.matches()) {
            throw new IllegalStateException("A fixed time is stored in a form that cannot be read");
        }
        return new FixedBlock(Integer.parseInt(parts.group(1)), Integer.parseInt(parts.group(2)), FixedBlock.Kind.valueOf(parts.group(3)), parts.group(4));
    }
}
