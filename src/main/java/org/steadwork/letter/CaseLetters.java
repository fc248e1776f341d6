package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Optional;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CasePart;
import org.steadwork.casefile.CaseTab;

/** Says in the navigation of a case how many letters wait for a signature. */
@ApplicationScoped
class CaseLetters implements CasePart {

    @Inject
    Letters letters;

    @Override
    public Optional<String> mark(CaseTab tab, CaseFile caseFile) {
        if (tab != CaseTab.LETTERS) {
            return Optional.empty();
        }
        long drafts = letters.drafts(caseFile.id());
        return drafts == 0 ? Optional.empty() : Optional.of(drafts + (drafts == 1 ? " draft" : " drafts"));
    }
}
