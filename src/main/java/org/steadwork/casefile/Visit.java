package org.steadwork.casefile;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.LocalDate;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.kernel.StaleVersionException;

/** One contact of a case: its number within the case, its day, what it was and whether it took place. */
@Entity
@Table(name = "visit")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class Visit {

    @Id
    @GeneratedValue(generator = "visit_seq")
    @SequenceGenerator(name = "visit_seq", sequenceName = "visit_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    private int number;

    @Column(name = "visited_on")
    private LocalDate visitedOn;

    @Enumerated(EnumType.STRING)
    private VisitKind kind;

    @Enumerated(EnumType.STRING)
    private Attendance attendance;

    protected Visit() {
    }

    /** @param number counts from 1 within the case; {@code visitedOn} is not before the case was opened */
    public Visit(CaseFile caseFile, int number, LocalDate visitedOn, VisitKind kind, Attendance attendance) {
        if (number < 1) {
            throw new IllegalArgumentException("Visits count from 1, but the number was " + number);
        }
        this.caseFile = caseFile;
        this.number = number;
        this.kind = kind;
        moveTo(visitedOn);
        this.attendance = attendance;
    }

    public void moveTo(LocalDate day) {
        if (day.isBefore(caseFile.openedOn())) {
            throw new IllegalArgumentException("A case opened on " + caseFile.openedOn() + " has no visit earlier, on " + day);
        }
        visitedOn = day;
    }

    public void describe(VisitKind kind) {
        this.kind = kind;
    }

    public void attended(Attendance attendance) {
        this.attendance = attendance;
    }

    public void requireVersion(int seen) {
        StaleVersionException.check(seen, version);
    }

    public Long id() {
        return id;
    }

    public int version() {
        return version;
    }

    public CaseFile caseFile() {
        return caseFile;
    }

    public int number() {
        return number;
    }

    public LocalDate visitedOn() {
        return visitedOn;
    }

    public VisitKind kind() {
        return kind;
    }

    public Attendance attendance() {
        return attendance;
    }
}
