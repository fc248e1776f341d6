package org.steadwork.web;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.time.Clock;

/** The one place that knows what time it is: everything else has a {@link Clock} injected. */
@ApplicationScoped
class ClockSource {

    @Produces
    @Singleton
    Clock clock() {
        return Clock.systemDefaultZone();
    }
}
