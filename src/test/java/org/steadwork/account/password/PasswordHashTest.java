package org.steadwork.account.password;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.elytron.security.common.BcryptUtil;
import java.util.List;
import org.junit.jupiter.api.Test;

class PasswordHashTest {

    private static final int COST = 4;

    @Test
    void aLongPasswordCountsToItsLastCharacter() {
        String start = "x".repeat(127);
        String stored = PasswordHash.of(start + "a", COST);
        assertTrue(PasswordHash.matches(start + "a", stored));
        assertFalse(PasswordHash.matches(start + "b", stored), "bcrypt alone would take it: it reads 72 bytes");
        assertTrue(BcryptUtil.matches(start + "b", BcryptUtil.bcryptHash(start + "a", COST)), "the limit this is made for");
    }

    @Test
    void anyCharacterCounts() {
        for (String password : List.of("zwölf Äpfel im Körbchen", "пароль из слов", "   spaces at both ends   ", "emoji \uD83D\uDE00\uD83D\uDE00\uD83D\uDE00", "null \u0000 inside it")) {
            String stored = PasswordHash.of(password, COST);
            assertTrue(PasswordHash.matches(password, stored), password);
            assertFalse(PasswordHash.matches(password + " ", stored), password);
            assertFalse(PasswordHash.matches(password.toUpperCase() + "x", stored), password);
        }
    }

    @Test
    void aHashOfBeforeOpensAndIsOutdated() {
        String before = BcryptUtil.bcryptHash("desk-and-daylight", COST);
        assertTrue(PasswordHash.matches("desk-and-daylight", before));
        assertFalse(PasswordHash.matches("desk-and-daylighT", before));
        assertTrue(PasswordHash.outdated(before, COST));
        String longOne = BcryptUtil.bcryptHash("y".repeat(72), COST);
        assertFalse(PasswordHash.matches("y".repeat(73), longOne), "what is cut is not the password");
    }

    @Test
    void anotherCostIsOutdated() {
        String stored = PasswordHash.of("four quiet walls here", COST);
        assertFalse(PasswordHash.outdated(stored, COST));
        assertTrue(PasswordHash.outdated(stored, COST + 1));
        assertNotEquals(stored, PasswordHash.of("four quiet walls here", COST), "each has a salt of its own");
        assertTrue(stored.length() <= 100, "as long as its column");
    }
}
