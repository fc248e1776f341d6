package org.steadwork.exchange.report;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Counts the requests of each token in the running minute; kept in memory, so it holds for one server. */
@ApplicationScoped
class RateBook {

    static final int MOST_A_MINUTE = 60;
    private static final Duration MINUTE = Duration.ofMinutes(1);

    private record Page(Instant began, int requests) {
    }

    @Inject
    Clock clock;

    private final Map<Long, Page> pages = new ConcurrentHashMap<>();

    /** Notes a request; returns the seconds to wait when there were too many, else 0. */
    long secondsToWait(long tokenId) {
        Instant now = Instant.now(clock);
        Page page = pages.merge(tokenId, new Page(now, 1), (old, fresh) -> old.began().plus(MINUTE).isAfter(now) ? new Page(old.began(), old.requests() + 1) : fresh);
        return page.requests() <= MOST_A_MINUTE ? 0 : Math.max(1, Duration.between(now, page.began().plus(MINUTE)).toSeconds());
    }
}
