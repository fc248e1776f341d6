package org.steadwork.letter;

import java.util.List;
import java.util.Map;
import org.steadwork.casefile.CaseFile;

/** Tells what a part of the case file has to say in a letter; each feature that can tell has one bean of this type here. */
interface LetterFacts {

    List<LetterFact> of(CaseFile file);

    /** Returns values that the first words of a section may name, see {@link CaseValues#NAMES}; what is not known is missing. */
    default Map<String, String> values(CaseFile file) {
        return Map.of();
    }
}
