package org.steadwork.exchange.report;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What lets one program read figures: its scopes, until when it holds, and who made and revoked it. The token itself is not stored. */
@Entity
@Table(name = "report_token")
class ReportToken {

    private static final Duration NOTED_EVERY = Duration.ofMinutes(1);

    @Id
    @GeneratedValue(generator = "report_token_seq")
    @SequenceGenerator(name = "report_token_seq", sequenceName = "report_token_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @Column(updatable = false)
    private String name;

    @Column(name = "token_hash", updatable = false)
    private String tokenHash;

    @Column(updatable = false)
    private String scopes;

    /** Its bearer's pseudonyms are formed with it, so that two bearers cannot lay their rows side by side. */
    @Column(name = "pseudonym_key", updatable = false)
    private String pseudonymKey;

    @Column(name = "made_by", updatable = false)
    private String madeBy;

    @Column(name = "made_at", updatable = false)
    private Instant madeAt;

    @Column(name = "expires_on", updatable = false)
    private LocalDate expiresOn;

    @Column(name = "revoked_by")
    private String revokedBy;

    @Column(name = "revoked_at")
    private Instant revokedAt;

    @Column(name = "last_used_at")
    private Instant lastUsedAt;

    protected ReportToken() {
    }

    /** @param expiresOn last day on which it holds */
    ReportToken(String name, String tokenHash, Collection<Scope> scopes, String pseudonymKey, LocalDate expiresOn, String madeBy, Instant madeAt) {
        this.name = name;
        this.tokenHash = tokenHash;
        this.scopes = scopes.stream().map(Scope::role).collect(Collectors.joining(" "));
        this.pseudonymKey = pseudonymKey;
        this.expiresOn = expiresOn;
        this.madeBy = madeBy;
        this.madeAt = madeAt;
    }

    /** Ends it at once; a second time changes nothing. */
    void revoke(String by, Instant at) {
        if (revokedAt == null) {
            revokedBy = by;
            revokedAt = at;
        }
    }

    /** True when a use at this moment is worth noting: the first one, and then once a minute. */
    boolean noteworthy(Instant now) {
        return lastUsedAt == null || lastUsedAt.plus(NOTED_EVERY).isBefore(now);
    }

    public boolean holdsOn(LocalDate day) {
        return revokedAt == null && !day.isAfter(expiresOn);
    }

    public Long id() {
        return id;
    }

    public int version() {
        return version;
    }

    public String name() {
        return name;
    }

    public List<Scope> scopes() {
        return Arrays.stream(scopes.split(" ")).map(Scope::of).flatMap(Optional::stream).toList();
    }

    String pseudonymKey() {
        return pseudonymKey;
    }

    public String madeBy() {
        return madeBy;
    }

    public Instant madeAt() {
        return madeAt;
    }

    public LocalDate expiresOn() {
        return expiresOn;
    }

    public String revokedBy() {
        return revokedBy;
    }

    public Instant revokedAt() {
        return revokedAt;
    }

    public Instant lastUsedAt() {
        return lastUsedAt;
    }
}
