package org.steadwork.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;
import org.steadwork.web.Form;

/** Registers many patients at once, by the rules of the form on which one is registered. */
@ApplicationScoped
public class PatientIntake {

    /** A patient as read from a row; what is wrong with it stands in {@link #problems()}. */
    public static final class Read {

        private final PatientForm form;
        private final List<Form.Problem> problems;

        private Read(PatientForm form, List<Form.Problem> problems) {
            this.form = form;
            this.problems = problems;
        }

        /** Names the fields as the form does: givenName, familyName, birthDate and so on. */
        public List<Form.Problem> problems() {
            return problems;
        }

        public String name() {
            return form.givenName() + " " + form.familyName();
        }

        public LocalDate birthDate() {
            return form.birthDate();
        }

        PatientForm form() {
            return form;
        }
    }

    @Inject
    EntityManager db;

    @Inject
    Patients patients;

    @Inject
    Directory directory;

    /** Reads a row as if it had been typed into the form. */
    public Read read(Form typed, LocalDate today) {
        for (String choice : List.of("sex", "handedness")) {
            if (!typed.has(choice)) {
                typed.with(choice, "not_recorded");
            }
        }
        PatientForm form = PatientForm.read(typed, today);
        notNameless(typed, "employer", form.employer());
        notNameless(typed, "doctor", form.doctor());
        return new Read(form, typed.problems());
    }

    private static void notNameless(Form typed, String field, String name) {
        if (name != null && SearchKey.of(name).isEmpty()) {
            typed.error(field, "A name has at least one letter or digit. You entered \u201c" + name + "\u201d.");
        }
    }

    /** Registers one in the running transaction. */
    public Patient register(Read read, LocalDate today) {
        PatientForm form = read.form();
        Patient patient = new Patient(patients.nextFileNumber(), form.givenName(), form.familyName(), form.birthDate(), today);
        form.fill(patient, directory);
        patients.persistAndFlush(patient);
        return patient;
    }

    /** Returns a finder of likely doubles among those who are registered now; it grows by those it is told of. */
    public LikelyDoubles doubles() {
        Map<LocalDate, List<LikelyDoubles.Known>> known = new HashMap<>();
        db.createQuery("select p.birthDate, p.searchName, p.fileNumber from Patient p", Object[].class).getResultStream()
                .forEach(row -> LikelyDoubles.keep(known, (LocalDate) row[0], new LikelyDoubles.Known((String) row[1], (String) row[2])));
        return new LikelyDoubles(known, patients::alike);
    }

    /**
     * Registers them all in the running transaction: employers, sites and doctors found or made by name, each patient with a file number of
     * its own, findable by name, and with the same history as one registered by hand.
     *
     * @param stored told how many are stored so far
     */
    public void store(List<Read> read, LocalDate registeredOn, IntConsumer stored) {
        new PatientBatch(db, registeredOn).store(read.stream().map(Read::form).toList(), patients.nextFileNumbers(read.size()), stored);
    }
}
