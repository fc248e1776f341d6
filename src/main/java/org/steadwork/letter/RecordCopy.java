package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import org.steadwork.account.Account;
import org.steadwork.casefile.CaseFile;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.disclosure.Recipient;

/** The worker's copy of the record as a PDF, printed from what the case holds now; it is no letter and nothing of it is stored. */
@ApplicationScoped
public class RecordCopy {

    private static final String KIND = "record_copy";

    @Inject
    LetterContent content;

    @Inject
    LetterDesk desks;

    @Inject
    LetterPrinter printer;

    @Inject
    Clock clock;

    /** Prints one case, with everything the worker may see, which is all of it. */
    public byte[] print(CaseFile file, Account author) {
        LetterKind kind = content.kind(KIND);
        Set<InformationCategory> all = Set.of(InformationCategory.values());
        Draft draft = desks.composer().draft(kind, Recipient.WORKER, all, desks.facts(file), desks.values(file, Optional.empty()));
        Letter copy = new Letter(file, 1, KIND, LetterReader.of(file.patient()), draft.texts(), author, Instant.now(clock));
        return printer.copy(copy, kind, desks.composer().sections(kind, Recipient.WORKER, all), author).bytes();
    }
}
