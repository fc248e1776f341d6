package org.steadwork.account.code;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import org.junit.jupiter.api.Test;

class SecretBoxTest {

    private static final byte[] SECRET = "twenty bytes of key!".getBytes(StandardCharsets.US_ASCII);
    private static final SecretBox BOX = new SecretBox("a clinic's own words, long enough for a key");

    @Test
    void whatIsClosedOpensForItsOwnerAlone() {
        String kept = BOX.close(SECRET, "account 1");
        assertArrayEquals(SECRET, BOX.open(kept, "account 1"));
        assertThrows(IllegalStateException.class, () -> BOX.open(kept, "account 2"));
        assertThrows(IllegalStateException.class, () -> new SecretBox("another clinic's words, just as long as those").open(kept, "account 1"));
        assertThrows(IllegalStateException.class, () -> new SecretBox(null).open(kept, "account 1"));
        assertFalse(kept.contains(Base64.getEncoder().encodeToString(SECRET)));
        assertNotEquals(kept, BOX.close(SECRET, "account 1"), "a nonce of its own each time");
        assertTrue(kept.length() <= 300, "as long as its column");
    }

    @Test
    void aChangedByteDoesNotOpen() {
        byte[] bytes = Base64.getDecoder().decode(BOX.close(SECRET, "account 1").substring(3));
        for (int i = 0; i < bytes.length; i++) {
            byte[] changed = bytes.clone();
            changed[i] ^= 1;
            assertThrows(IllegalStateException.class, () -> BOX.open("g1:" + Base64.getEncoder().encodeToString(changed), "account 1"));
        }
    }

    @Test
    void whatWasKeptBeforeThereWasAKeyStillOpens() {
        String kept = new SecretBox(null).close(SECRET, "account 1");
        assertTrue(kept.startsWith("p1:"), "it says that it is not encrypted");
        assertArrayEquals(SECRET, BOX.open(kept, "account 1"));
        assertThrows(IllegalArgumentException.class, () -> new SecretBox("short"));
    }
}
