package org.steadwork.exchange.fhir;

import org.hl7.fhir.r4.model.ContactPoint.ContactPointSystem;
import org.hl7.fhir.r4.model.DateType;
import org.hl7.fhir.r4.model.Enumerations.AdministrativeGender;
import org.hl7.fhir.r4.model.HumanName;
import org.hl7.fhir.r4.model.Organization;
import org.hl7.fhir.r4.model.Practitioner;
import org.steadwork.account.Account;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.people.Correspondent;
import org.steadwork.people.Patient;
import org.steadwork.people.Sex;
import org.steadwork.web.Dates;

/** Who the case is about, who treats, and where: Patient, Practitioner, Organization. */
final class PeopleResources {

    static final String PATIENT = "patient";
    static final String CLINICIAN = "clinician";
    static final String CLINIC = "clinic";
    private static final String EMPLOYER = "employer";
    private static final String DOCTOR = "doctor";

    private final BundleDraft draft;
    private final Portion portion;
    private final String clinicName;

    PeopleResources(BundleDraft draft, Portion portion, String clinicName) {
        this.draft = draft;
        this.portion = portion;
        this.clinicName = clinicName;
    }

    void add(CaseRecord record) {
        draft.add(CLINIC, new Organization().setName(clinicName), "The clinic: " + clinicName);
        clinician(record.file().clinician());
        Patient patient = record.file().patient();
        if (portion.isOwn() && patient.doctor() != null) {
            doctor(patient.doctor());
        }
        patient(patient);
        if (patient.employer() != null && portion.has(InformationCategory.WORK_MODIFICATIONS)) {
            draft.add(EMPLOYER, new Organization().setName(patient.employer().name()), "The employer: " + patient.employer().name());
        }
    }

    private void clinician(Account account) {
        Practitioner practitioner = new Practitioner();
        practitioner.addName(new HumanName().setText(account.fullName()));
        if (account.profession() != null) {
            Practitioner.PractitionerQualificationComponent qualification = practitioner.addQualification().setCode(Codes.words(account.profession()));
            if (account.registration() != null) {
                qualification.addIdentifier().setSystem(draft.address("registration numbers")).setValue(account.registration());
            }
        }
        draft.add(CLINICIAN, practitioner, account.fullName() + (account.profession() == null ? "" : ", " + account.profession()));
    }

    private void doctor(Correspondent doctor) {
        Practitioner practitioner = new Practitioner();
        practitioner.addName(new HumanName().setText(doctor.name()));
        draft.add(DOCTOR, practitioner, doctor.name() + ", the patient\u2019s doctor");
    }

    private void patient(Patient patient) {
        org.hl7.fhir.r4.model.Patient resource = new org.hl7.fhir.r4.model.Patient();
        resource.addIdentifier().setSystem(draft.address("file numbers")).setValue(patient.fileNumber());
        resource.addName(new HumanName().setFamily(patient.familyName()).addGiven(patient.givenName()).setText(patient.name()));
        resource.setGender(gender(patient.sex()));
        resource.setBirthDateElement(new DateType(patient.birthDate().toString()));
        resource.setManagingOrganization(draft.to(CLINIC, clinicName));
        // to others go name and date of birth, as the table of disclosure says; how to reach the worker is not among them
        if (portion.isOwn()) {
            telecom(resource, ContactPointSystem.PHONE, patient.phone());
            telecom(resource, ContactPointSystem.EMAIL, patient.email());
            if (patient.address() != null) {
                resource.addAddress().setText(patient.address());
            }
            if (patient.doctor() != null) {
                resource.addGeneralPractitioner(draft.to(DOCTOR, patient.doctor().name()));
            }
        }
        draft.add(PATIENT, resource, patient.name() + ", born " + Dates.shown(patient.birthDate()) + ", file " + patient.fileNumber());
    }

    private static void telecom(org.hl7.fhir.r4.model.Patient resource, ContactPointSystem system, String value) {
        if (value != null) {
            resource.addTelecom().setSystem(system).setValue(value);
        }
    }

    private static AdministrativeGender gender(Sex sex) {
        return switch (sex) {
            case FEMALE -> AdministrativeGender.FEMALE;
            case MALE -> AdministrativeGender.MALE;
            case NOT_RECORDED -> AdministrativeGender.UNKNOWN;
        };
    }
}
