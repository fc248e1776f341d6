package org.steadwork.casefile.access;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.steadwork.account.Account;
import org.steadwork.casefile.CaseFile;

/** The care teams of cases, and the cases opened from outside them. */
@ApplicationScoped
public class CareTeams {

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    List<CareTeamMember> members(long caseId) {
        return db.createQuery("select m from CareTeamMember m join fetch m.account where m.caseFile.id = ?1 order by m.account.displayName",
                CareTeamMember.class).setParameter(1, caseId).getResultList();
    }

    void add(CaseFile file, Account account, String by) {
        db.persist(new CareTeamMember(file, account, Instant.now(clock), by));
    }

    /** Takes somebody out of the team; returns false when they are not in it. */
    boolean remove(long caseId, long accountId) {
        return db.createQuery("delete from CareTeamMember m where m.caseFile.id = ?1 and m.account.id = ?2").setParameter(1, caseId)
                .setParameter(2, accountId).executeUpdate() > 0;
    }

    BreakGlass open(CaseFile file, Account account, String reason, int hours) {
        Instant now = Instant.now(clock);
        BreakGlass opened = new BreakGlass(file, account, reason, now, now.plus(Duration.ofHours(hours)));
        db.persist(opened);
        return opened;
    }

    /** Returns what no lead has looked at yet, the oldest first. */
    public List<BreakGlass> notLookedAt() {
        return all("where b.lookedAt is null order by b.openedAt, b.id", Integer.MAX_VALUE);
    }

    /** Returns the latest that were looked at. */
    public List<BreakGlass> lookedAt(int most) {
        return all("where b.lookedAt is not null order by b.openedAt desc, b.id desc", most);
    }

    public BreakGlass find(long id) {
        return db.find(BreakGlass.class, id);
    }

    private List<BreakGlass> all(String which, int most) {
        return db.createQuery("select b from BreakGlass b join fetch b.account join fetch b.caseFile c join fetch c.patient join fetch c.clinician "
                + which, BreakGlass.class).setMaxResults(most).getResultList();
    }
}
