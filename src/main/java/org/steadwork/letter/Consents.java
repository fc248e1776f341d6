package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.steadwork.account.Account;
import org.steadwork.casefile.CaseFile;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.people.Correspondent;
import org.steadwork.people.Employer;

/** The consents to disclose of the cases. For one reader the one given last counts, and no other. */
@ApplicationScoped
public class Consents {

    @Inject
    EntityManager db;

    @Inject
    LetterContent content;

    /** Returns the consents of a case, the one given last first. */
    List<Consent> ofCase(long caseId) {
        return db.createQuery("from Consent c left join fetch c.correspondent left join fetch c.employer where c.caseFile.id = ?1"
                + " order by c.givenOn desc, c.id desc", Consent.class).setParameter(1, caseId).getResultList();
    }

    /** Returns the consent that counts for a reader, in force or not. */
    Optional<Consent> latest(CaseFile file, LetterReader reader) {
        return ofCase(file.id()).stream().filter(consent -> consent.isFor(reader)).findFirst();
    }

    Optional<Consent> find(long caseId, long id) {
        return db.createQuery("from Consent c where c.caseFile.id = ?1 and c.id = ?2", Consent.class).setParameter(1, caseId)
                .setParameter(2, id).getResultStream().findFirst();
    }

    void add(Consent consent) {
        db.persist(consent);
    }

    /** Records a consent to write to an employer, spoken and noted, with the words the consent page shows. */
    public void record(CaseFile file, Employer employer, LocalDate given, LocalDate until, Set<InformationCategory> ticked, Account by) {
        record(file, LetterReader.of(employer), given, until, ticked, by);
    }

    /** Records a consent to write to a doctor, specialist or insurer, spoken and noted, with the words the consent page shows. */
    public void record(CaseFile file, Correspondent correspondent, LocalDate given, LocalDate until, Set<InformationCategory> ticked, Account by) {
        record(file, LetterReader.of(correspondent), given, until, ticked, by);
    }

    private void record(CaseFile file, LetterReader reader, LocalDate given, LocalDate until, Set<InformationCategory> ticked, Account by) {
        String shown = ConsentOffer.of(content.matrix(), reader, file.patient().name()).shownText();
        add(new Consent(file, reader, Consent.How.SPOKEN, given, until, ticked, shown, by));
    }
}
