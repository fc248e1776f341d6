package org.steadwork.exchange.fhir;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.hl7.fhir.r4.model.Consent;
import org.hl7.fhir.r4.model.Consent.ConsentProvisionType;
import org.hl7.fhir.r4.model.Consent.ConsentState;
import org.steadwork.letter.CaseCorrespondence.ConsentGiven;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.disclosure.Matrix;
import org.steadwork.web.Dates;

/** Whom the worker agreed may be told what, and until when. A reader sees its own consent and no other. */
final class ConsentResources {

    private static final String SCOPES = "http://terminology.hl7.org/CodeSystem/consentscope";

    private final Subject about;
    private final Matrix matrix;

    ConsentResources(Subject about, Matrix matrix) {
        this.about = about;
        this.matrix = matrix;
    }

    void add(CaseRecord record) {
        record.consents().stream().filter(given -> about.portion().isOwn() || given.readerKey().equals(about.portion().readerKey())).forEach(this::consent);
    }

    private void consent(ConsentGiven given) {
        Consent consent = new Consent().setStatus(given.inForce() ? ConsentState.ACTIVE : ConsentState.INACTIVE).setPatient(about.patient());
        consent.getScope().addCoding().setSystem(SCOPES).setCode("patient-privacy").setDisplay("Privacy Consent");
        consent.addCategory().setText("Consent to disclose").addCoding().setSystem(Codes.ACT).setCode("IDSCL").setDisplay("information disclosure");
        consent.setDateTimeElement(Codes.day(given.givenOn()));
        consent.addOrganization(about.clinic());
        consent.addPolicy().setUri(about.draft().address("table of disclosure"));
        Consent.ProvisionComponent provision = consent.getProvision();
        provision.setType(ConsentProvisionType.PERMIT);
        provision.setPeriod(CareResources.period(given.givenOn(), given.withdrawnOn() == null ? given.holdsUntil() : given.withdrawnOn()));
        provision.addActor().setRole(Codes.recipient()).setReference(about.draft().to("", given.name()));
        String may = Arrays.stream(InformationCategory.values()).filter(category -> allowed(given, category)).map(matrix::label).collect(Collectors.joining("; "));
        provision.addCode(Codes.words(may.isEmpty() ? "Nothing" : may));
        about.draft().add("consent " + given.id(), consent, "Consent to write to " + given.name() + ", " + given.how() + ", " + Dates.shown(given.givenOn()) + " to "
                + Dates.shown(given.holdsUntil()) + (given.withdrawnOn() == null ? "" : ", withdrawn " + Dates.shown(given.withdrawnOn())));
    }

    private boolean allowed(ConsentGiven given, InformationCategory category) {
        return given.counts() && matrix.decide(category, given.reader()).allowed();
    }
}
