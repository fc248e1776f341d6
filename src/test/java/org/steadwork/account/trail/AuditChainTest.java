package org.steadwork.account.trail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class AuditChainTest {

    private static final Instant AT = Instant.parse("2030-12-16T09:10:00.123456Z");
    private static final TrailEntry ENTRY = new TrailEntry(51, AT, 2L, "T. Okoro-Vale", "viewed symptoms", 7L, 9L, null, "192.0.2.7");

    /**
     * The text that is hashed was written by hand from the description of the chain and hashed with sha256sum of GNU coreutils.
     * It is {@code 17:steadwork-audit-1;64:000…0;1:1;2:51;17:1923642600.123456;1:2;13:T. Okoro-Vale;15:viewed symptoms;1:7;1:9;-;9:192.0.2.7;}
     */
    @Test
    void theHashIsThatOfTheTextDescribed() {
        assertEquals("39254ef8a995c0ba1f29ad7eb95ad0371e1908714cdd46232bea925bb37625a7", AuditChain.hash(AuditChain.START, 1, ENTRY));
    }

    @Test
    void everyFieldAndThePlaceCount() {
        List<TrailEntry> others = List.of(ENTRY, with(52, AT, 2L, "T. Okoro-Vale", "viewed symptoms", 7L, 9L, null, "192.0.2.7"),
                with(51, AT.plusNanos(1000), 2L, "T. Okoro-Vale", "viewed symptoms", 7L, 9L, null, "192.0.2.7"),
                with(51, AT, 3L, "T. Okoro-Vale", "viewed symptoms", 7L, 9L, null, "192.0.2.7"),
                with(51, AT, null, "T. Okoro-Vale", "viewed symptoms", 7L, 9L, null, "192.0.2.7"),
                with(51, AT, 2L, "T. Okoro-Val", "eviewed symptoms", 7L, 9L, null, "192.0.2.7"),
                with(51, AT, 2L, "T. Okoro-Vale", "viewed symptom", 7L, 9L, null, "192.0.2.7"),
                with(51, AT, 2L, "T. Okoro-Vale", "viewed symptoms", 8L, 9L, null, "192.0.2.7"),
                with(51, AT, 2L, "T. Okoro-Vale", "viewed symptoms", null, 9L, null, "192.0.2.7"),
                with(51, AT, 2L, "T. Okoro-Vale", "viewed symptoms", 7L, 90L, null, "192.0.2.7"),
                with(51, AT, 2L, "T. Okoro-Vale", "viewed symptoms", 7L, 9L, "", "192.0.2.7"),
                with(51, AT, 2L, "T. Okoro-Vale", "viewed symptoms", 7L, 9L, "-", "192.0.2.7"),
                with(51, AT, 2L, "T. Okoro-Vale", "viewed symptoms", 7L, 9L, null, "192.0.2.8"),
                with(51, AT, 2L, "T. Okoro-Vale", "viewed symptoms", 7L, 9L, null, null));
        Set<String> hashes = new HashSet<>();
        others.forEach(other -> hashes.add(AuditChain.hash(AuditChain.START, 1, other)));
        hashes.add(AuditChain.hash(AuditChain.START, 2, ENTRY));
        hashes.add(AuditChain.hash("1".repeat(64), 1, ENTRY));
        assertEquals(others.size() + 2, hashes.size());
        assertNotEquals(AuditChain.hash(AuditChain.START, 1, with(51, AT, 2L, "a;1:b", "c", 7L, 9L, null, null)),
                AuditChain.hash(AuditChain.START, 1, with(51, AT, 2L, "a", "1:b;1:c", 7L, 9L, null, null)), "no field runs into the next");
    }

    private static TrailEntry with(long id, Instant at, Long account, String actor, String action, Long patient, Long caseFile, String detail, String address) {
        return new TrailEntry(id, at, account, actor, action, patient, caseFile, detail, address);
    }
}
