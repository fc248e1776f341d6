package org.steadwork.account;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.steadwork.account.SignInSession.Awaiting;

/** How long a session lives, by a clock that runs as we say. */
class SignInSessionTest {

    private static final Instant START = Instant.parse("2030-12-16T09:10:00Z");
    private static final Duration IDLE = Duration.ofMinutes(30);
    private static final Duration LONGEST = Duration.ofHours(12);
    private final Account account = new Account("somebody", "Some Body", "S. Body", Role.CLINICIAN, START);

    @Test
    void itEndsAfterHalfAnHourWithoutUse() {
        SignInSession session = session(null);
        assertTrue(alive(session, Duration.ofMinutes(30).minusSeconds(1)));
        assertFalse(alive(session, Duration.ofMinutes(30)));
        session.seen(START.plus(Duration.ofMinutes(29)));
        assertTrue(alive(session, Duration.ofMinutes(59).minusSeconds(1)));
        assertFalse(alive(session, Duration.ofMinutes(59)));
    }

    @Test
    void itEndsAfterTwelveHoursHoweverBusy() {
        SignInSession session = session(null);
        for (int minute = 0; minute < 720; minute++) {
            assertTrue(alive(session, Duration.ofMinutes(minute)), "after " + minute + " minutes");
            session.seen(START.plus(Duration.ofMinutes(minute)));
        }
        assertFalse(alive(session, LONGEST));
    }

    @Test
    void useIsNotedOnceAMinuteAndNeverBackwards() {
        SignInSession session = session(null);
        session.seen(START.plusSeconds(60));
        assertEquals(START, session.seenAt());
        session.seen(START.plusSeconds(61));
        assertEquals(START.plusSeconds(61), session.seenAt());
        session.seen(START.minusSeconds(500));
        assertEquals(START.plusSeconds(61), session.seenAt(), "a clock that steps back changes nothing");
    }

    @Test
    void aHalfOpenOneOpensNoPageAndWaitsTenMinutes() {
        SignInSession session = session(Awaiting.CODE);
        assertFalse(alive(session, Duration.ofSeconds(1)));
        assertTrue(session.waitingAt(START.plus(Duration.ofMinutes(10)).minusSeconds(1)));
        assertFalse(session.waitingAt(START.plus(Duration.ofMinutes(10))));
        assertFalse(session(null).waitingAt(START), "an open one waits for nothing");
    }

    @Test
    void anAccountOutOfUseHasNoSession() {
        SignInSession open = session(null);
        SignInSession half = session(Awaiting.ENROLMENT);
        account.activate(false);
        assertFalse(alive(open, Duration.ZERO));
        assertFalse(half.waitingAt(START));
    }

    private boolean alive(SignInSession session, Duration after) {
        return session.aliveAt(START.plus(after), IDLE, LONGEST);
    }

    private SignInSession session(Awaiting awaiting) {
        return new SignInSession("0".repeat(64), 1, account, SignInSession.FirstStep.PASSWORD, awaiting, START, "192.0.2.7", "Firefox on Windows");
    }
}
