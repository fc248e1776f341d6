package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The letters of the cases, drafts and signed ones. */
@ApplicationScoped
class Letters {

    @Inject
    EntityManager db;

    /** Returns one letter of a case with everything its page shows. */
    Optional<Letter> numbered(long caseId, int number) {
        return db.createQuery("from Letter l join fetch l.caseFile c join fetch c.clinician join fetch l.patient p left join fetch p.employer left join fetch l.replaces"
                        + " left join fetch p.doctor left join fetch l.correspondent left join fetch l.employer join fetch l.draftedBy join fetch l.savedBy"
                        + " where c.id = ?1 and l.number = ?2", Letter.class)
                .setParameter(1, caseId).setParameter(2, number).getResultStream().findFirst();
    }

    /** Returns one letter once nobody else is signing or writing it; later callers wait for this transaction. */
    Optional<Letter> numberedForChange(long caseId, int number) {
        db.createNativeQuery("select id from letter where case_file_id = ?1 and number = ?2 for update").setParameter(1, caseId)
                .setParameter(2, number).getResultList();
        return numbered(caseId, number);
    }

    /** Returns the letters of a case, the newest first, each with what is known of its signature. */
    List<LetterRow> ofCase(long caseId) {
        return db.createQuery("select l.number, l.kind, coalesce(s.recipientName, e.contactName, c.name), coalesce(e.name, c.organisation, case when l.recipientKind = org.steadwork.letter.disclosure.Recipient.CASE_REVIEW then 'Case meeting' else 'The worker' end), l.savedAt,"
                        + " sv.displayName, s.signedAt, sg.displayName, s.pages, w.withdrawnAt from Letter l left join l.employer e left join l.correspondent c join l.savedBy sv"
                        + " left join SignedLetter s on s.letterId = l.id left join s.signedBy sg left join LetterWithdrawal w on w.letterId = l.id"
                        + " where l.caseFile.id = ?1 order by l.number desc", LetterRow.class)
                .setParameter(1, caseId).getResultList();
    }

    /** Returns the number of the draft of a kind to a reader that was begun last and is not signed. */
    Optional<Integer> openDraft(long caseId, String kind, LetterReader reader) {
        return db.createQuery("select l.number from Letter l where l.caseFile.id = ?1 and l.kind = ?2 and (l.employer = ?3 or l.correspondent = ?4)"
                        + " and not exists (select 1 from SignedLetter s where s.letterId = l.id) order by l.number desc", Integer.class)
                .setParameter(1, caseId).setParameter(2, kind).setParameter(3, reader.employer()).setParameter(4, reader.correspondent())
                .setMaxResults(1).getResultStream().findFirst();
    }

    long drafts(long caseId) {
        return db.createQuery("select count(*) from Letter l left join SignedLetter s on s.letterId = l.id where l.caseFile.id = ?1"
                + " and s.letterId is null", Long.class).setParameter(1, caseId).getSingleResult();
    }

    /** Takes the patient's next letter number; whoever else wants one waits for this transaction. */
    int nextNumber(long patientId) {
        db.createNativeQuery("select id from patient where id = ?1 for update").setParameter(1, patientId).getResultList();
        return db.createQuery("select coalesce(max(l.number), 0) from Letter l where l.patient.id = ?1", Integer.class)
                .setParameter(1, patientId).getSingleResult() + 1;
    }

    Optional<SignedLetter> signed(Letter letter) {
        return db.createQuery("from SignedLetter s join fetch s.signedBy where s.letterId = ?1", SignedLetter.class)
                .setParameter(1, letter.id()).getResultStream().findFirst();
    }

    Optional<LetterWithdrawal> withdrawal(Letter letter) {
        return db.createQuery("from LetterWithdrawal w join fetch w.withdrawnBy where w.letterId = ?1", LetterWithdrawal.class)
                .setParameter(1, letter.id()).getResultStream().findFirst();
    }

    Optional<DisclosureOverride> override(Letter letter) {
        return db.createQuery("from DisclosureOverride o join fetch o.recordedBy where o.letter = ?1", DisclosureOverride.class)
                .setParameter(1, letter).getResultStream().findFirst();
    }

    List<LetterEvent> events(Letter letter) {
        return db.createQuery("from LetterEvent e join fetch e.recordedBy where e.letter = ?1 order by e.id desc", LetterEvent.class)
                .setParameter(1, letter).getResultList();
    }

    /** Returns the draft or letter that takes the place of another, if one was begun. */
    Optional<Letter> replacing(Letter wrong) {
        return db.createQuery("from Letter l join fetch l.caseFile join fetch l.patient where l.replaces = ?1 order by l.number desc", Letter.class)
                .setParameter(1, wrong).getResultStream().findFirst();
    }

    /** Returns the drafts of a day: those saved on it, and those of cases that were seen on it. */
    List<Letter> draftsOf(LocalDate day, Instant from, Instant to) {
        return db.createQuery("from Letter l join fetch l.caseFile c join fetch c.clinician join fetch l.patient p left join fetch p.employer"
                        + " left join fetch p.doctor left join fetch l.correspondent left join fetch l.employer join fetch l.draftedBy join fetch l.savedBy"
                        + " left join fetch l.replaces where not exists (select 1 from SignedLetter s where s.letterId = l.id)"
                        + " and (l.savedAt >= ?1 and l.savedAt < ?2 or exists (select 1 from Visit v where v.caseFile = c and v.visitedOn = ?3))"
                        + " order by l.savedAt, l.id", Letter.class)
                .setParameter(1, from).setParameter(2, to).setParameter(3, day).getResultList();
    }

    /** Returns the signed letter with a fingerprint. */
    Optional<SignedLetter> withFingerprint(String sha256) {
        return db.createQuery("from SignedLetter s join fetch s.signedBy where s.sha256 = ?1", SignedLetter.class).setParameter(1, sha256)
                .getResultStream().findFirst();
    }

    Optional<Letter> find(long letterId) {
        return db.createQuery("from Letter l join fetch l.caseFile c join fetch l.patient where l.id = ?1", Letter.class).setParameter(1, letterId)
                .getResultStream().findFirst();
    }

    void add(Object record) {
        db.persist(record);
    }

    /** Forgets what was read, so that it is read anew after a refusal. */
    void forget() {
        db.clear();
    }

    /** Writes what is pending, so that a refusal by the database comes here and not after the answer. */
    void flush() {
        db.flush();
    }
}
