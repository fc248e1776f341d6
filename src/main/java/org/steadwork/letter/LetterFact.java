package org.steadwork.letter;

import java.util.Objects;
import org.steadwork.letter.disclosure.InformationCategory;

/**
 * Something the case file says that a letter may take up.
 *
 * @param category what kind of information it is; decides whether the reader may have it
 * @param section  key of the section it belongs in, if the letter has one
 * @param text     the words, ready to be printed; for a table one row, cells parted by tabs
 * @param because  where it comes from, for the clinician; never printed
 */
record LetterFact(InformationCategory category, String section, String text, String because) {
    LetterFact {
        Objects.requireNonNull(category, "category");
        Objects.requireNonNull(section, "section");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(because, "because");
    }
}
