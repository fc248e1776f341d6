package org.steadwork.outcome;

import io.quarkus.runtime.Startup;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steadwork.outcome.scoring.Instrument;

/** The instruments the clinic can use, read and checked once when the application starts. */
@Startup
@ApplicationScoped
public class Instruments {

    private final Map<String, Instrument> byKey = InstrumentContent.read();

    /** Returns an instrument by its key; empty for a key that no content names, as an old score may. */
    public Optional<Instrument> find(String key) {
        return Optional.ofNullable(byKey.get(key));
    }

    public List<Instrument> all() {
        return List.copyOf(byKey.values());
    }

    /** Returns the instruments meant for any of the regions, those of a region first, the general ones after. */
    public List<Instrument> forRegions(Collection<String> regions) {
        return all().stream().filter(instrument -> instrument.regions().isEmpty() || regions.stream().anyMatch(instrument::forRegion))
                .sorted(java.util.Comparator.comparing(instrument -> instrument.regions().isEmpty())).toList();
    }
}
