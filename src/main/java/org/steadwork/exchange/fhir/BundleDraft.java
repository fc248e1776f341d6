package org.steadwork.exchange.fhir;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.apache.commons.text.StringEscapeUtils;
import org.hl7.fhir.r4.model.Bundle;
import org.hl7.fhir.r4.model.DomainResource;
import org.hl7.fhir.r4.model.Meta;
import org.hl7.fhir.r4.model.Narrative;
import org.hl7.fhir.r4.model.Reference;

/**
 * A bundle in the making. Every resource is known under a name such as {@code visit 12}; its address is a UUID formed of that name and the
 * clinic's mark, so that the same thing has the same address in every bundle of this clinic.
 */
final class BundleDraft {

    private static final String DEMO_SYSTEM = "http://terminology.hl7.org/CodeSystem/v3-ActReason";

    private final Bundle bundle = new Bundle();
    private final Map<String, DomainResource> added = new LinkedHashMap<>();
    private final String mark;
    private final boolean demo;

    /** @param demo marks every resource as test data */
    BundleDraft(String mark, boolean demo, String key, Instant at) {
        this.mark = mark;
        this.demo = demo;
        bundle.setType(Bundle.BundleType.COLLECTION);
        bundle.setTimestampElement(Codes.instant(at));
        bundle.getIdentifier().setSystem("urn:ietf:rfc:3986").setValue(address(key));
        if (demo) {
            mark(bundle.getMeta());
        }
    }

    /** The address of a name, whether a resource of it was added or not. */
    String address(String name) {
        return "urn:uuid:" + UUID.nameUUIDFromBytes((mark + "/" + name).getBytes(StandardCharsets.UTF_8));
    }

    boolean has(String name) {
        return added.containsKey(name);
    }

    /** Points to a resource; where it was held back from this reader, only the words stay. */
    Reference to(String name, String display) {
        Reference reference = new Reference().setDisplay(display);
        return has(name) ? reference.setReference(address(name)) : reference;
    }

    /** @param words what a person reads in place of the fields, one sentence or two */
    <T extends DomainResource> T add(String name, T resource, String words) {
        Narrative narrative = new Narrative().setStatus(Narrative.NarrativeStatus.GENERATED);
        narrative.setDivAsString("<div xmlns=\"http://www.w3.org/1999/xhtml\"><p>" + StringEscapeUtils.escapeXml10(printable(words)) + "</p></div>");
        resource.setText(narrative);
        if (demo) {
            mark(resource.getMeta());
        }
        if (added.put(name, resource) != null) {
            throw new IllegalStateException("Two resources are called " + name);
        }
        bundle.addEntry().setFullUrl(address(name)).setResource(resource);
        return resource;
    }

    Bundle bundle() {
        return bundle;
    }

    private static void mark(Meta meta) {
        meta.addSecurity().setSystem(DEMO_SYSTEM).setCode("HTEST").setDisplay("test health data");
    }

    private static String printable(String words) {
        return words.strip().isEmpty() ? "No words." : words.strip();
    }
}
