package org.steadwork.account;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;

/** A code on paper that stands for one one-time code, once. It has 120 random bits, so its plain SHA-256 is kept. */
@Entity
@Table(name = "recovery_code")
public class RecoveryCode {

    @Id
    @GeneratedValue(generator = "recovery_code_seq")
    @SequenceGenerator(name = "recovery_code_seq", sequenceName = "recovery_code_seq", allocationSize = 1)
    private Long id;

    @Column(name = "account_id")
    private Long accountId;

    @Column(name = "code_hash")
    private String codeHash;

    @Column(name = "used_at")
    private Instant usedAt;

    protected RecoveryCode() {
    }

    RecoveryCode(long accountId, String codeHash) {
        this.accountId = accountId;
        this.codeHash = codeHash;
    }
}
