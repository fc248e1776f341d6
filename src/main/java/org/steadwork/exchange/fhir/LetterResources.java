package org.steadwork.exchange.fhir;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Set;
import org.hl7.fhir.r4.model.Attachment;
import org.hl7.fhir.r4.model.DocumentReference;
import org.hl7.fhir.r4.model.Enumerations.DocumentReferenceStatus;
import org.hl7.fhir.r4.model.ServiceRequest;
import org.steadwork.letter.CaseCorrespondence.SignedCopy;
import org.steadwork.web.Dates;

/** The signed letters as DocumentReference with the file itself; a referral is a ServiceRequest too. To others go only their own letters. */
final class LetterResources {

    private static final String URGENT = "urgent_referral";
    private static final Set<String> REFERRALS = Set.of(URGENT, "routine_referral");

    private final Subject about;

    LetterResources(Subject about) {
        this.about = about;
    }

    void add(CaseRecord record, SignatureResources signatures) {
        for (SignedCopy letter : record.letters()) {
            if (about.portion().isOwn() || letter.readerKey().equals(about.portion().readerKey())) {
                String name = document(letter);
                signatures.add(name, letter.signedBy(), letter.signedAt());
                if (REFERRALS.contains(letter.kind())) {
                    referral(letter, name);
                }
            }
        }
    }

    private String document(SignedCopy letter) {
        DocumentReference document = new DocumentReference().setStatus(letter.replaced() ? DocumentReferenceStatus.SUPERSEDED : DocumentReferenceStatus.CURRENT)
                .setDocStatus(DocumentReference.ReferredDocumentStatus.FINAL).setType(Codes.words(letter.title())).setSubject(about.patient())
                .setDateElement(Codes.instant(letter.signedAt())).addAuthor(about.draft().to("", letter.signedBy())).setCustodian(about.clinic());
        document.getMasterIdentifier().setSystem(about.draft().address("letter numbers")).setValue(letter.reference());
        document.setDescription(letter.title() + " to " + letter.recipientName() + ". SHA-256 of the file: " + letter.sha256());
        Attachment attachment = attachment("application/pdf", letter.pdf()).setTitle(letter.title() + ", " + letter.reference());
        document.addContent().setAttachment(attachment.setCreationElement(Codes.moment(letter.signedAt())));
        String name = "letter " + letter.id();
        about.draft().add(name, document, letter.title() + " to " + letter.recipientName() + ", " + letter.reference() + ", signed " + Dates.shown(letter.signedAt())
                + (letter.replaced() ? "; should no longer be relied on" : ""));
        return name;
    }

    private void referral(SignedCopy letter, String document) {
        ServiceRequest request = new ServiceRequest().setIntent(ServiceRequest.ServiceRequestIntent.ORDER).setSubject(about.patient()).setRequester(about.clinician())
                .setStatus(letter.replaced() ? ServiceRequest.ServiceRequestStatus.REVOKED : ServiceRequest.ServiceRequestStatus.ACTIVE)
                .setPriority(letter.kind().equals(URGENT) ? ServiceRequest.ServiceRequestPriority.URGENT : ServiceRequest.ServiceRequestPriority.ROUTINE)
                .setCode(Codes.words(letter.title())).setAuthoredOnElement(Codes.moment(letter.signedAt()));
        request.addPerformer(about.draft().to("", letter.recipientName()));
        request.addSupportingInfo(about.draft().to(document, null));
        about.draft().add("referral " + letter.id(), request, letter.title() + " to " + letter.recipientName() + ", " + Dates.shown(letter.signedAt()));
    }

    /** A file within the bundle; the hash is SHA-1 because FHIR R4 asks for that one, and it guards against mistakes alone. */
    static Attachment attachment(String type, byte[] file) {
        try {
            return new Attachment().setContentType(type).setData(file).setSize(file.length).setHash(MessageDigest.getInstance("SHA-1").digest(file));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-1", e);
        }
    }
}
