package org.steadwork.account;

import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.PostConstruct;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import org.apache.commons.codec.binary.Base32;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.steadwork.account.code.OneTimeCode;
import org.steadwork.account.code.SecretBox;
import org.steadwork.web.BrokenRecordException;

/** The one-time codes of accounts: their keys, what is taken at sign-in, and the recovery codes on paper. */
@ApplicationScoped
class SecondFactors {

    /** 160 bits, as long as the HMAC. Source: RFC 4226 section 4, R6. */
    private static final int KEY_BYTES = 20;
    private static final int RECOVERY_CODES = 10;
    private static final int RECOVERY_BYTES = 15;
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final Logger LOG = Logger.getLogger(SecondFactors.class);

    @Inject
    EntityManager db;

    /** An authenticator application knows the real time alone, also while the demo clinic stands at a day of its own. */
    private final Clock phones = Clock.systemUTC();

    @Inject
    Clock clock;

    @ConfigProperty(name = "steadwork.secret-key")
    Optional<String> secretKey;

    @ConfigProperty(name = "steadwork.sign-in.second-factor")
    SecondFactor setting;

    @ConfigProperty(name = "steadwork.clinic.name")
    Optional<String> clinicName;

    private SecretBox box;

    @PostConstruct
    void open() {
        box = new SecretBox(secretKey.filter(words -> !words.isBlank()).orElse(null));
    }

    /** Lets a wrong secret key stop the start, and not the first sign-in. */
    void start(@Observes StartupEvent event) {
        if (!encrypted()) {
            LOG.debug("The keys of one-time codes are stored as they are: no secret key is set");
        }
    }

    boolean required() {
        return setting == SecondFactor.REQUIRED;
    }

    boolean encrypted() {
        return box.encrypts();
    }

    /** Gives the account a key that comes into force when a code made with it was typed. */
    void offer(Account account) {
        byte[] key = new byte[KEY_BYTES];
        RANDOM.nextBytes(key);
        account.offerCodes(box.close(key, owner(account)));
    }

    /** Returns the key as one types it, in groups of four letters and digits. */
    String typedKey(Account account) {
        return grouped(base32(key(account)));
    }

    /** Returns what an authenticator application reads from the QR code. */
    String address(Account account) {
        String issuer = "Steadwork" + clinicName.filter(name -> !name.isBlank()).map(name -> ", " + name).orElse("");
        return "otpauth://totp/" + encoded(issuer) + ":" + encoded(account.userName()) + "?secret=" + base32(key(account)) + "&issuer=" + encoded(issuer)
                + "&algorithm=SHA1&digits=" + OneTimeCode.DIGITS + "&period=" + OneTimeCode.STEP_SECONDS;
    }

    /** Takes the first code made with an offered key, which brings it into force; returns fresh recovery codes, none when the code was wrong. */
    List<String> confirm(Account account, String typed) {
        OptionalLong step = account.codeKey() == null ? OptionalLong.empty()
                : OneTimeCode.matching(key(account), typed, Instant.now(phones), account.codeLastStep());
        if (step.isEmpty()) {
            return List.of();
        }
        account.confirmCodes(Instant.now(clock), step.getAsLong());
        return freshRecoveryCodes(account);
    }

    /** Takes a one-time code or a recovery code; either opens once. */
    boolean take(Account account, String typed) {
        if (!account.usesCodes()) {
            return false;
        }
        OptionalLong step = OneTimeCode.matching(key(account), typed, Instant.now(phones), account.codeLastStep());
        if (step.isPresent()) {
            return db.createQuery("update Account a set a.codeLastStep = ?2 where a.id = ?1 and (a.codeLastStep is null or a.codeLastStep < ?2)")
                    .setParameter(1, account.id()).setParameter(2, step.getAsLong()).executeUpdate() == 1;
        }
        return db.createQuery("update RecoveryCode c set c.usedAt = ?3 where c.accountId = ?1 and c.codeHash = ?2 and c.usedAt is null")
                .setParameter(1, account.id()).setParameter(2, OpaqueToken.hash(plain(typed))).setParameter(3, Instant.now(clock)).executeUpdate() == 1;
    }

    /** Makes new recovery codes, which are shown once; those of before open no more. */
    List<String> freshRecoveryCodes(Account account) {
        dropRecoveryCodes(account);
        List<String> codes = new ArrayList<>();
        for (int i = 0; i < RECOVERY_CODES; i++) {
            byte[] bits = new byte[RECOVERY_BYTES];
            RANDOM.nextBytes(bits);
            String code = base32(bits);
            db.persist(new RecoveryCode(account.id(), OpaqueToken.hash(code)));
            codes.add(grouped(code));
        }
        return codes;
    }

    /** Takes the second factor off an account. */
    void drop(Account account) {
        account.dropCodes();
        dropRecoveryCodes(account);
    }

    long recoveryCodesLeft(Account account) {
        return db.createQuery("select count(c) from RecoveryCode c where c.accountId = ?1 and c.usedAt is null", Long.class)
                .setParameter(1, account.id()).getSingleResult();
    }

    private void dropRecoveryCodes(Account account) {
        db.createQuery("delete from RecoveryCode c where c.accountId = ?1").setParameter(1, account.id()).executeUpdate();
    }

    private byte[] key(Account account) {
        try {
            return box.open(account.codeKey(), owner(account));
        } catch (IllegalStateException e) {
            throw new BrokenRecordException("The key of one-time codes of account " + account.id() + " cannot be read: " + e.getMessage(),
                    "Start the clinic with the secret key it was stored with, or let a lead take the codes off this account.");
        }
    }

    private static String owner(Account account) {
        return "account " + account.id();
    }

    private static String base32(byte[] bytes) {
        return new Base32().encodeToString(bytes).replace("=", "");
    }

    private static String grouped(String code) {
        return code.replaceAll("(.{4})(?=.)", "$1 ");
    }

    private static String plain(String typed) {
        return typed.replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
