package org.steadwork.letter;

import java.util.Optional;

/**
 * What is known of a file by its fingerprint.
 *
 * @param fingerprint SHA-256 of the file, 64 lower-case hexadecimal digits
 * @param signed      the letter that was signed here with this very fingerprint, if there is one
 * @param withdrawn   why it should no longer be relied on, if so
 * @param words       all of it in a sentence or two
 */
public record Verdict(String fingerprint, Optional<SignedLetter> signed, Optional<String> withdrawn, String words) {

    public boolean known() {
        return signed.isPresent();
    }
}
