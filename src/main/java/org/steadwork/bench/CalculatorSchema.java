package org.steadwork.bench;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.media.Schema.SchemaType;
import org.steadwork.kernel.Answer;

/** Writes the schema of a calculator's inputs; made from the same inputs that are checked, so that the two cannot part. */
final class CalculatorSchema {

    private CalculatorSchema() {
    }

    static Schema of(List<Input> inputs) {
        Schema object = typed(SchemaType.OBJECT).additionalPropertiesBoolean(false);
        for (Input input : inputs) {
            object.addProperty(input.name(), of(input));
            if (!input.mayBeLeftOut()) {
                object.addRequired(input.name());
            }
        }
        return object;
    }

    private static Schema of(Input input) {
        Schema schema = switch (input.kind()) {
            case NUMBER -> typed(SchemaType.NUMBER).minimum(input.least()).maximum(input.most()).multipleOf(BigDecimal.ONE.movePointLeft(input.decimals()));
            case WHOLE -> typed(SchemaType.INTEGER).minimum(input.least()).maximum(input.most());
            case CHOICE -> typed(SchemaType.STRING).enumeration(input.choices().stream().map(choice -> (Object) choice.value()).toList());
            case YES_NO -> typed(SchemaType.BOOLEAN);
            case ANSWER -> typed(SchemaType.STRING).enumeration(answers());
            case TEXT -> typed(SchemaType.STRING).maxLength(input.most().intValue());
            case DATE -> typed(SchemaType.STRING).format("date");
            case TIME -> typed(SchemaType.STRING).pattern("^([01][0-9]|2[0-3]):[0-5][0-9]$");
            case ITEMS -> items(input);
            case ROWS -> typed(SchemaType.ARRAY).minItems(input.least().intValue()).maxItems(input.most().intValue()).items(of(input.columns()));
        };
        if (!input.unit().isEmpty()) {
            schema.addExtension("x-unit", input.unit());
        }
        if (input.start() != null) {
            schema.defaultValue(input.start());
        }
        return schema.title(input.label()).description(words(input));
    }

    /** The schema of a list: each item's own range is narrower than the list's at most, and is said in the description. */
    private static Schema items(Input input) {
        int least = input.items().stream().mapToInt(Item::least).min().orElse(0);
        int most = input.items().stream().mapToInt(Item::most).max().orElse(0);
        Schema one = OASFactory.createSchema().type(List.of(SchemaType.INTEGER, SchemaType.NULL)).minimum(BigDecimal.valueOf(least))
                .maximum(BigDecimal.valueOf(most));
        return typed(SchemaType.ARRAY).maxItems(input.items().size()).items(one);
    }

    private static String words(Input input) {
        StringBuilder words = new StringBuilder(input.hint());
        if (input.kind() == Input.Kind.CHOICE) {
            input.choices().forEach(choice -> words.append(words.isEmpty() ? "" : " ").append(choice.value()).append(": ").append(choice.label())
                    .append(choice.description().isEmpty() ? "." : " (" + choice.description() + ")."));
        }
        if (input.kind() == Input.Kind.ITEMS) {
            input.items().forEach(item -> words.append(words.isEmpty() ? "" : " ").append(item.label()).append(": ").append(item.least()).append(" to ")
                    .append(item.most()).append('.'));
        }
        String allowed = input.allowed();
        return words + (words.isEmpty() ? "" : " ") + allowed.substring(0, 1).toUpperCase(Locale.ROOT) + allowed.substring(1) + ".";
    }

    private static List<Object> answers() {
        return Arrays.stream(Answer.values()).map(answer -> (Object) answer.name().toLowerCase(Locale.ROOT)).toList();
    }

    private static Schema typed(SchemaType type) {
        return OASFactory.createSchema().type(List.of(type));
    }
}
