package org.steadwork.casefile.access;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import org.steadwork.account.Account;
import org.steadwork.casefile.CaseFile;

/** A clinician who takes part in a case besides the one who treats it. */
@Entity
@Table(name = "care_team_member")
public class CareTeamMember {

    @Id
    @GeneratedValue(generator = "care_team_member_seq")
    @SequenceGenerator(name = "care_team_member_seq", sequenceName = "care_team_member_seq", allocationSize = 1)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "account_id")
    private Account account;

    @Column(name = "added_at")
    private Instant addedAt;

    @Column(name = "added_by")
    private String addedBy;

    protected CareTeamMember() {
    }

    CareTeamMember(CaseFile caseFile, Account account, Instant addedAt, String addedBy) {
        this.caseFile = caseFile;
        this.account = account;
        this.addedAt = addedAt;
        this.addedBy = addedBy;
    }

    public Account account() {
        return account;
    }

    public Instant addedAt() {
        return addedAt;
    }

    public String addedBy() {
        return addedBy;
    }
}
