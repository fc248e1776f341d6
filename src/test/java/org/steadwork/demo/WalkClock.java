package org.steadwork.demo;

import jakarta.enterprise.inject.Alternative;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;

/** The clinic's clock while a case is walked: it stands where the walk puts it. */
@Alternative
@Singleton
public class WalkClock extends Clock {

    private volatile Instant now = LocalDateTime.parse("2030-01-01T08:00").atZone(ZoneId.systemDefault()).toInstant();

    void moveTo(LocalDateTime moment) {
        now = moment.atZone(getZone()).toInstant();
    }

    @Override
    public ZoneId getZone() {
        return ZoneId.systemDefault();
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return zone.equals(getZone()) ? this : Clock.fixed(now, zone);
    }

    @Override
    public Instant instant() {
        return now;
    }
}
