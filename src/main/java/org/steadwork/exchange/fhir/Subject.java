package org.steadwork.exchange.fhir;

import java.time.LocalDate;
import org.hl7.fhir.r4.model.CodeableConcept;
import org.hl7.fhir.r4.model.Observation;
import org.hl7.fhir.r4.model.Reference;
import org.steadwork.casefile.CaseFile;
import org.steadwork.letter.disclosure.InformationCategory;

/** What the resources of one case have in common: the patient, the clinician, and which kinds of information may go. */
record Subject(BundleDraft draft, Portion portion, CaseFile file) {

    Reference patient() {
        return draft.to(PeopleResources.PATIENT, file.patient().name());
    }

    Reference clinician() {
        return draft.to(PeopleResources.CLINICIAN, file.clinician().fullName());
    }

    Reference clinic() {
        return draft.to(PeopleResources.CLINIC, null);
    }

    boolean has(InformationCategory category) {
        return portion.has(category);
    }

    /** Begins an observation of a day, not yet in the bundle. */
    Observation observation(CodeableConcept code, String category, LocalDate on) {
        Observation observation = new Observation().setStatus(Observation.ObservationStatus.FINAL).setCode(code).setSubject(patient()).setEffective(Codes.day(on));
        observation.addCategory(Codes.words(category));
        observation.addPerformer(clinician());
        return observation;
    }
}
