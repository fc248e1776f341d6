package org.steadwork.meeting;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.access.CaseAccess;

/**
 * Who may open a review meeting, which shows its cases. Where cases open to their care team: those who take part in it, and the lead. They
 * see the cases of its agenda within the meeting and nowhere else. Since taking part opens cases, the lead decides who does.
 */
@ApplicationScoped
class MeetingAccess {

    @Inject
    CaseAccess access;

    @Inject
    CurrentAccount account;

    @Inject
    EntityManager db;

    /** True when the meeting is open to whoever asks; for a meeting that is not there as well, so that its page says so. */
    boolean opens(long meeting) {
        return access.opensEvery() || db.createQuery("select count(m) from ReviewMeeting m where m.id = ?1 and m.chair.id <> ?2 and m.notes.id <> ?2"
                + " and not exists (select 1 from MeetingPerson p where p.meeting = m and p.account.id = ?2)", Long.class).setParameter(1, meeting)
                .setParameter(2, account.id()).getSingleResult() == 0;
    }

    /** True when whoever asks may say who takes part. */
    boolean plans() {
        return access.opensEvery();
    }
}
