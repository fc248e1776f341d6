package org.steadwork.workplace;

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
import java.math.BigDecimal;
import java.time.LocalDate;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.casefile.CaseFile;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.workplace.fit.Lenses;

/** One look at one work place of a case: when, where, and what was asked about the day there. What was measured stands beside it. */
@Entity
@Table(name = "workplace_assessment")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class WorkplaceAssessment {

    @Id
    @GeneratedValue(generator = "workplace_assessment_seq")
    @SequenceGenerator(name = "workplace_assessment_seq", sequenceName = "workplace_assessment_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    @Column(name = "assessed_on")
    private LocalDate assessedOn;

    private String place;

    @Enumerated(EnumType.STRING)
    private Lenses lenses = Lenses.SINGLE_OR_NONE;

    @Column(name = "laptop_alone")
    private boolean laptopAlone;

    @Column(name = "hours_at_screen")
    private BigDecimal hoursAtScreen;

    @Column(name = "longest_spell_minutes")
    private Integer longestSpellMinutes;

    private String breaks;

    private String notes;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "desk_id")
    private Furniture desk;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "chair_id")
    private Furniture chair;

    protected WorkplaceAssessment() {
    }

    public WorkplaceAssessment(CaseFile caseFile, LocalDate assessedOn) {
        this.caseFile = caseFile;
        assessedOn(assessedOn);
    }

    public void assessedOn(LocalDate day) {
        if (day.isBefore(caseFile.openedOn())) {
            throw new IllegalArgumentException("A case opened on " + caseFile.openedOn() + " has no assessment earlier, on " + day);
        }
        assessedOn = day;
    }

    /** @param laptopAlone the laptop's own keys and screen are used, nothing else */
    public void looksAt(String place, Lenses lenses, boolean laptopAlone, String notes) {
        this.place = place;
        this.lenses = lenses;
        this.laptopAlone = laptopAlone;
        this.notes = notes;
    }

    /**
     * @param hoursAtScreen a day, in [0, 24], null when not asked
     * @param longestSpellMinutes longest unbroken run at the screen, in [0, 1440], null when not asked
     */
    public void dayIs(BigDecimal hoursAtScreen, Integer longestSpellMinutes, String breaks) {
        this.hoursAtScreen = hoursAtScreen;
        this.longestSpellMinutes = longestSpellMinutes;
        this.breaks = breaks;
    }

    /** Says which registered desk and chair these are; each null when it is not in the register. */
    public void standsAt(Furniture registeredDesk, Furniture registeredChair) {
        if (registeredDesk != null && !registeredDesk.desk() || registeredChair != null && registeredChair.desk()) {
            throw new IllegalArgumentException("A person sits on a chair at a desk");
        }
        desk = registeredDesk;
        chair = registeredChair;
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

    public LocalDate assessedOn() {
        return assessedOn;
    }

    public String place() {
        return place;
    }

    public Lenses lenses() {
        return lenses;
    }

    public boolean laptopAlone() {
        return laptopAlone;
    }

    public BigDecimal hoursAtScreen() {
        return hoursAtScreen;
    }

    public Integer longestSpellMinutes() {
        return longestSpellMinutes;
    }

    public String breaks() {
        return breaks;
    }

    /** Returns the registered desk, or null. */
    public Furniture desk() {
        return desk;
    }

    /** Returns the registered chair, or null. */
    public Furniture chair() {
        return chair;
    }

    public String notes() {
        return notes;
    }
}
