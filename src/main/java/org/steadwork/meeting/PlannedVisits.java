package org.steadwork.meeting;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import org.hibernate.envers.Audited;

/** How many visits were agreed for a case: a reason to look, not a limit. */
@Entity
@Table(name = "planned_visits")
@Audited
class PlannedVisits {

    static final int MOST = 99;

    @Id
    @Column(name = "case_file_id")
    private Long caseFileId;

    @Version
    private int version;

    private Integer visits;

    @Column(name = "set_by")
    private String setBy;

    @Column(name = "set_at")
    private Instant setAt;

    protected PlannedVisits() {
    }

    PlannedVisits(long caseFileId) {
        this.caseFileId = caseFileId;
    }

    /** @param number in [1, 99], null for none agreed */
    void agree(Integer number, String by, Instant at) {
        visits = number;
        setBy = by;
        setAt = at;
    }

    public Long caseFileId() {
        return caseFileId;
    }

    public int version() {
        return version;
    }

    public Integer visits() {
        return visits;
    }

    public String setBy() {
        return setBy;
    }
}
