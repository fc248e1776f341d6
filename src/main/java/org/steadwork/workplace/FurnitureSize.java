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
import java.math.BigDecimal;
import java.time.LocalDate;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.web.Dates;

/** One size of a desk or chair, in mm, with how and when it was known. */
@Entity
@Table(name = "furniture_size")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
class FurnitureSize {

    @Id
    @GeneratedValue(generator = "furniture_size_seq")
    @SequenceGenerator(name = "furniture_size_seq", sequenceName = "furniture_size_seq", allocationSize = 1)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "furniture_id")
    private Furniture furniture;

    private String size;

    private BigDecimal amount;

    @Enumerated(EnumType.STRING)
    private SizeKnown how;

    @Column(name = "known_on")
    private LocalDate knownOn;

    protected FurnitureSize() {
    }

    FurnitureSize(Furniture furniture, String size) {
        this.furniture = furniture;
        this.size = size;
    }

    void is(BigDecimal newAmount, SizeKnown newHow, LocalDate on) {
        amount = newAmount;
        how = newHow;
        knownOn = on;
    }

    Furniture furniture() {
        return furniture;
    }

    String size() {
        return size;
    }

    BigDecimal amount() {
        return amount;
    }

    SizeKnown how() {
        return how;
    }

    LocalDate knownOn() {
        return knownOn;
    }

    /** Says the size with how and when it was known: "740 mm, measured 4 Mar 2026". */
    String words() {
        return Numerals.mm(amount.doubleValue()) + ", " + how.label() + " " + Dates.shown(knownOn);
    }
}
