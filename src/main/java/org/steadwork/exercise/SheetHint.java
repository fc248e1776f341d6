package org.steadwork.exercise;

import java.util.Optional;
import org.steadwork.casefile.CaseFile;

/** Lets the feature of the patient's own page say on the sheet how that page is reached. */
public interface SheetHint {

    /** One or two sentences for the patient; empty when there is no page to reach. */
    Optional<String> of(CaseFile file);
}
