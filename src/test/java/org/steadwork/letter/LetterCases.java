package org.steadwork.letter;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.steadwork.account.Account;
import org.steadwork.account.Role;
import org.steadwork.body.SymptomKind;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.casefile.RegionReading;
import org.steadwork.casefile.SymptomPattern;
import org.steadwork.casefile.SymptomReport;
import org.steadwork.casefile.VisitKind;
import org.steadwork.casefile.Visits;
import org.steadwork.casefile.WorkStatus;
import org.steadwork.casefile.WorkStatusCode;
import org.steadwork.casefile.WorkStatusDecider;
import org.steadwork.exercise.ExerciseCatalogue;
import org.steadwork.exercise.PrescribedSide;
import org.steadwork.exercise.Prescription;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.outcome.Instruments;
import org.steadwork.outcome.Score;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.people.Correspondent;
import org.steadwork.people.Employer;
import org.steadwork.people.Patient;
import org.steadwork.people.Patients;
import org.steadwork.web.TestAccounts;

/** Invented cases for the tests of letters, each with an employer and a doctor of its own. */
@ApplicationScoped
class LetterCases {

    private static final AtomicInteger COUNT = new AtomicInteger();

    record Made(long caseId, long patientId, long employerId, long doctorId) {

        String employerKey() {
            return "employer-" + employerId;
        }

        String doctorKey() {
            return "correspondent-" + doctorId;
        }

        String letters() {
            return "/cases/" + caseId + "/letters";
        }
    }

    @Inject
    EntityManager db;

    @Inject
    Patients patients;

    @Inject
    CaseFiles files;

    @Inject
    Visits visits;

    @Inject
    TestAccounts accounts;

    @Inject
    Instruments instruments;

    @Inject
    ExerciseCatalogue exercises;

    @Inject
    Clock clock;

    /** The clinic's day, which is not the machine's in the demo clinic. */
    LocalDate today() {
        return LocalDate.now(clock);
    }

    @Transactional
    public Made make() {
        int n = COUNT.incrementAndGet();
        LocalDate today = today();
        Employer employer = new Employer("Quayside Planning " + n);
        employer.contactAt("D. Pemberton", "Quay Road 4; Quillhaven", null, null);
        db.persist(employer);
        Correspondent doctor = new Correspondent(Correspondent.Kind.DOCTOR, "Dr A. Fennick " + n);
        doctor.contactAt("Alder Practice", "Alder Yard 1\nQuillhaven", null, null);
        db.persist(doctor);
        Patient patient = new Patient(patients.nextFileNumber(), "Åse", "Đặng-Tverdal", LocalDate.of(1991, 11, 6), today.minusDays(20));
        patient.worksAs("Shift planner", employer, null, null, null);
        patient.seesDoctor(doctor);
        patient.contactAt("0000 555 099", null, null);
        patients.persist(patient);
        Account clinician = accounts.of(Role.CLINICIAN);
        CaseFile file = new CaseFile(patient, clinician, "Neck and right shoulder ache", today.minusDays(60), today.minusDays(20));
        file.describe("Neck and right shoulder ache", today.minusDays(60), null, "Pregnancy in 2019; takes no medicines");
        file.reviewOn(today.plusDays(20));
        files.persistAndFlush(file);
        visits.add(file, today.minusDays(20), VisitKind.INITIAL, Attendance.ATTENDED);
        SymptomReport report = new SymptomReport(file, today.minusDays(20), today);
        report.report(SymptomPattern.notAsked(), List.of(new RegionReading("shoulder_r", 4, 7, 5, 6, 3, Set.of(SymptomKind.ACHE), "January", null)), false);
        report.savedBy("T. Clinician", Instant.now(clock));
        db.persist(report);
        return new Made(file.id(), patient.id(), employer.id(), doctor.id());
    }

    @Transactional
    public void namedPatient(String given, String family) {
        patients.persist(new Patient(patients.nextFileNumber(), given, family, LocalDate.of(1980, 1, 2), today()));
    }

    /** Adds two scores that can be compared, an exercise and a work status. */
    @Transactional
    public void fill(Made made) {
        CaseFile file = files.findById(made.caseId());
        Instrument instrument = instruments.find("ndi").orElseThrow();
        for (int week = 0; week < 2; week++) {
            Score score = new Score(file, instrument, file.openedOn().plusDays(14L * week));
            score.record(instrument, Collections.nCopies(10, 3 - week), "T. Clinician", Instant.now(clock));
            db.persist(score);
        }
        Exercise exercise = exercises.all().stream().filter(one -> one.dose().timesADay() == null || one.dose().everyHours() == null).findFirst().orElseThrow();
        Prescription given = new Prescription(file, exercise, file.openedOn(), "T. Clinician", Instant.now(clock));
        given.dose(exercise.dose(), PrescribedSide.NONE, "easy", 3, null);
        db.persist(given);
        WorkStatus status = new WorkStatus(file, file.openedOn());
        status.describe(WorkStatusCode.MODIFIED, null, WorkStatusDecider.CLINICIAN, null, "no lifting over 5 kg", "T. Clinician", Instant.now(clock));
        db.persist(status);
    }

    /** Records a consent given ten days ago. */
    @Transactional
    public long consent(Made made, LetterReader reader, LocalDate until, InformationCategory... ticked) {
        Consent consent = new Consent(files.findById(made.caseId()), reader, Consent.How.SPOKEN, today().minusDays(10), until, Set.of(ticked),
                "as told in the test", accounts.of(Role.CLINICIAN));
        db.persist(consent);
        db.flush();
        return consent.id();
    }

    @Transactional
    public LetterReader employer(Made made) {
        return LetterReader.of(db.find(Employer.class, made.employerId()));
    }

    @Transactional
    public LetterReader doctor(Made made) {
        return LetterReader.of(db.find(Correspondent.class, made.doctorId()));
    }

    @Transactional
    public long signatures(Made made) {
        return db.createQuery("select count(*) from SignedLetter s, Letter l where l.id = s.letterId and l.caseFile.id = ?1", Long.class)
                .setParameter(1, made.caseId()).getSingleResult();
    }

    @Transactional
    public void writeThroughTheEntity(Made made) {
        letter(made).write(Map.of("can_do", "changed"), accounts.of(Role.LEAD), Instant.now(clock));
        db.flush();
    }

    @Transactional
    public void execute(String sql) {
        db.createNativeQuery(sql).executeUpdate();
    }

    /** Tries to change the signed letter as a managed entity, and says whether the stored row stayed as it was. */
    public boolean signedEntityIgnoresChanges(Made made) {
        return QuarkusTransaction.requiringNew().call(() -> {
            SignedLetter signed = db.find(SignedLetter.class, letter(made).id());
            String before = signed.sha256();
            try {
                var field = SignedLetter.class.getDeclaredField("sha256");
                field.setAccessible(true);
                field.set(signed, "0".repeat(64));
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(e);
            }
            db.flush();
            db.clear();
            return db.find(SignedLetter.class, letter(made).id()).sha256().equals(before);
        });
    }

    boolean refuses(Runnable change) {
        try {
            change.run();
            return false;
        } catch (RuntimeException refused) {
            return true;
        }
    }

    private Letter letter(Made made) {
        return db.createQuery("from Letter l where l.caseFile.id = ?1", Letter.class).setParameter(1, made.caseId()).getSingleResult();
    }
}
