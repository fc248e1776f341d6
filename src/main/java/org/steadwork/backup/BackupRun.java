package org.steadwork.backup;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;

/** One backup that was made, or failed, and how. */
@Entity
@Table(name = "backup_run")
public class BackupRun {

    private static final int LONGEST_FAILURE = 600;

    @Id
    @GeneratedValue(generator = "backup_run_seq")
    @SequenceGenerator(name = "backup_run_seq", sequenceName = "backup_run_seq", allocationSize = 1)
    private Long id;

    @Column(name = "began_at")
    private Instant beganAt;

    @Column(name = "ended_at")
    private Instant endedAt;

    private boolean scheduled;

    @Column(name = "asked_by")
    private String askedBy;

    @Column(name = "file_name")
    private String fileName;

    @Column(name = "file_bytes")
    private Long fileBytes;

    @Column(name = "rows_kept")
    private Long rowsKept;

    private String failure;

    protected BackupRun() {
    }

    /** @param askedBy null when it was the schedule */
    BackupRun(Instant beganAt, String askedBy) {
        this.beganAt = beganAt;
        this.askedBy = askedBy;
        this.scheduled = askedBy == null;
    }

    void made(Instant at, String file, long bytes, long rows) {
        endedAt = at;
        fileName = file;
        fileBytes = bytes;
        rowsKept = rows;
    }

    void failed(Instant at, String why) {
        endedAt = at;
        failure = why.substring(0, Math.min(LONGEST_FAILURE, why.length()));
    }

    public Long id() {
        return id;
    }

    public Instant beganAt() {
        return beganAt;
    }

    public String who() {
        return scheduled ? "the schedule" : askedBy;
    }

    public String fileName() {
        return fileName;
    }

    public String size() {
        return fileBytes == null ? "" : fileBytes < 1_000_000 ? (fileBytes + 999) / 1000 + "\u00a0kB" : (fileBytes + 999_999) / 1_000_000 + "\u00a0MB";
    }

    public Long rowsKept() {
        return rowsKept;
    }

    public String failure() {
        return failure;
    }

    /** True when it ended well. */
    public boolean kept() {
        return rowsKept != null;
    }
}
