package org.steadwork.exchange.csv;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Duration;
import java.time.Instant;
import org.steadwork.kernel.StaleVersionException;

/** A file on its way in: uploaded, checked, stored or discarded. Its text is forgotten as soon as it is no longer needed. */
@Entity
@Table(name = "import_job")
class ImportJob {

    /** How far it is. */
    enum State {
        CHECKING("being checked"), CHECKED("checked"), STORING("being stored"), STORED("stored"), DISCARDED("discarded"), FAILED("not stored");

        private final String label;

        State(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    static final int LONGEST_NAME = 120;
    private static final int LONGEST_FAILURE = 400;

    @Id
    @GeneratedValue(generator = "import_job_seq")
    @SequenceGenerator(name = "import_job_seq", sequenceName = "import_job_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @Column(updatable = false)
    private String kind;

    @Column(name = "file_name", updatable = false)
    private String fileName;

    @Enumerated(EnumType.STRING)
    private State state = State.CHECKING;

    @Column(columnDefinition = "text")
    private String content;

    @Column(name = "rows_total")
    private int rowsTotal;

    @Column(name = "rows_done")
    private int rowsDone;

    @Column(name = "problem_count")
    private int problemCount;

    @Column(columnDefinition = "text")
    private String problems;

    @Column(name = "double_count")
    private int doubleCount;

    @Column(columnDefinition = "text")
    private String doubles;

    @Column(name = "with_doubles")
    private boolean withDoubles;

    @Column(name = "stored_count")
    private int storedCount;

    private String failure;

    @Column(name = "made_by", updatable = false)
    private String madeBy;

    @Column(name = "made_at", updatable = false)
    private Instant madeAt;

    @Column(name = "touched_at")
    private Instant touchedAt;

    protected ImportJob() {
    }

    ImportJob(String kind, String fileName, String content, String madeBy, Instant at) {
        this.kind = kind;
        this.fileName = fileName.length() > LONGEST_NAME ? fileName.substring(0, LONGEST_NAME) : fileName;
        this.content = content;
        this.madeBy = madeBy;
        this.madeAt = at;
        this.touchedAt = at;
    }

    void progress(int done, int total, Instant at) {
        rowsDone = done;
        rowsTotal = total;
        touchedAt = at;
    }

    /** Keeps what the check found; with problems it can only be discarded. */
    void checked(int rows, int problemCount, String problems, int doubleCount, String doubles, Instant at) {
        require(State.CHECKING);
        progress(rows, rows, at);
        this.problemCount = problemCount;
        this.problems = problems;
        this.doubleCount = doubleCount;
        this.doubles = doubles;
        state = State.CHECKED;
        if (problemCount > 0) {
            content = null;
        }
    }

    /** Begins storing; refused unless it was checked and nothing was wrong. */
    void beginStoring(boolean withDoubles, Instant at) {
        require(State.CHECKED);
        if (problemCount > 0) {
            throw new IllegalStateException("Import " + id + " has " + problemCount + " problems and cannot be stored");
        }
        this.withDoubles = withDoubles;
        progress(0, rowsTotal, at);
        state = State.STORING;
    }

    void stored(int count, Instant at) {
        require(State.STORING);
        progress(rowsTotal, rowsTotal, at);
        storedCount = count;
        state = State.STORED;
        forgetPeople();
    }

    void fail(String why, Instant at) {
        touchedAt = at;
        failure = why.length() > LONGEST_FAILURE ? why.substring(0, LONGEST_FAILURE) : why;
        state = State.FAILED;
        forgetPeople();
    }

    /** Forgets the file; what was stored stays. */
    void discard(Instant at) {
        if (state != State.CHECKED && state != State.FAILED) {
            throw new IllegalStateException("Import " + id + " is " + state.label() + " and cannot be discarded");
        }
        touchedAt = at;
        state = State.DISCARDED;
        forgetPeople();
    }

    private void forgetPeople() {
        content = null;
        problems = null;
        doubles = null;
    }

    private void require(State wanted) {
        if (state != wanted) {
            throw new IllegalStateException("Import " + id + " is " + state.label() + ", not " + wanted.label());
        }
    }

    void requireVersion(int seen) {
        StaleVersionException.check(seen, version);
    }

    /** True while a run should be under way but none has shown itself for so long that its server must have stopped. */
    boolean stalled(Instant now, Duration patience) {
        return running() && touchedAt.plus(patience).isBefore(now);
    }

    public boolean running() {
        return state == State.CHECKING || state == State.STORING;
    }

    public boolean canStore() {
        return state == State.CHECKED && problemCount == 0;
    }

    public boolean canDiscard() {
        return state == State.CHECKED;
    }

    public Long id() {
        return id;
    }

    public int version() {
        return version;
    }

    public String kind() {
        return kind;
    }

    public String fileName() {
        return fileName;
    }

    public State state() {
        return state;
    }

    String content() {
        return content;
    }

    public int rowsTotal() {
        return rowsTotal;
    }

    public int rowsDone() {
        return rowsDone;
    }

    public int problemCount() {
        return problemCount;
    }

    String problems() {
        return problems;
    }

    public int doubleCount() {
        return doubleCount;
    }

    String doubles() {
        return doubles;
    }

    boolean withDoubles() {
        return withDoubles;
    }

    public int storedCount() {
        return storedCount;
    }

    public int leftOut() {
        return rowsTotal - storedCount;
    }

    public String failure() {
        return failure;
    }

    public String madeBy() {
        return madeBy;
    }

    public Instant madeAt() {
        return madeAt;
    }
}
