package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.CaseFile;
import org.steadwork.web.Dates;

/** Sent letters whose answer was hoped for by a day that is over; an answer, or the end of waiting, takes them off. */
@ApplicationScoped
class AnswersAwaited implements Attention {

    @Inject
    EntityManager db;

    @Inject
    LetterContent content;

    @Override
    public List<Entry> entries(LocalDate today) {
        return db.createQuery("from LetterEvent e join fetch e.letter l join fetch l.caseFile c join fetch c.patient left join fetch l.correspondent"
                        + " left join fetch l.employer where e.kind = ?1 and e.replyBy < ?2"
                        + " and not exists (select 1 from LetterEvent a where a.letter = l and a.id > e.id and a.kind in ?3)"
                        + " and not exists (select 1 from LetterWithdrawal w where w.letterId = l.id)", LetterEvent.class)
                .setParameter(1, LetterEvent.Kind.SENT).setParameter(2, today)
                .setParameter(3, List.of(LetterEvent.Kind.SENT, LetterEvent.Kind.ANSWERED, LetterEvent.Kind.NO_ANSWER)).getResultList().stream()
                .map(this::entry).toList();
    }

    private Entry entry(LetterEvent sent) {
        Letter letter = sent.letter();
        CaseFile file = letter.caseFile();
        return new Entry(file.id(), file.patient().name(), Urgency.TODAY, "No answer", sent.replyBy(), content.title(letter.kind()) + " to "
                + letter.reader().name() + ": an answer was hoped for by " + Dates.shown(sent.replyBy()) + ".", "Ask for the answer",
                LetterView.path(letter)).marked("near");
    }
}
