package org.steadwork.casefile;

import java.time.LocalDate;
import org.steadwork.people.Patient;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;

/** A case as typed, when it is opened or described anew. */
record CaseForm(String complaint, LocalDate onsetOn, String referredBy, LocalDate referredOn, String history, LocalDate openedOn, LocalDate nextReviewOn) {

    static CaseForm read(Form form, Patient patient, LocalDate openedBefore, LocalDate today) {
        String complaint = form.requiredText("complaint", "Complaint", 300);
        LocalDate openedOn = openedBefore != null ? openedBefore : form.requiredDate("openedOn", "First visit");
        if (openedOn != null && openedBefore == null && (openedOn.isAfter(today) || openedOn.isBefore(patient.birthDate()))) {
            form.error("openedOn", "The first visit lies between the patient’s birth, " + Dates.shown(patient.birthDate())
                    + ", and today. You entered " + Dates.shown(openedOn) + ".");
        }
        LocalDate onsetOn = form.date("onsetOn", "Since");
        if (onsetOn != null && openedOn != null && (onsetOn.isAfter(openedOn) || onsetOn.isBefore(patient.birthDate()))) {
            form.error("onsetOn", "The complaint begins between the patient’s birth and the first visit, " + Dates.shown(openedOn)
                    + ". You entered " + Dates.shown(onsetOn) + ".");
        }
        LocalDate referredOn = form.date("referredOn", "Referred on");
        if (referredOn != null && openedOn != null && (referredOn.isAfter(openedOn) || referredOn.isBefore(patient.birthDate()))) {
            form.error("referredOn", "The referral comes between the patient’s birth and the first visit, " + Dates.shown(openedOn)
                    + ". You entered " + Dates.shown(referredOn) + ".");
        }
        LocalDate nextReviewOn = form.date("nextReviewOn", "Next review");
        if (nextReviewOn != null && openedOn != null && nextReviewOn.isBefore(openedOn)) {
            form.error("nextReviewOn", "A review cannot lie before the case was opened, " + Dates.shown(openedOn) + ". You entered "
                    + Dates.shown(nextReviewOn) + ".");
        }
        return new CaseForm(complaint, onsetOn, form.text("referredBy", 300), referredOn, form.text("history", 4000), openedOn, nextReviewOn);
    }

    static Form show(CaseFile file) {
        return Form.empty().with("version", file.version()).with("complaint", file.complaint())
                .with("onsetOn", file.onsetOn() == null ? null : Dates.shown(file.onsetOn())).with("referredBy", file.referredBy())
                .with("referredOn", file.referredOn() == null ? null : Dates.shown(file.referredOn()))
                .with("history", file.history()).with("openedOn", Dates.shown(file.openedOn()))
                .with("nextReviewOn", file.nextReviewOn() == null ? null : Dates.shown(file.nextReviewOn()));
    }
}
