package org.steadwork.exchange;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;

/** A random mark of this clinic, made once: identifiers that leave are formed with it, so that those of two clinics never meet. */
@Entity
@Immutable
@Table(name = "clinic_mark")
class ClinicMark {

    static final int ONLY = 1;

    @Id
    private Integer id;

    @Column(updatable = false)
    private String mark;

    protected ClinicMark() {
    }

    ClinicMark(String mark) {
        id = ONLY;
        this.mark = mark;
    }

    String mark() {
        return mark;
    }
}
