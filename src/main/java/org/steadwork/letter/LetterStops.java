package org.steadwork.letter;

import java.util.Optional;
import org.steadwork.casefile.CaseFile;

/** Tells whether something open in the case stands in the way of signing a kind of letter, and what. */
interface LetterStops {

    Optional<String> stop(CaseFile file, LetterKind kind);
}
