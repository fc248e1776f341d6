package org.steadwork.account.password;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.steadwork.content.Content;

/** The expectations are of our own making: what people are known to choose, written down before the rule. */
class WeakPasswordsTest {

    private static final WeakPasswords WEAK = new WeakPasswords(new HashSet<>(Content.yaml("accounts/weak-words.yaml").texts("words")));
    private static final Set<String> OWN = Set.of("tamsin", "Tamsin Okoro-Vale", "Alderwick Occupational Physiotherapy");

    @ParameterizedTest
    @ValueSource(strings = {"password1234", "Password2026!", "P@ssw0rd2026!", "passwordpassword", "welcome12345", "Welcome-2-Steadwork", "qwertyuiop12",
        "qwertzuiop123", "1q2w3e4r5t6y", "123456789012", "abcdefghijkl", "aaaaaaaaaaaa", "abcabcabcabc", "iloveyou1234", "letmeinplease", "Summer2026!!",
        "winterwinter", "monkeydragon", "changeme1234", "Tamsin-123456", "Alderwick2026", "physiotherapy", "0Physiotherapist0", "!!!!!!!!!!!!",
        "adminadmin123", "T4ms1n2026!!", "football12345", "January-2026", "asdfghjkl123"})
    void whatManyChooseIsRefused(String password) {
        assertNotNull(WEAK.reason(password, OWN), password);
    }

    @ParameterizedTest
    @ValueSource(strings = {"desk-and-daylight", "correct horse battery staple", "kettle violin harbour twelve", "zkq7-wm2x-9fph", "a long test password",
        "Brackish gravel hums", "тихий вечер на берегу", "Vier stille Wände im Wald", "tamsin hates rhubarb crumble"})
    void whatTheyDoNotIsTaken(String password) {
        assertNull(WEAK.reason(password, OWN), password);
    }

    @Test
    void theReasonSaysWhatIsWrong() {
        assertEquals("It is made of digits alone.", WEAK.reason("3141592653589", OWN));
        assertEquals("It repeats one short piece.", WEAK.reason("xyzxyzxyzxyzxy", OWN));
    }

    @Test
    void aVeryLongOneIsJudgedInTime() {
        assertNotNull(WEAK.reason("password".repeat(8000), OWN));
    }
}
