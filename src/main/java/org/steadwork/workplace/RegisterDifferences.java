package org.steadwork.workplace;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.steadwork.workplace.fit.How;

/** Holds what an assessment measured of desk and chair against what the register knows of them. */
@ApplicationScoped
class RegisterDifferences {

    @Inject
    Register register;

    @Inject
    RegisterContent content;

    /** Returns the differences, the desk's first; one query, none when neither is registered. */
    List<RegisterDifference> of(RecordedWorkplace recorded) {
        List<Furniture> pieces = Stream.of(recorded.assessment().desk(), recorded.assessment().chair()).filter(Objects::nonNull).toList();
        Map<Long, Map<String, FurnitureSize>> sizes = register.sizes(pieces.stream().map(Furniture::id).toList());
        List<RegisterDifference> differences = new ArrayList<>();
        for (Furniture piece : pieces) {
            Map<String, FurnitureSize> stored = sizes.getOrDefault(piece.id(), Map.of());
            measured(recorded, piece.kind()).forEach((size, amount) -> {
                FurnitureSize kept = stored.get(size.key());
                if (kept == null || kept.amount().compareTo(amount) != 0) {
                    differences.add(new RegisterDifference(piece, size.key(), amount, piece.kind().label() + "." + size.key(), size.label(),
                            kept == null ? "not known" : kept.words(), Numerals.mm(amount.doubleValue()),
                            kept == null ? null : Numerals.signedMm(amount.subtract(kept.amount()).doubleValue())));
                }
            });
        }
        return differences;
    }

    /** Returns what an assessment measured of a desk or chair, by the register's sizes; an estimate is not among them. */
    Map<RegisterSize, BigDecimal> measured(RecordedWorkplace recorded, FurnitureKind kind) {
        Map<RegisterSize, BigDecimal> measured = new LinkedHashMap<>();
        for (RegisterSize size : content.of(kind)) {
            Taken taken = size.fills() == null ? null : recorded.taken().get(size.fills());
            if (taken != null && taken.how() == How.MEASURED) {
                measured.put(size, taken.amount());
            }
        }
        return measured;
    }
}
