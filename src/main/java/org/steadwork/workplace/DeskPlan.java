package org.steadwork.workplace;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.MapKeyColumn;
import jakarta.persistence.MapKeyEnumerated;
import jakarta.persistence.OneToOne;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.hibernate.envers.AuditJoinTable;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.drawing.desk.PlanWindow;

/** Where things stand on the desk of an assessment, seen from above. */
@Entity
@Table(name = "desk_plan")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
class DeskPlan {

    @Id
    @GeneratedValue(generator = "desk_plan_seq")
    @SequenceGenerator(name = "desk_plan_seq", sequenceName = "desk_plan_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @OneToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "assessment_id")
    private WorkplaceAssessment assessment;

    @Enumerated(EnumType.STRING)
    @Column(name = "second_screen")
    private SecondScreen second = SecondScreen.NONE;

    @Enumerated(EnumType.STRING)
    @Column(name = "window_side")
    private PlanWindow.Where window;

    @ElementCollection(fetch = FetchType.LAZY)
    @CollectionTable(name = "desk_plan_reading", joinColumns = @JoinColumn(name = "desk_plan_id"))
    @AuditJoinTable(name = "desk_plan_reading_history")
    @MapKeyColumn(name = "item")
    @MapKeyEnumerated(EnumType.STRING)
    @Column(name = "amount")
    private Map<PlanItem, BigDecimal> readings = new HashMap<>();

    protected DeskPlan() {
    }

    DeskPlan(WorkplaceAssessment assessment) {
        this.assessment = assessment;
    }

    /** @param window where the nearest window lies, null when it was not looked at */
    void shows(SecondScreen second, PlanWindow.Where window, Map<PlanItem, BigDecimal> readings) {
        this.second = second;
        this.window = window;
        this.readings.keySet().retainAll(readings.keySet());
        this.readings.putAll(readings);
    }

    int version() {
        return version;
    }

    SecondScreen second() {
        return second;
    }

    PlanWindow.Where window() {
        return window;
    }

    Map<PlanItem, BigDecimal> readings() {
        Map<PlanItem, BigDecimal> all = new EnumMap<>(PlanItem.class);
        all.putAll(readings);
        return all;
    }
}
