package org.steadwork.account;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.Locale;
import org.steadwork.account.password.PasswordHash;
import org.steadwork.kernel.StaleVersionException;

/** One person who works here; accounts are never shared. The password is kept as a hash only, see {@link PasswordHash}. */
@Entity
@Table(name = "account")
public class Account {

    @Id
    @GeneratedValue(generator = "account_seq")
    @SequenceGenerator(name = "account_seq", sequenceName = "account_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @Column(name = "user_name")
    private String userName;

    @Column(name = "display_name")
    private String displayName;

    @Column(name = "full_name")
    private String fullName;

    private String profession;

    private String registration;

    @Column(name = "password_hash")
    private String passwordHash;

    @Enumerated(EnumType.STRING)
    private Role role;

    private boolean active = true;

    @Column(name = "created_at")
    private Instant createdAt;

    /** The key of the one-time codes as {@code SecretBox} keeps it; not in force before it was confirmed. */
    @Column(name = "code_key")
    private String codeKey;

    @Column(name = "code_confirmed_at")
    private Instant codeConfirmedAt;

    @Column(name = "code_last_step")
    private Long codeLastStep;

    /** Whether a lead lets it sign in through the clinic's OpenID Connect provider. */
    @Column(name = "openid_allowed")
    private boolean openIdAllowed;

    @Column(name = "openid_issuer")
    private String openIdIssuer;

    @Column(name = "openid_subject")
    private String openIdSubject;

    @Column(name = "openid_linked_at")
    private Instant openIdLinkedAt;

    protected Account() {
    }

    /**
     * Makes an account.
     *
     * @param userName what is typed at sign-in, kept in lower case
     * @param displayName the short name on every page, e.g. T. Okoro-Vale
     */
    public Account(String userName, String fullName, String displayName, Role role, Instant createdAt) {
        this.userName = userName.strip().toLowerCase(Locale.ROOT);
        this.fullName = fullName;
        this.displayName = displayName;
        this.role = role;
        this.createdAt = createdAt;
    }

    public void describeProfession(String profession, String registration) {
        this.profession = profession;
        this.registration = registration;
    }

    /** Changes how the person is named and what they may do. */
    public void describe(String fullName, String displayName, Role role) {
        this.fullName = fullName;
        this.displayName = displayName;
        this.role = role;
    }

    /** Lets the account sign in, or not any more; what it did stays under its name. */
    public void activate(boolean active) {
        this.active = active;
    }

    /** Sets a new password; {@code cost} is the number of bcrypt rounds as a power of two, at least 4. */
    public void usePassword(String password, int cost) {
        passwordHash = PasswordHash.of(password, cost);
    }

    public boolean hasPassword(String password) {
        return passwordHash != null && PasswordHash.matches(password, passwordHash);
    }

    /** Offers a key for one-time codes; it comes into force when a code made with it was typed. */
    void offerCodes(String key) {
        codeKey = key;
        codeConfirmedAt = null;
        codeLastStep = null;
    }

    void confirmCodes(Instant now, long step) {
        codeConfirmedAt = now;
        codeLastStep = step;
    }

    void dropCodes() {
        offerCodes(null);
    }

    /** Lets the account sign in through the provider, or not any more; then the person it was linked to is forgotten. */
    void allowOpenId(boolean allowed) {
        openIdAllowed = allowed;
        openIdIssuer = null;
        openIdSubject = null;
        openIdLinkedAt = null;
    }

    /** Links the account to the one person whom this issuer knows by this subject. */
    void linkOpenId(String issuer, String subject, Instant now) {
        openIdIssuer = issuer;
        openIdSubject = subject;
        openIdLinkedAt = now;
    }

    public boolean openIdAllowed() {
        return openIdAllowed;
    }

    /** When it first signed in through the provider, null before. */
    public Instant openIdLinkedAt() {
        return openIdLinkedAt;
    }

    public void requireVersion(int seen) {
        StaleVersionException.check(seen, version);
    }

    public int version() {
        return version;
    }

    String passwordHash() {
        return passwordHash;
    }

    String codeKey() {
        return codeKey;
    }

    /** Returns the last time step whose code was taken, -1 before the first. */
    long codeLastStep() {
        return codeLastStep == null ? -1 : codeLastStep;
    }

    /** True when one-time codes are asked for at sign-in. */
    public boolean usesCodes() {
        return codeConfirmedAt != null;
    }

    public Instant codeConfirmedAt() {
        return codeConfirmedAt;
    }

    public Instant createdAt() {
        return createdAt;
    }

    /** True before the person has set a password through their first link. */
    public boolean withoutPassword() {
        return passwordHash == null;
    }

    public Long id() {
        return id;
    }

    public String userName() {
        return userName;
    }

    public String displayName() {
        return displayName;
    }

    public String fullName() {
        return fullName;
    }

    public String profession() {
        return profession;
    }

    public String registration() {
        return registration;
    }

    public Role role() {
        return role;
    }

    public boolean active() {
        return active;
    }
}
