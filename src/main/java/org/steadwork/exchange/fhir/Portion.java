package org.steadwork.exchange.fhir;

import java.time.LocalDate;
import java.util.Optional;
import org.steadwork.letter.CaseCorrespondence.ConsentGiven;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.disclosure.Matrix;
import org.steadwork.letter.disclosure.Reader;
import org.steadwork.letter.disclosure.Recipient;

/**
 * What one reader may have of a case: the worker everything, anybody else the kinds of information that the consent in force and the
 * table of disclosure allow.
 *
 * @param readerKey {@code worker}, or the stable name of the reader of a consent
 * @param name who it is made for, in words
 */
public record Portion(Reader reader, Matrix matrix, String readerKey, String name) {

    static final String WORKER = "worker";

    /** Everything, for the worker. */
    public static Portion own(Matrix matrix, String name, LocalDate day) {
        return new Portion(Reader.of(Recipient.WORKER, Optional.empty(), day), matrix, WORKER, name);
    }

    /** What a consent allows today. */
    public static Portion of(ConsentGiven consent, Matrix matrix) {
        return new Portion(consent.reader(), matrix, consent.readerKey(), consent.name());
    }

    public boolean isOwn() {
        return readerKey.equals(WORKER);
    }

    public boolean has(InformationCategory category) {
        return matrix.decide(category, reader).allowed();
    }
}
