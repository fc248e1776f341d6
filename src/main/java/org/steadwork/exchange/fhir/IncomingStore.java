package org.steadwork.exchange.fhir;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.casefile.access.CaseAccess;
import org.steadwork.outcome.Instruments;
import org.steadwork.outcome.Scores;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.people.Patient;
import org.steadwork.people.PatientIntake;
import org.steadwork.people.Patients;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;

/** Stores what a clinician took over from another clinic's file, in the running transaction. */
@ApplicationScoped
class IncomingStore {

    private static final String PAIN_NOW = "nprs_now";

    @Inject
    CaseAccess access;

    @Inject
    Patients patients;

    @Inject
    PatientIntake intake;

    @Inject
    CaseFiles cases;

    @Inject
    Scores scores;

    @Inject
    Instruments instruments;

    @Inject
    CurrentAccount account;

    @Inject
    AuditTrail audit;

    /**
     * @param known the patient it is, or null for a new one
     * @return the patient; empty when something is wrong, which then stands in the form
     */
    Optional<Long> store(PatientIntake.Read read, Long known, IncomingForm typed, Form form, LocalDate today) {
        CaseFile open = known == null ? null : cases.ofPatient(known).stream().filter(file -> file.open() && access.opens(file.id())).max(Comparator.comparing(CaseFile::openedOn)).orElse(null);
        if (known != null && !typed.ratings().isEmpty()) {
            check(open, typed.ratings(), form);
            if (form.hasErrors()) {
                return Optional.empty();
            }
        }
        Patient patient = known == null ? intake.register(read, today) : patients.findById(known);
        audit.record(known == null ? "registered patient" : "took over ratings", patient.id(), open == null ? null : open.id(), patient.fileNumber() + ", from a FHIR file");
        if (!typed.ratings().isEmpty()) {
            keep(open == null ? opened(patient, typed, today) : open, typed.ratings());
        }
        return Optional.of(patient.id());
    }

    private void check(CaseFile open, List<IncomingBundle.Rating> ratings, Form form) {
        if (open == null) {
            form.error("ratings", "This patient has no open case. Open one first, or untick the ratings.");
            return;
        }
        for (IncomingBundle.Rating rating : ratings) {
            if (rating.on().isBefore(open.openedOn())) {
                form.error("ratings", "The case was opened on " + Dates.shown(open.openedOn()) + ". Untick the ratings before that day.");
            } else if (scores.on(open.id(), PAIN_NOW, rating.on()).isPresent()) {
                form.error("ratings", "There is a rating of " + Dates.shown(rating.on()) + " in the case already. Untick it.");
            }
        }
    }

    /** Opens a case on the day of the first rating, since none may lie before it. */
    private CaseFile opened(Patient patient, IncomingForm typed, LocalDate today) {
        LocalDate first = typed.ratings().stream().map(IncomingBundle.Rating::on).min(Comparator.naturalOrder()).orElse(today);
        LocalDate from = first.isBefore(patient.birthDate()) ? patient.birthDate() : first;
        CaseFile file = new CaseFile(patient, account.get(), typed.complaint(), null, from);
        cases.persistAndFlush(file);
        audit.record("opened case", patient.id(), file.id(), "from a FHIR file");
        return file;
    }

    private void keep(CaseFile file, List<IncomingBundle.Rating> ratings) {
        Instrument instrument = instruments.find(PAIN_NOW).orElseThrow();
        ratings.forEach(rating -> scores.record(file, instrument, rating.on(), List.of(rating.pain())));
    }
}
