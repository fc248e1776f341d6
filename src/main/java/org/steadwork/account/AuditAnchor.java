package org.steadwork.account;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import jakarta.inject.Inject;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.steadwork.account.trail.AuditChain;
import org.steadwork.account.trail.TrailEndFile;
import org.steadwork.account.trail.TrailHead;

/**
 * Where the sealed trail ended last, kept in a file beside the database: who shortens the trail or writes it anew in the database
 * has not changed this. It may lag behind by what was sealed while the process died; it is never ahead of the database.
 */
@ApplicationScoped
class AuditAnchor {

    private static final Logger LOG = Logger.getLogger("steadwork");

    @ConfigProperty(name = "steadwork.audit.anchor-file")
    String name;

    @Inject
    Clock clock;

    /** Returns what the file says, nothing when there is none. */
    Optional<TrailHead> read() {
        return file().read();
    }

    /** Begins a file for a trail that has none; one that belongs to another trail stays, for the check to find. */
    void open(TrailHead head) {
        if (read().isEmpty()) {
            write(head);
        }
    }

    /** Asks the trail for the hash at a place, null when there is none. */
    interface HashAt {
        String of(long place) throws SQLException;
    }

    /**
     * Moves the file on, as long as it belongs to this trail and the trail still has the entry it keeps. A trail that was shortened and has grown
     * past that place since does not: the file stays as it is, for the check to find.
     */
    void keep(TrailHead head, HashAt stored) throws SQLException {
        TrailHead kept = read().orElse(head);
        if (kept.trail().equals(head.trail()) && kept.sealed() <= head.sealed()
                && kept.hash().equals(kept.sealed() == 0 ? AuditChain.START : stored.of(kept.sealed()))) {
            write(head);
        }
    }

    private void write(TrailHead head) {
        try {
            file().write(head, Instant.now(clock));
        } catch (IOException e) {
            LOG.warnf("The end of the audit trail cannot be noted in %s: %s", name, e.getMessage());
        }
    }

    private TrailEndFile file() {
        return new TrailEndFile(Path.of(name));
    }
}
