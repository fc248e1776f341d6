package org.steadwork.workplace;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;

/** A desk or chair of the register as typed; a size that was left empty is null. */
record FurnitureForm(String name, String standsOnIt, String note, Map<String, BigDecimal> sizes, SizeKnown how, LocalDate knownOn) {

    static FurnitureForm read(Form form, List<RegisterSize> sizes, LocalDate today) {
        String name = form.requiredText("name", "Name", 120);
        Map<String, BigDecimal> typed = new LinkedHashMap<>();
        for (RegisterSize size : sizes) {
            typed.put(size.key(), form.decimal(size.key(), size.label(), BigDecimal.valueOf(size.range().low()).stripTrailingZeros(),
                    BigDecimal.valueOf(size.range().high()).stripTrailingZeros(), 1, "mm"));
        }
        for (RegisterSize size : sizes) {
            if (size.upperEnd() != null) {
                checkRange(form, size, typed);
            }
        }
        SizeKnown how = form.requiredChoice("how", "How the sizes are known", SizeKnown.class);
        LocalDate on = form.requiredDate("knownOn", "Known since");
        if (on != null && on.isAfter(today)) {
            form.error("knownOn", "The sizes were known today or before. You entered " + Dates.shown(on) + ".");
        }
        return new FurnitureForm(name, form.text("standsOnIt", 500), form.text("note", 500), typed, how, on);
    }

    private static void checkRange(Form form, RegisterSize low, Map<String, BigDecimal> typed) {
        String high = low.upperEnd();
        BigDecimal from = typed.get(low.key());
        BigDecimal to = typed.get(high);
        boolean bothRead = form.error(low.key()) == null && form.error(high) == null;
        if (bothRead && (from == null) != (to == null)) {
            form.error(from == null ? low.key() : high, "Enter both ends of the range; the same number twice when it is fixed.");
        } else if (from != null && to != null && from.compareTo(to) > 0) {
            form.error(high, "The upper end must not be below the lower one. You entered " + from.toPlainString() + " and " + to.toPlainString() + " mm.");
        }
    }

    static Form fresh(FurnitureKind kind, LocalDate today) {
        return Form.empty().with("kind", kind.label()).with("how", "measured").with("knownOn", Dates.shown(today)).with("version", "");
    }

    static Form show(Furniture piece, Map<String, FurnitureSize> sizes, LocalDate today) {
        Form form = fresh(piece.kind(), today).with("version", piece.version()).with("name", piece.name()).with("standsOnIt", piece.standsOnIt())
                .with("note", piece.note());
        sizes.forEach((key, size) -> form.with(key, size.amount().stripTrailingZeros().toPlainString()));
        return form;
    }
}
