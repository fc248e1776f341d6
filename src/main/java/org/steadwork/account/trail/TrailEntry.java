package org.steadwork.account.trail;

import java.time.Instant;

/**
 * One entry of the audit trail with all that its seal covers.
 *
 * @param happenedAt to the microsecond, as databases keep it
 */
public record TrailEntry(long id, Instant happenedAt, Long accountId, String actor, String action, Long patientId, Long caseFileId, String detail,
        String address) {
}
