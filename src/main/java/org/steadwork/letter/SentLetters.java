package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.steadwork.letter.disclosure.Recipient;

/** Tells other features which letters went to employers, and whether they were answered. */
@ApplicationScoped
public class SentLetters {

    /** A letter that was sent, with the day it was sent last. */
    public record Sent(long caseId, String title, LocalDate on, boolean answered) {
    }

    @Inject
    EntityManager db;

    @Inject
    LetterContent content;

    /** Returns what was sent to employers in all open cases and not withdrawn, in one query; the earliest first. */
    public List<Sent> toEmployersInOpenCases() {
        return sent("l.caseFile.closedOn is null", null);
    }

    /** Returns what was sent to the employer in a case and not withdrawn; the earliest first. */
    public List<Sent> toEmployer(long caseId) {
        return sent("l.caseFile.id = ?4", caseId);
    }

    private List<Sent> sent(String which, Long caseId) {
        var query = db.createQuery("select l.caseFile.id, l.kind, max(e.happenedOn), (select count(a) from LetterEvent a where a.letter = l and a.kind in ?3)"
                + " from LetterEvent e join e.letter l where e.kind = ?1 and l.recipientKind = ?2 and " + which
                + " and not exists (select 1 from LetterWithdrawal w where w.letterId = l.id)"
                + " group by l.id, l.caseFile.id, l.kind order by max(e.happenedOn), l.id", Object[].class)
                .setParameter(1, LetterEvent.Kind.SENT).setParameter(2, Recipient.EMPLOYER).setParameter(3, List.of(LetterEvent.Kind.ANSWERED));
        if (caseId != null) {
            query.setParameter(4, caseId);
        }
        List<Sent> rows = new ArrayList<>();
        query.getResultList().forEach(row -> rows.add(new Sent((Long) row[0], content.title((String) row[1]), (LocalDate) row[2], (Long) row[3] > 0)));
        return rows;
    }
}
