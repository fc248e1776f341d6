package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.steadwork.account.Account;
import org.steadwork.casefile.CaseFile;
import org.steadwork.letter.disclosure.Gate;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.disclosure.Matrix;
import org.steadwork.letter.disclosure.Reader;
import org.steadwork.letter.disclosure.Recipient;
import org.steadwork.web.BrokenRecordException;

/** What other features may take of a case's letters: the signed files, who may be told what, and a printed copy of the record. */
@ApplicationScoped
public class CaseCorrespondence {

    private static final String COPY_OF_THE_RECORD = "record_copy";

    /**
     * A letter as it was signed.
     *
     * @param readerKey stable name of its reader, the same as in {@link ConsentGiven}
     * @param replaced true when it should no longer be relied on
     */
    public record SignedCopy(long id, String reference, String kind, String title, String readerKey, String recipientName, Instant signedAt, String signedBy,
            String basis, String sha256, int pages, byte[] pdf, boolean replaced) {
    }

    /**
     * A consent to disclose.
     *
     * @param withdrawnOn null while it was not withdrawn
     * @param counts true for the one given last to its reader, which alone decides
     * @param reader what the reader may have today by it
     */
    public record ConsentGiven(long id, String readerKey, Recipient kind, String name, String how, LocalDate givenOn, LocalDate holdsUntil, LocalDate withdrawnOn,
            boolean counts, Reader reader) {

        public boolean inForce() {
            return counts && reader.gate() == Gate.IN_FORCE;
        }
    }

    @Inject
    EntityManager db;

    @Inject
    Consents consents;

    @Inject
    LetterContent content;

    @Inject
    LetterDesk desk;

    @Inject
    LetterPrinter printer;

    @Inject
    Clock clock;

    /** Returns the table of who may be told what. */
    public Matrix matrix() {
        return content.matrix();
    }

    /** Returns the signed letters of a case with their files, the earliest first; a file that was tampered with is refused. */
    public List<SignedCopy> signed(long caseId) {
        return db.createQuery("select l, s, w from Letter l join SignedLetter s on s.letterId = l.id join fetch s.signedBy left join fetch l.employer"
                + " left join fetch l.correspondent join fetch l.patient left join LetterWithdrawal w on w.letterId = l.id where l.caseFile.id = ?1"
                + " order by s.signedAt, l.id", Object[].class).setParameter(1, caseId).getResultList().stream()
                .map(row -> copy((Letter) row[0], (SignedLetter) row[1], row[2] != null)).toList();
    }

    private SignedCopy copy(Letter letter, SignedLetter signed, boolean withdrawn) {
        if (!signed.untouched()) {
            throw new BrokenRecordException("The stored file of letter " + signed.reference() + " is not the one that was signed",
                    "Its fingerprint differs, so it must not be relied on. Ask whoever it was sent to for the copy they have.");
        }
        return new SignedCopy(letter.id(), signed.reference(), letter.kind(), content.title(letter.kind()), letter.reader().key(), signed.recipientName(),
                signed.signedAt(), signed.signedBy().fullName(), signed.basis(), signed.sha256(), signed.pages(), signed.pdf(), withdrawn);
    }

    /** Returns the consents of a case, the one given last first. */
    public List<ConsentGiven> consents(long caseId) {
        Set<String> seen = new HashSet<>();
        LocalDate today = LocalDate.now(clock);
        return consents.ofCase(caseId).stream().map(consent -> new ConsentGiven(consent.id(), consent.readerKey(), consent.recipientKind(), consent.recipientName(),
                consent.givenHow().label(), consent.givenOn(), consent.holdsUntil(), consent.withdrawnOn(), seen.add(consent.readerKey()),
                Reader.of(consent.recipientKind(), Optional.of(consent.given()), today))).toList();
    }

    /**
     * What the case holds in the words of letters, one kind of information each.
     *
     * @param source the part of the case it comes from
     */
    public record InWords(String information, String words, String source) {
    }

    /** Returns everything the case holds, in words, of every kind of information. */
    public List<InWords> inWords(CaseFile file) {
        return desk.facts(file).stream().map(fact -> new InWords(content.matrix().label(fact.category()), fact.text(), fact.because())).toList();
    }

    /** Prints everything about the worker in this case, for the worker; nothing is stored, and it is not a signed letter. */
    public byte[] copyOfTheRecord(CaseFile file, Account by) {
        LetterKind kind = content.kind(COPY_OF_THE_RECORD);
        LetterReader worker = LetterReader.of(file.patient());
        Set<InformationCategory> all = Set.of(InformationCategory.values());
        Draft draft = desk.composer().draft(kind, worker.kind(), all, desk.facts(file), desk.values(file, Optional.empty()));
        Letter letter = new Letter(file, 0, kind.key(), worker, draft.texts(), by, Instant.now(clock));
        return printer.draft(letter, kind, desk.composer().sections(kind, worker.kind(), all), by).bytes();
    }
}
