package org.steadwork.exchange.fhir;

import java.time.Instant;
import java.util.Date;
import org.hl7.fhir.r4.model.Provenance;
import org.steadwork.web.Dates;

/** Who signed what, and when, as Provenance. The signature is the clinic's record of an act, not a cryptographic one. */
final class SignatureResources {

    /** The kind of signature. Source: ASTM E1762-95, the list that FHIR R4 prefers for Signature.type. */
    private static final String KINDS = "urn:iso-astm:E1762-95:2013";
    private static final String AUTHOR = "1.2.840.10065.1.12.1.1";

    private final Subject about;

    SignatureResources(Subject about) {
        this.about = about;
    }

    /** @param name of the resource signed, which is in the bundle */
    void add(String name, String by, Instant at) {
        Provenance provenance = new Provenance().setRecordedElement(Codes.instant(at));
        provenance.addTarget(about.draft().to(name, null));
        provenance.setOccurred(Codes.moment(at));
        provenance.addAgent().setType(Codes.author()).setWho(about.draft().to("", by)).setOnBehalfOf(about.clinic());
        provenance.addSignature().setWhen(Date.from(at)).setWho(about.draft().to("", by)).addType().setSystem(KINDS).setCode(AUTHOR)
                .setDisplay("Author's Signature");
        about.draft().add("signature of " + name, provenance, "Signed by " + by + ", " + Dates.shown(at));
    }
}
