package org.steadwork.meeting;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CasePart;

/** Says on every page of a case that a meeting advised something the treating clinician has not answered. */
@ApplicationScoped
class MeetingPart implements CasePart {

    @Inject
    EntityManager db;

    @Override
    public List<Caution> cautions(CaseFile caseFile) {
        long waiting = db.createQuery("select count(d) from Decision d where d.caseFile = ?1 and not exists (select 1 from DecisionAnswer a"
                + " where a.decisionId = d.id)", Long.class).setParameter(1, caseFile).getSingleResult();
        return waiting == 0 ? List.of() : List.of(new Caution(false, waiting == 1 ? "1 decision of a review meeting to answer"
                : waiting + " decisions of review meetings to answer", "/cases/" + caseFile.id() + "/meetings"));
    }
}
