package org.steadwork.workplace;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.steadwork.account.CurrentAccount;
import org.steadwork.web.BrokenRecordException;
import org.steadwork.workplace.photo.Photo;

/** The photographs of the cases' work places. */
@ApplicationScoped
public class Photos implements PanacheRepository<WorkplacePhoto> {

    @Inject
    EntityManager db;

    @Inject
    CurrentAccount account;

    @Inject
    Clock clock;

    /** Returns the photographs of an assessment, withdrawn ones among them; no bytes are loaded. */
    List<WorkplacePhoto> of(long assessmentId) {
        return list("assessment.id = ?1 order by id", assessmentId);
    }

    /** Returns the photographs of a case that the patient lets leave the clinic: the only ones a letter may show. */
    public List<WorkplacePhoto> mayLeave(long caseId) {
        return list("from WorkplacePhoto p join fetch p.assessment a where a.caseFile.id = ?1 and p.mayLeave = true and p.withdrawnAt is null order by p.id",
                caseId);
    }

    Optional<WorkplacePhoto> find(long caseId, long photoId) {
        return find("from WorkplacePhoto p join fetch p.assessment a where p.id = ?1 and a.caseFile.id = ?2", photoId, caseId).firstResultOptional();
    }

    WorkplacePhoto add(WorkplaceAssessment assessment, Photo taken, String caption, boolean mayLeave) {
        WorkplacePhoto photo = new WorkplacePhoto(assessment, taken.width(), taken.height(), sha256(taken.picture()), account.displayName(),
                Instant.now(clock));
        photo.shows(caption, mayLeave);
        persistAndFlush(photo);
        db.persist(new PhotoImage(photo.id(), taken.picture(), taken.thumbnail()));
        return photo;
    }

    /** Removes the bytes and keeps the record. */
    void withdraw(WorkplacePhoto photo, String reason) {
        photo.withdraw(reason, account.displayName(), Instant.now(clock));
        db.createQuery("delete from PhotoImage where photoId = ?1").setParameter(1, photo.id()).executeUpdate();
    }

    /** Returns the picture, unless it was withdrawn; one whose bytes are no longer those that were stored is not handed out. */
    public Optional<byte[]> picture(WorkplacePhoto photo) {
        Optional<byte[]> bytes = bytes("picture", photo);
        bytes.filter(found -> !sha256(found).equals(photo.sha256())).ifPresent(changed -> {
            throw new BrokenRecordException("The photograph " + photo.id() + " is no longer the one that was stored",
                    "It is not shown. Restore it from the backup.");
        });
        return bytes;
    }

    Optional<byte[]> thumbnail(WorkplacePhoto photo) {
        return bytes("thumbnail", photo);
    }

    private Optional<byte[]> bytes(String which, WorkplacePhoto photo) {
        return db.createQuery("select " + which + " from PhotoImage where photoId = ?1", byte[].class).setParameter(1, photo.id()).getResultStream()
                .findFirst();
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }
}
