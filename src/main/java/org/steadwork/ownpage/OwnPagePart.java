package org.steadwork.ownpage;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CasePart;

/** Says on every page of a case that the patient reported something nobody has looked at. */
@ApplicationScoped
class OwnPagePart implements CasePart {

    @Inject
    OwnReports reports;

    @Override
    public List<Caution> cautions(CaseFile caseFile) {
        long waiting = reports.waiting(caseFile.id());
        return waiting == 0 ? List.of() : List.of(new Caution(false, waiting == 1 ? "1 report by the patient, not looked at" : waiting + " reports by the patient, not looked at",
                "/cases/" + caseFile.id() + "/own-page"));
    }
}
