package org.steadwork.people;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Locale;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;

/** A patient as typed; read once, checked field by field. */
record PatientForm(String givenName, String familyName, LocalDate birthDate, Sex sex, Handedness handedness, String jobTitle,
        String employer, String site, String department, BigDecimal hoursAWeek, String doctor, String phone, String email, String address) {

    static PatientForm read(Form form, LocalDate today) {
        String givenName = form.requiredText("givenName", "Given name", 80);
        String familyName = form.requiredText("familyName", "Family name", 80);
        LocalDate birthDate = form.requiredDate("birthDate", "Date of birth");
        if (birthDate != null && (birthDate.isAfter(today) || birthDate.isBefore(today.minusYears(120)))) {
            form.error("birthDate", "Date of birth must lie between " + Dates.shown(today.minusYears(120)) + " and today. You entered "
                    + Dates.shown(birthDate) + ".");
        }
        Sex sex = form.requiredChoice("sex", "Sex", Sex.class);
        Handedness handedness = form.requiredChoice("handedness", "Hand preferred", Handedness.class);
        String employer = form.text("employer", 120);
        String site = form.text("site", 120);
        if (site != null && employer == null) {
            form.error("employer", "A site belongs to an employer: enter the employer too.");
        }
        String email = ContactFields.email(form);
        return new PatientForm(givenName, familyName, birthDate, sex, handedness, form.text("jobTitle", 120), employer, site,
                form.text("department", 120),
                form.decimal("hoursAWeek", "Hours a week", BigDecimal.ZERO, BigDecimal.valueOf(100), 1, "h"),
                form.text("doctor", 120), form.text("phone", 40), email, form.text("address", 400));
    }

    static Form show(Patient p) {
        return Form.empty().with("version", p.version()).with("givenName", p.givenName()).with("familyName", p.familyName())
                .with("birthDate", Dates.shown(p.birthDate())).with("sex", p.sex().name().toLowerCase(Locale.ROOT))
                .with("handedness", p.handedness().name().toLowerCase(Locale.ROOT)).with("jobTitle", p.jobTitle())
                .with("employer", p.employer() == null ? null : p.employer().name()).with("site", p.site() == null ? null : p.site().name())
                .with("department", p.department())
                .with("hoursAWeek", p.hoursAWeek() == null ? null : p.hoursAWeek().stripTrailingZeros().toPlainString())
                .with("doctor", p.doctor() == null ? null : p.doctor().name()).with("phone", p.phone()).with("email", p.email())
                .with("address", p.address());
    }

    void fill(Patient patient, Directory directory) {
        patient.describe(sex, handedness);
        Employer at = employer == null ? null : directory.employer(employer);
        patient.worksAs(jobTitle, at, site == null ? null : directory.site(at, site), department, hoursAWeek);
        patient.seesDoctor(doctor == null ? null : directory.correspondent(Correspondent.Kind.DOCTOR, doctor));
        patient.contactAt(phone, email, address);
    }
}
