package org.steadwork.web;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** The one place that knows what time it is: everything else has a {@link Clock} injected. */
@ApplicationScoped
class ClockSource {

    /** Makes the clinic's clock; the demo clinic's runs on from a moment of its own. */
    @Produces
    @Singleton
    Clock clock(@ConfigProperty(name = "steadwork.demo-now") Optional<String> demoNow) {
        return demoNow.map(LocalDateTime::parse).<Clock>map(DemoClock::new).orElseGet(Clock::systemDefaultZone);
    }
}
