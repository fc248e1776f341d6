package org.steadwork.workplace;

import io.quarkus.runtime.Startup;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.content.ReadEarly;
import org.steadwork.workplace.fit.Band;
import org.steadwork.workplace.fit.Criterion;

/** The sizes that the register keeps, read once; a wrong entry stops the start. */
@Startup
@Singleton
class RegisterContent implements ReadEarly {

    private final Map<String, RegisterSize> sizes = new LinkedHashMap<>();

    @Inject
    RegisterContent(WorkplaceContent content) {
        Entry file = Content.yaml("workplace/register.yaml");
        file.text("source");
        for (Entry entry : file.entries("sizes")) {
            String fills = entry.optionalText("fills").orElse(null);
            Band range = fills == null ? FitContent.band(entry, "range")
                    : rangeOf(fills, content).orElseThrow(() -> entry.problem("an assessment has no field '" + fills + "' in mm"));
            RegisterSize size = new RegisterSize(entry.text("key"), entry.constant("of", FurnitureKind.class), entry.text("label"), fills, range);
            if (sizes.put(size.key(), size) != null) {
                throw entry.problem("there are two sizes '" + size.key() + "'");
            }
        }
        for (RegisterSize size : sizes.values()) {
            if (size.upperEnd() != null && !sizes.containsKey(size.upperEnd())) {
                throw file.problem("'" + size.key() + "' has no '" + size.upperEnd() + "'");
            }
        }
    }

    private static Optional<Band> rangeOf(String field, WorkplaceContent content) {
        for (StationMeasure measure : StationMeasure.values()) {
            if (measure.key().equals(field)) {
                return Optional.of(content.text(measure).range());
            }
        }
        return content.criterion(field).filter(c -> CriterionFields.typed(c) && c.unit().equals("mm")).map(Criterion.class::cast)
                .map(c -> new Band(0, CriterionFields.most(c)));
    }

    List<RegisterSize> of(FurnitureKind kind) {
        return sizes.values().stream().filter(size -> size.kind() == kind).toList();
    }
}
