package org.steadwork.meeting;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import io.quarkus.security.ForbiddenException;
import jakarta.ws.rs.NotFoundException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.casefile.access.CaseAccess;

/** Where a meeting is changed: one change after the other, each a new version of the meeting, none once it is closed. */
@ApplicationScoped
class MeetingDesk {

    @Inject
    EntityManager db;

    @Inject
    Meetings meetings;

    @Inject
    Agendas agendas;

    @Inject
    CaseFiles cases;

    @Inject
    CaseAccess access;

    @Inject
    CurrentAccount account;

    /** Returns a meeting once nobody else is changing it; later callers wait for this transaction. It is shown by {@link #shut}. */
    ReviewMeeting forChange(long id) {
        db.createNativeQuery("select id from review_meeting where id = ?1 for update").setParameter(1, id).getResultList();
        return meetings.whole(id);
    }

    /** Says why nothing can be changed in a meeting any more; empty while it is open. */
    Optional<String> shut(ReviewMeeting meeting) {
        if (meeting.calledOff()) {
            return Optional.of("The meeting was called off.");
        }
        return meetings.minutes(meeting.id()).map(minutes -> "The meeting was closed; its minutes stay as they are. A correction is an addendum.");
    }

    /** Makes the change a new version of the meeting, which the database refuses once there are minutes. */
    void changed(ReviewMeeting meeting) {
        db.lock(meeting, LockModeType.OPTIMISTIC_FORCE_INCREMENT);
    }

    CaseFile file(long caseId) {
        return cases.withPeople(caseId).orElseThrow(NotFoundException::new);
    }

    /** Returns a case of the agenda to write in; the first touch keeps the whole agenda in its present order. */
    AgendaCase touch(ReviewMeeting meeting, CaseFile file) {
        return meetings.caseOf(meeting.id(), file.id()).orElseGet(() -> keep(meeting).stream().filter(item -> item.caseFile().id().equals(file.id())).findFirst()
                .orElseGet(() -> add(meeting, file)));
    }

    /** Keeps every case that stands on the agenda, in its present order. */
    List<AgendaCase> keep(ReviewMeeting meeting) {
        List<AgendaCase> kept = new ArrayList<>();
        for (Agenda.Row row : agendas.of(meeting).rows()) {
            AgendaCase item = row.item() == null ? new AgendaCase(meeting, row.file(), row.place(), row.minutes()) : row.item();
            item.stand(row.place(), row.minutes());
            db.persist(item);
            kept.add(item);
        }
        return kept;
    }

    private AgendaCase add(ReviewMeeting meeting, CaseFile file) {
        // a case on the agenda opens to everybody of the meeting, so it is put there by those to whom it is open
        if (!access.opens(file.id())) {
            throw new ForbiddenException();
        }
        int last = meetings.cases(meeting.id()).stream().mapToInt(AgendaCase::place).max().orElse(0);
        AgendaCase item = new AgendaCase(meeting, file, last + 1, agendas.minutesACase());
        item.add(account.displayName());
        db.persist(item);
        return item;
    }

    void flush() {
        db.flush();
    }
}
