package org.steadwork.account;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import javax.sql.DataSource;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.steadwork.account.trail.AuditChain;
import org.steadwork.account.trail.TrailHead;
import org.steadwork.account.trail.TrailWalk;

/** Checks that the audit trail is what was sealed: whole, or its last part at the start of the clinic. */
@ApplicationScoped
public class AuditCheck {

    private static final Logger LOG = Logger.getLogger("steadwork");
    private static final int FETCHED_AT_ONCE = 500;

    /**
     * What a check found.
     *
     * @param from the first place looked at
     * @param to the last place that holds
     * @param problem what is wrong at the first place that does not hold, null when all hold
     * @param waiting entries that are stored and not sealed yet
     */
    public record Result(Instant checkedAt, long from, long to, String problem, long waiting) {

        public boolean sound() {
            return problem == null;
        }

        public String words() {
            String looked = to < from ? "No entry is sealed yet" : "Entries " + from + " to " + to + " are as they were sealed";
            return sound() ? looked + (waiting == 0 ? "." : "; " + waiting + " wait to be sealed.")
                    : problem + ". " + (to < from ? "" : "Up to entry " + to + " all is as it was sealed. ") + "Tell whoever keeps the backups; compare with one of them.";
        }
    }

    @Inject
    DataSource source;

    @Inject
    AuditStore store;

    @Inject
    AuditAnchor anchor;

    @Inject
    Clock clock;

    @ConfigProperty(name = "steadwork.audit.checked-at-start")
    int checkedAtStart;

    private volatile Result latest;

    /** Looks at the last part of the trail; what is wrong is said loudly, but the clinic opens, since records are needed for care. */
    void start(@Observes @Priority(60) StartupEvent event) {
        Result result = last(checkedAtStart);
        if (!result.sound()) {
            LOG.errorf("The audit trail is broken. %s", result.words());
        }
    }

    /** Checks the whole trail. */
    public Result whole() {
        return walk(0);
    }

    /** Checks the last entries and that nothing is missing after them. */
    public Result last(long most) {
        return walk(most);
    }

    /** Returns what the latest check since the start found; where nothing was sealed then, the last part is looked at now. */
    public Result latest() {
        return latest.sound() && latest.to() < latest.from() ? last(checkedAtStart) : latest;
    }

    private Result walk(long most) {
        Result result = QuarkusTransaction.requiringNew().call(() -> {
            try (Connection db = source.getConnection()) {
                return walk(db, most);
            }
        });
        latest = result;
        return result;
    }

    private Result walk(Connection db, long most) throws SQLException {
        TrailHead head = store.head(db);
        long sealed = head == null ? 0 : head.sealed();
        long before = most == 0 ? 0 : Math.max(0, sealed - most);
        String hash = before == 0 ? AuditChain.START : store.hashAt(db, before);
        TrailWalk walk = new TrailWalk(before, hash);
        if (hash == null) {
            walk.note("Entry " + before + " was removed");
        } else {
            follow(db, walk);
        }
        compare(db, walk, head);
        return new Result(Instant.now(clock), before + 1, walk.sequence(), walk.problem(), store.waiting(db));
    }

    private static void follow(Connection db, TrailWalk walk) throws SQLException {
        try (PreparedStatement query = db.prepareStatement("select s.sequence, s.previous_hash, s.hash, " + AuditStore.ENTRY
                + " from audit_seal s left join audit_event e on e.id = s.event_id where s.sequence > ? order by s.sequence")) {
            query.setLong(1, walk.sequence());
            query.setFetchSize(FETCHED_AT_ONCE);
            try (ResultSet row = query.executeQuery()) {
                boolean holds = true;
                while (holds && row.next()) {
                    boolean there = row.getObject(4) != null;
                    holds = walk.take(row.getLong(1), row.getString(2), row.getString(3), there ? AuditStore.entry(row, 4) : null);
                }
            }
        }
    }

    /** Compares the end with the two places that know it: the head in the database and the file beside it. */
    private void compare(Connection db, TrailWalk walk, TrailHead head) throws SQLException {
        if (head == null) {
            walk.note("The record of where the trail ends was removed");
            return;
        }
        walk.endsAt(head, "the record of its end");
        if (walk.problem() == null && (walk.sequence() != head.sealed() || !walk.hash().equals(head.hash()))) {
            walk.note("The record of where the trail ends is not that of its last entry, " + walk.sequence());
        }
        TrailHead kept = anchor.read().orElse(null);
        if (kept == null) {
            walk.note("The file that keeps the end of the trail is missing");
        } else if (!kept.trail().equals(head.trail())) {
            walk.note("The file that keeps the end of the trail belongs to another trail, or cannot be read");
        } else {
            walk.endsAt(kept, "the file beside the database");
            String at = kept.sealed() == 0 ? AuditChain.START : store.hashAt(db, kept.sealed());
            if (!kept.hash().equals(at)) {
                walk.note("Entry " + kept.sealed() + " is not the one that the file beside the database keeps: the trail was written anew");
            }
        }
    }
}
