package org.steadwork.outcome;

import io.quarkus.runtime.Startup;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steadwork.content.ReadEarly;
import org.steadwork.outcome.scoring.Grip;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.RangeOfMotion;

/** The instruments the clinic can use, read and checked once when the application starts. */
@Startup
@ApplicationScoped
public class Instruments implements ReadEarly {

    private final Map<String, Instrument> byKey = InstrumentContent.read();
    private final Grip grip = MeasuredContent.grip();
    private final RangeOfMotion rangeOfMotion = MeasuredContent.rangeOfMotion();

    /** Returns an instrument by its key; empty for a key that no content names, as an old score may. */
    public Optional<Instrument> find(String key) {
        return Optional.ofNullable(byKey.get(key));
    }

    /** Returns grip strength with its norms. */
    public Grip grip() {
        return grip;
    }

    /** Returns the motions that are measured in degrees, with their published values. */
    public RangeOfMotion rangeOfMotion() {
        return rangeOfMotion;
    }

    public List<Instrument> all() {
        return List.copyOf(byKey.values());
    }

    /** True when an instrument is the first in the order of the content for one of the regions: one measure a region is enough to begin with. */
    boolean leads(Instrument instrument, Collection<String> regions) {
        return regions.stream().anyMatch(region -> all().stream().filter(other -> other.regions().contains(region)).findFirst()
                .filter(instrument::equals).isPresent());
    }

    /** Returns the instruments meant for any of the regions, those of a region first, the general ones after. */
    public List<Instrument> forRegions(Collection<String> regions) {
        return all().stream().filter(instrument -> instrument.regions().isEmpty() || regions.stream().anyMatch(instrument::forRegion))
                .sorted(java.util.Comparator.comparing(instrument -> instrument.regions().isEmpty())).toList();
    }
}
