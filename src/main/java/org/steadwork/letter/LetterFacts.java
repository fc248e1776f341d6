package org.steadwork.letter;

import java.util.List;
import org.steadwork.casefile.CaseFile;

/** Tells what a part of the case file has to say in a letter; each feature that can tell has one bean of this type here. */
interface LetterFacts {

    List<LetterFact> of(CaseFile file);
}
