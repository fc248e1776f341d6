package org.steadwork.workplace;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/**
 * The registered desks and chairs that an assessment can start from.
 *
 * @param desks offered at the patient's employer
 * @param known what the register knows of the chosen ones, by field of the form
 * @param told what of it was only told, in mm
 */
record RegisteredPlace(List<Option> desks, List<Option> chairs, List<Furniture> offered, Map<String, String> known, Map<String, String> amounts, Map<String, BigDecimal> told) {

    static RegisteredPlace of(Form form, List<Furniture> offered, Map<Long, Map<String, FurnitureSize>> sizes, RegisterContent content) {
        Map<String, String> known = new HashMap<>();
        Map<String, String> amounts = new HashMap<>();
        Map<String, BigDecimal> told = new HashMap<>();
        for (Furniture piece : offered) {
            String field = piece.kind().label();
            if (!form.is(field, String.valueOf(piece.id()))) {
                continue;
            }
            Map<String, FurnitureSize> stored = sizes.getOrDefault(piece.id(), Map.of());
            for (RegisterSize size : content.of(piece.kind())) {
                FurnitureSize kept = stored.get(size.key());
                if (kept != null && size.fills() != null) {
                    known.put(size.fills(), kept.words());
                    amounts.put(size.fills(), plain(kept));
                    fixed(size, kept, stored, known, amounts);
                    if (kept.how() == SizeKnown.TOLD) {
                        told.put(size.fills(), kept.amount());
                        // what cannot be set stands today as it was told
                        if (size.settingField() != null && amounts.containsKey(size.settingField())) {
                            told.put(size.settingField(), kept.amount());
                        }
                    }
                }
            }
        }
        return new RegisteredPlace(options(offered, FurnitureKind.DESK), options(offered, FurnitureKind.CHAIR), offered, known, amounts, told);
    }

    /** What cannot be set stands today as it always stands. */
    private static void fixed(RegisterSize size, FurnitureSize low, Map<String, FurnitureSize> stored, Map<String, String> known, Map<String, String> amounts) {
        FurnitureSize high = size.settingField() == null ? null : stored.get(size.upperEnd());
        boolean aboveTheDesk = "screen_low".equals(size.fills());
        if (high != null && !aboveTheDesk && high.amount().compareTo(low.amount()) == 0) {
            known.put(size.settingField(), "fixed, " + low.words());
            amounts.put(size.settingField(), plain(low));
        }
    }

    private static String plain(FurnitureSize size) {
        return size.amount().stripTrailingZeros().toPlainString();
    }

    private static List<Option> options(List<Furniture> offered, FurnitureKind kind) {
        return offered.stream().filter(piece -> piece.kind() == kind).map(piece -> new Option(String.valueOf(piece.id()), piece.place())).toList();
    }

    /** Puts what the register knows into the fields that are empty; what was typed stays. */
    void fill(Form form) {
        amounts.forEach((field, amount) -> {
            if (!form.has(field)) {
                form.with(field, amount);
            }
        });
    }

    /** Reads the chosen desk or chair; one that is not offered is an error at its field. */
    Furniture chosen(Form form, FurnitureKind kind) {
        String field = kind.label();
        if (!form.has(field)) {
            return null;
        }
        Furniture found = offered.stream().filter(piece -> piece.kind() == kind && form.is(field, String.valueOf(piece.id()))).findFirst().orElse(null);
        if (found == null) {
            form.error(field, "Choose one of the " + kind.label() + "s offered, or none.");
        }
        return found;
    }
}
