package org.steadwork.account;

import java.time.Duration;
import java.time.Instant;

/**
 * How waits grow: {@code free} tries without any, then 2, 4, 8 … seconds after each, up to {@code longest}; an hour without a try
 * starts the count anew.
 */
record SignInDelay(int free, Duration longest) {

    private static final Duration FORGOTTEN_AFTER = Duration.ofHours(1);
    private static final int LARGEST_POWER = 20;

    /** @param nextAt before which no try is taken, null when there is no wait */
    record Count(int tries, Instant lastAt, Instant nextAt) {

        static final Count NONE = new Count(0, null, null);
    }

    /** Returns how long to wait, zero when a try may be made. */
    Duration waiting(Count count, Instant now) {
        return count.nextAt() == null || forgotten(count, now) || !now.isBefore(count.nextAt()) ? Duration.ZERO : Duration.between(now, count.nextAt());
    }

    /** Returns the count after one try more. */
    Count next(Count count, Instant now) {
        int tries = forgotten(count, now) ? 1 : count.tries() + 1;
        if (tries < free) {
            return new Count(tries, now, null);
        }
        Duration wait = Duration.ofSeconds(1L << Math.min(tries - free + 1, LARGEST_POWER));
        return new Count(tries, now, now.plus(wait.compareTo(longest) < 0 ? wait : longest));
    }

    private static boolean forgotten(Count count, Instant now) {
        return count.lastAt() == null || now.isAfter(count.lastAt().plus(FORGOTTEN_AFTER));
    }
}
