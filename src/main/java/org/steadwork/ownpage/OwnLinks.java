package org.steadwork.ownpage;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.LockModeType;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.steadwork.account.OpaqueToken;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseScope;

/** The private links and the phones they let in. */
@ApplicationScoped
public class OwnLinks implements PanacheRepository<OwnLink> {

    @Inject
    Clock clock;

    /** Makes a link and returns its token, which is not stored; links made before for the case are revoked. */
    public String make(CaseFile file, LocalDate expiresOn, String madeBy) {
        Instant now = Instant.now(clock);
        ofCase(file.id()).forEach(link -> link.revoke(madeBy, now));
        String token = OpaqueToken.fresh();
        persist(new OwnLink(file, OpaqueToken.hash(token), expiresOn, madeBy, now));
        return token;
    }

    /** The links of a case, the latest first. */
    public List<OwnLink> ofCase(long caseId) {
        return list("caseFile.id = ?1 order by madeAt desc, id desc", caseId);
    }

    /** The link of a token while it may be tried. A guessed, ended, revoked or locked one is empty alike. */
    Optional<OwnLink> alive(String token) {
        return alive(token, LockModeType.NONE);
    }

    /** The same, held until the end of the transaction so that tries are counted one by one. */
    Optional<OwnLink> aliveForTry(String token) {
        return alive(token, LockModeType.PESSIMISTIC_WRITE);
    }

    private Optional<OwnLink> alive(String token, LockModeType lock) {
        return find("tokenHash", OpaqueToken.hash(token)).withLock(lock).firstResultOptional().filter(link -> link.alive(LocalDate.now(clock)));
    }

    /** Lets a phone in and returns the token of its cookie. */
    String letIn(OwnLink link) {
        String token = OpaqueToken.fresh();
        getEntityManager().persist(new OwnVisit(OpaqueToken.hash(token), link, Instant.now(clock)));
        return token;
    }

    /** The link that a phone's cookie stands for, while both are alive. */
    Optional<OwnLink> ofVisit(String token) {
        return getEntityManager().createQuery("from OwnVisit v join fetch v.link l join fetch l.caseFile c join fetch c.patient where v.tokenHash = ?1", OwnVisit.class)
                .setParameter(1, OpaqueToken.hash(token)).getResultStream().findFirst().filter(visit -> visit.aliveAt(Instant.now(clock))).map(OwnVisit::link)
                .filter(link -> link.alive(LocalDate.now(clock)));
    }

    /** Holds the case until the end of the transaction, so that what a phone sends twice at one moment is taken one after the other. */
    void hold(CaseFile file) {
        getEntityManager().createNativeQuery("select id from case_file where id = ?1 for update").setParameter(1, file.id()).getSingleResult();
    }

    void leave(String token) {
        getEntityManager().createQuery("delete from OwnVisit v where v.tokenHash = ?1").setParameter(1, OpaqueToken.hash(token)).executeUpdate();
    }

    /** Links of open cases that were locked by wrong dates and not replaced or revoked. */
    List<OwnLink> locked(CaseScope scope) {
        return scope.bind(getEntityManager().createQuery("from OwnLink l join fetch l.caseFile c join fetch c.patient where l.lockedAt is not null"
                + " and l.revokedAt is null and " + scope.open("c", "l.caseFile"), OwnLink.class)).getResultList();
    }
}
