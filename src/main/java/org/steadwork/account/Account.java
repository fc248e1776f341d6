package org.steadwork.account;

import io.quarkus.elytron.security.common.BcryptUtil;
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

/** One person who works here; accounts are never shared. The password is kept as a bcrypt hash only. */
@Entity
@Table(name = "account")
public class Account {

    public static final int SHORTEST_PASSWORD = 12;
    /** bcrypt reads no more than 72 bytes; a longer password would be cut in silence, so it is refused. */
    public static final int LONGEST_PASSWORD_BYTES = 72;

    @Id
    @GeneratedValue(generator = "account_seq")
    @SequenceGenerator(name = "account_seq", sequenceName = "account_seq")
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

    /** Sets a new password; {@code cost} is the number of bcrypt rounds as a power of two, at least 4. */
    public void usePassword(String password, int cost) {
        passwordHash = BcryptUtil.bcryptHash(password, cost);
    }

    public boolean hasPassword(String password) {
        return passwordHash != null && BcryptUtil.matches(password, passwordHash);
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
