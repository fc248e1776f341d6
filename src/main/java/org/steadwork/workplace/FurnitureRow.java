package org.steadwork.workplace;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * One desk or chair in a list.
 *
 * @param sizes what it can be set to, in a line
 * @param last who was assessed there last, or null; for clinicians only
 */
record FurnitureRow(Furniture piece, String sizes, Sitter last) {

    private static final Map<String, String> SHORT = Map.of("desk", "top", "seat", "seat", "seat_depth", "depth", "armrest", "armrests", "screen",
            "screen top above the desk", "footrest", "footrest");
    private static final List<String> ORDER = List.of("desk", "screen", "footrest", "seat", "seat_depth", "armrest");

    static FurnitureRow of(Furniture piece, Map<String, FurnitureSize> sizes, Sitter last) {
        List<String> parts = new ArrayList<>();
        for (String range : ORDER) {
            FurnitureSize low = sizes.get(range + "_low");
            FurnitureSize high = sizes.get(range + "_high");
            if (low != null && high != null) {
                boolean fixed = low.amount().compareTo(high.amount()) == 0;
                FurnitureSize step = sizes.get(range + "_step");
                parts.add(SHORT.get(range) + " " + (fixed ? Numerals.mm(low.amount().doubleValue()) + " fixed"
                        : Numerals.number(low.amount().doubleValue(), 0) + " to " + Numerals.mm(high.amount().doubleValue()))
                        + (step == null ? "" : " in steps of " + Numerals.mm(step.amount().doubleValue())));
            }
        }
        return new FurnitureRow(piece, parts.isEmpty() ? "no size known yet" : WorkplaceWords.capital(String.join("; ", parts)), last);
    }
}
