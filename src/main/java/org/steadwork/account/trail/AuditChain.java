package org.steadwork.account.trail;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HexFormat;

/**
 * The hash that binds an entry of the audit trail to all before it: SHA-256 over the hash before, the place in the chain and every field,
 * each with its length before it, so that no two entries are written alike.
 */
public final class AuditChain {

    /** What stands before the first entry. */
    public static final String START = "0".repeat(64);
    private static final String FORM = "steadwork-audit-1";

    private AuditChain() {
    }

    /**
     * Returns the hash of an entry at its place, 64 hexadecimal digits.
     *
     * @param previous the hash of the place before, {@link #START} for the first
     * @param sequence the place in the chain, from 1
     */
    public static String hash(String previous, long sequence, TrailEntry entry) {
        StringBuilder text = new StringBuilder();
        add(text, FORM);
        add(text, previous);
        add(text, sequence);
        add(text, entry.id());
        add(text, moment(entry.happenedAt()));
        add(text, entry.accountId());
        add(text, entry.actor());
        add(text, entry.action());
        add(text, entry.patientId());
        add(text, entry.caseFileId());
        add(text, entry.detail());
        add(text, entry.address());
        return sha256(text.toString());
    }

    private static String moment(Instant at) {
        Instant kept = at.truncatedTo(ChronoUnit.MICROS);
        return kept.getEpochSecond() + "." + kept.getNano() / 1000;
    }

    private static void add(StringBuilder text, Object value) {
        if (value == null) {
            text.append("-;");
        } else {
            String written = value.toString();
            text.append(written.length()).append(':').append(written).append(';');
        }
    }

    private static String sha256(String text) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }
}
