package org.steadwork.account;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.steadwork.account.SignInDelay.Count;

class SignInDelayTest {

    private static final Instant START = Instant.parse("2030-12-16T09:10:00Z");
    private static final SignInDelay DELAY = new SignInDelay(5, Duration.ofMinutes(1));

    @Test
    void waitsDoubleAfterTheFreeTriesUpToTheirBound() {
        Count count = Count.NONE;
        Instant now = START;
        for (int seconds : new int[]{0, 0, 0, 0, 2, 4, 8, 16, 32, 60, 60, 60}) {
            count = DELAY.next(count, now);
            assertEquals(Duration.ofSeconds(seconds), DELAY.waiting(count, now), "after " + count.tries() + " tries");
            now = now.plusSeconds(seconds);
            assertEquals(Duration.ZERO, DELAY.waiting(count, now), "the wait ends");
        }
    }

    @Test
    void anHourWithoutATryStartsAnew() {
        Count count = Count.NONE;
        for (int i = 0; i < 30; i++) {
            count = DELAY.next(count, START);
        }
        assertEquals(6, DELAY.next(new Count(5, START, null), START.plusSeconds(3600)).tries());
        assertEquals(1, DELAY.next(count, START.plusSeconds(3601)).tries());
    }

    @Test
    void manyTriesDoNotOverflow() {
        assertEquals(Duration.ofMinutes(1), DELAY.waiting(DELAY.next(new Count(1_000_000, START, null), START), START));
    }

    @Test
    void aNetworkOfSixBytesCountsAsOneSender() {
        assertEquals("192.0.2.7", SignInThrottle.network("192.0.2.7"));
        assertEquals(SignInThrottle.network("2001:db8:1:2:3:4:5:6"), SignInThrottle.network("2001:db8:1:2::9"));
        assertEquals("2001:db8:1:2:0:0:0:0/64", SignInThrottle.network("2001:db8:1:2::9"));
        assertEquals("none", SignInThrottle.network(null));
    }
}
