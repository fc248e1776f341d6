package org.steadwork.web;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;

/** The demo clinic's clock: it runs on from a moment of its own, and goes back in time only while the invented cases are loaded. */
public final class DemoClock extends Clock {

    private final Clock real = Clock.systemDefaultZone();
    private final Duration ahead;
    private volatile Duration shift;

    DemoClock(LocalDateTime start) {
        this.ahead = Duration.between(real.instant(), start.atZone(real.getZone()).toInstant());
        this.shift = ahead;
    }

    /** Lets the clock run from another moment, until {@link #goHome}. */
    public void runFrom(Instant moment) {
        shift = Duration.between(real.instant(), moment);
    }

    /** Lets the clock run as if it had never been moved. */
    public void goHome() {
        shift = ahead;
    }

    @Override
    public Instant instant() {
        return real.instant().plus(shift);
    }

    @Override
    public ZoneId getZone() {
        return real.getZone();
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return Clock.offset(Clock.system(zone), shift);
    }
}
