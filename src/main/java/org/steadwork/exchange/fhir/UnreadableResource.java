package org.steadwork.exchange.fhir;

/** Something sent as FHIR that cannot be taken; the message says why, in words for people. */
final class UnreadableResource extends RuntimeException {

    UnreadableResource(String message) {
        super(message);
    }
}
