package org.steadwork.web;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import org.steadwork.account.Role;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.casefile.VisitKind;
import org.steadwork.casefile.Visits;
import org.steadwork.people.Handedness;
import org.steadwork.people.Patient;
import org.steadwork.people.Patients;
import org.steadwork.people.Sex;

/** Invented patients with an open case, for tests of the case's pages. */
@ApplicationScoped
public class TestCases {

    public static final LocalDate OPENED = LocalDate.of(2026, 3, 4);

    @Inject
    Patients patients;

    @Inject
    CaseFiles cases;

    @Inject
    Visits visits;

    @Inject
    TestAccounts accounts;

    /** Makes a patient and opens a case with its first visit on {@link #OPENED}; returns the case's number. */
    @Transactional
    public long open(String given, String family) {
        Patient patient = new Patient(patients.nextFileNumber(), given, family, LocalDate.of(1988, 5, 3), OPENED);
        patient.describe(Sex.FEMALE, Handedness.RIGHT);
        patients.persist(patient);
        CaseFile file = new CaseFile(patient, accounts.of(Role.CLINICIAN), "Neck ache", LocalDate.of(2026, 1, 20), OPENED);
        cases.persist(file);
        visits.add(file, OPENED, VisitKind.INITIAL, Attendance.ATTENDED);
        return file.id();
    }
}
