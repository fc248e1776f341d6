package org.steadwork.account;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import org.hibernate.envers.RevisionEntity;
import org.hibernate.envers.RevisionNumber;
import org.hibernate.envers.RevisionTimestamp;

/** One change of clinical entries in the history that Envers keeps: when, and by whom. */
@Entity
@Table(name = "revision")
@RevisionEntity(RevisionAuthor.class)
public class ClinicRevision {

    @Id
    @GeneratedValue(generator = "revision_seq")
    @SequenceGenerator(name = "revision_seq", sequenceName = "revision_seq", allocationSize = 1)
    @RevisionNumber
    private long id;

    @RevisionTimestamp
    @Column(name = "made_at")
    private long madeAt;

    private String author;

    void author(String author) {
        this.author = author;
    }

    public long id() {
        return id;
    }

    public long madeAt() {
        return madeAt;
    }

    public String author() {
        return author;
    }
}
