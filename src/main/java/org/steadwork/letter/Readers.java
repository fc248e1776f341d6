package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.steadwork.casefile.CaseFile;
import org.steadwork.letter.disclosure.Recipient;
import org.steadwork.people.Correspondent;
import org.steadwork.web.Option;

/** The readers a letter of a case can go to: the patient's employer, and the correspondents of the clinic. */
@ApplicationScoped
class Readers {

    @Inject
    EntityManager db;

    /** Returns the readers of these kinds, the patient's own first. */
    List<LetterReader> of(CaseFile file, Collection<Recipient> kinds) {
        List<LetterReader> readers = new ArrayList<>();
        if (kinds.contains(Recipient.CASE_REVIEW)) {
            readers.add(LetterReader.caseMeeting());
        }
        if (kinds.contains(Recipient.WORKER)) {
            readers.add(LetterReader.of(file.patient()));
        }
        if (kinds.contains(Recipient.EMPLOYER) && file.patient().employer() != null) {
            readers.add(LetterReader.of(file.patient().employer()));
        }
        Correspondent own = file.patient().doctor();
        if (own != null && kinds.contains(LetterReader.of(own).kind())) {
            readers.add(LetterReader.of(own));
        }
        db.createQuery("from Correspondent c order by c.name, c.id", Correspondent.class).getResultList().stream()
                .map(LetterReader::of).filter(reader -> kinds.contains(reader.kind()))
                .filter(reader -> own == null || !reader.correspondent().id().equals(own.id())).forEach(readers::add);
        return readers;
    }

    Optional<LetterReader> find(CaseFile file, Collection<Recipient> kinds, String key) {
        return of(file, kinds).stream().filter(reader -> reader.key().equals(key)).findFirst();
    }

    static List<Option> options(List<LetterReader> readers) {
        return readers.stream().map(reader -> new Option(reader.key(), reader.name())).toList();
    }

    /** Adds a correspondent that is not on record yet. */
    LetterReader add(Correspondent.Kind kind, String name, String organisation, String address) {
        Correspondent made = new Correspondent(kind, name);
        made.contactAt(organisation, address, null, null);
        db.persist(made);
        db.flush();
        return LetterReader.of(made);
    }
}
