package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.CaseFile;

/** Letters that were begun and are not signed: those not held up for anything are for today, the others soon. */
@ApplicationScoped
class UnsignedLetters implements Attention {

    @Inject
    EntityManager db;

    @Inject
    LetterContent content;

    @Override
    public List<Entry> entries(LocalDate today) {
        return db.createQuery("from Letter l join fetch l.caseFile c join fetch c.patient where c.closedOn is null"
                + " and not exists (select 1 from SignedLetter s where s.letterId = l.id)", Letter.class).getResultList().stream()
                .map(this::entry).toList();
    }

    private Entry entry(Letter letter) {
        CaseFile file = letter.caseFile();
        Urgency urgency = content.atOnce(letter.kind()) ? Urgency.TODAY : Urgency.SOON;
        LocalDate since = letter.draftedAt().atZone(ZoneId.systemDefault()).toLocalDate();
        return new Entry(file.id(), file.patient().name(), urgency, "Unsigned", since, content.title(letter.kind()) + " is drafted and not signed.",
                "Open the letter", LetterView.path(letter));
    }
}
