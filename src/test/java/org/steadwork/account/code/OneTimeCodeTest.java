package org.steadwork.account.code;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class OneTimeCodeTest {

    private static final Map<String, Integer> KEY_BYTES = Map.of("HmacSHA1", 20, "HmacSHA256", 32, "HmacSHA512", 64);
    private static final byte[] KEY = key(20);

    @ParameterizedTest(name = "{1} at {0}")
    @CsvFileSource(resources = "rfc-6238-appendix-b.csv")
    void theCodesAreThoseOfTheStandard(long seconds, String algorithm, String code) {
        assertEquals(code, OneTimeCode.of(key(KEY_BYTES.get(algorithm)), OneTimeCode.step(Instant.ofEpochSecond(seconds)), 8, algorithm));
    }

    /** Source: RFC 4226, Appendix D: the first ten six-digit codes of the same key. */
    @Test
    void sixDigitsAreThoseOfTheStandardToo() {
        List<String> codes = List.of("755224", "287082", "359152", "969429", "338314", "254676", "287922", "162583", "399871", "520489");
        for (int step = 0; step < codes.size(); step++) {
            assertEquals(codes.get(step), OneTimeCode.of(KEY, step));
        }
    }

    @Test
    void aCodeIsTakenOneStepEitherWayAndNoFurther() {
        Instant now = Instant.ofEpochSecond(30 * 1000L);
        for (long step = 997; step <= 1003; step++) {
            OptionalLong found = OneTimeCode.matching(KEY, OneTimeCode.of(KEY, step), now, -1);
            assertEquals(Math.abs(step - 1000) <= 1 ? OptionalLong.of(step) : OptionalLong.empty(), found, "step " + step);
        }
    }

    @Test
    void aStepThatWasTakenIsNotTakenAgainNorOneBeforeIt() {
        Instant now = Instant.ofEpochSecond(30 * 1000L);
        assertTrue(OneTimeCode.matching(KEY, OneTimeCode.of(KEY, 1000), now, 1000).isEmpty());
        assertTrue(OneTimeCode.matching(KEY, OneTimeCode.of(KEY, 999), now, 1000).isEmpty());
        assertEquals(OptionalLong.of(1001), OneTimeCode.matching(KEY, OneTimeCode.of(KEY, 1001), now, 1000));
    }

    @Test
    void spacesAreReadOverAndNonsenseIsWrong() {
        Instant now = Instant.ofEpochSecond(30 * 1000L);
        String code = OneTimeCode.of(KEY, 1000);
        assertEquals(OptionalLong.of(1000), OneTimeCode.matching(KEY, " " + code.substring(0, 3) + " " + code.substring(3), now, -1));
        for (String typed : List.of("", "000000", code + "0", code.substring(1), "abcdef", "\u0661\u0662\u0663\u0664\u0665\u0666", "x".repeat(50_000))) {
            assertTrue(typed.equals(code) || OneTimeCode.matching(KEY, typed, now, -1).isEmpty(), typed);
        }
    }

    private static byte[] key(int bytes) {
        return "1234567890".repeat(7).substring(0, bytes).getBytes(StandardCharsets.US_ASCII);
    }
}
