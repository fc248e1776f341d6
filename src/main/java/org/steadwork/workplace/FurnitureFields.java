package org.steadwork.workplace;

import java.util.List;
import java.util.Map;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/** The form of a desk or chair, ready to be shown; {@code piece} is null while it is added. */
record FurnitureFields(Form form, Room room, Furniture piece, FurnitureKind kind, String action, List<Field> sizes) {

    /** One size; {@code known} says what is stored with how and when, or is null. */
    record Field(String key, String label, String known) {
    }

    private static final List<Option> HOW = Option.of(SizeKnown.class, SizeKnown::label);

    static FurnitureFields of(Form form, Room room, Furniture piece, FurnitureKind kind, String action, List<RegisterSize> sizes,
            Map<String, FurnitureSize> stored) {
        return new FurnitureFields(form, room, piece, kind, action, sizes.stream().map(size -> new Field(size.key(), size.label(),
                stored.containsKey(size.key()) ? "In the register: " + stored.get(size.key()).words() : null)).toList());
    }

    public List<Option> hows() {
        return HOW;
    }

    public boolean desk() {
        return kind == FurnitureKind.DESK;
    }
}
