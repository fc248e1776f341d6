package org.steadwork.caseload;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CloseReason;
import org.steadwork.casefile.WorkStatusCode;

/** What is recorded about one case and goes into its sum: rows as they stand in the tables, the earliest first. */
final class CaseFacts {

    record Visited(LocalDate on, Attendance attendance) {
    }

    /** One zone of a report, or a report without symptoms with a null zone. */
    record Reported(LocalDate on, boolean symptomFree, String zone, Integer worst) {
    }

    /** A null value is a form with too little answered. */
    record Scored(LocalDate on, String instrument, String version, Double value) {
    }

    record Worked(LocalDate from, LocalDate until, WorkStatusCode code) {
    }

    record Found(String criterion, boolean asked, boolean done) {
    }

    record Screened(LocalDate on, boolean complete) {
    }

    final long caseId;
    final long patientId;
    final long clinicianId;
    final Long employerId;
    final LocalDate openedOn;
    final LocalDate closedOn;
    final CloseReason closeReason;
    final LocalDate referredOn;
    final List<Visited> visits = new ArrayList<>();
    final List<Reported> reports = new ArrayList<>();
    final List<Scored> scores = new ArrayList<>();
    final List<Worked> statuses = new ArrayList<>();
    final List<Found> findings = new ArrayList<>();
    final Set<String> linkedZones = new HashSet<>();
    final List<Screened> screens = new ArrayList<>();
    boolean assessed;

    CaseFacts(long caseId, long patientId, long clinicianId, Long employerId, LocalDate openedOn, LocalDate closedOn, CloseReason closeReason,
            LocalDate referredOn) {
        this.caseId = caseId;
        this.patientId = patientId;
        this.clinicianId = clinicianId;
        this.employerId = employerId;
        this.openedOn = openedOn;
        this.closedOn = closedOn;
        this.closeReason = closeReason;
        this.referredOn = referredOn;
    }
}
