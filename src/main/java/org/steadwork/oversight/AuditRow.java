package org.steadwork.oversight;

import java.time.Instant;

/**
 * One entry of the audit trail as pages and files show it.
 *
 * @param sequence its place in the sealed chain, null for about a second after it was stored
 */
public record AuditRow(long id, Long sequence, Instant happenedAt, Long accountId, String actor, String action, Long patientId, String fileNumber, String givenName,
        String familyName, Long caseFileId, String detail, String address, String hash) {

    public String patientName() {
        return givenName == null ? null : givenName + " " + familyName;
    }
}
