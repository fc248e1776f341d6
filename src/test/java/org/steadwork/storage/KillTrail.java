package org.steadwork.storage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.steadwork.account.trail.AuditChain;
import org.steadwork.account.trail.TrailEntry;

/**
 * Walks the chain of the audit trail that a killed process left: every link holds from the first on, none is missing, the record of the end is that
 * of the last link, and the file beside the database is not ahead of it. Entries that were stored and not sealed when the process died are no fault.
 */
final class KillTrail {

    private final Connection db;
    private final Path endFile;
    private final Map<Long, String> hashes = new HashMap<>();

    KillTrail(Connection db, Path endFile) {
        this.db = db;
        this.endFile = endFile;
    }

    List<String> wrong() throws SQLException, IOException {
        List<String> wrong = new ArrayList<>();
        String hash = AuditChain.START;
        hashes.put(0L, hash);
        long place = 0;
        try (Statement sql = db.createStatement(); ResultSet row = sql.executeQuery("select s.sequence, s.previous_hash, s.hash, e.id, e.happened_at, e.account_id, e.actor,"
                + " e.action, e.patient_id, e.case_file_id, e.detail, e.address from audit_seal s left join audit_event e on e.id = s.event_id order by s.sequence")) {
            while (row.next() && wrong.isEmpty()) {
                place++;
                if (row.getLong(1) != place || row.getObject(4) == null || !hash.equals(row.getString(2))) {
                    wrong.add("audit trail: place " + row.getLong(1) + " does not follow " + (place - 1) + ", or its entry is missing");
                } else if (!AuditChain.hash(hash, place, entry(row)).equals(row.getString(3))) {
                    wrong.add("audit trail: entry " + place + " is not what was sealed");
                }
                hash = row.getString(3);
                hashes.put(place, hash);
            }
        }
        ends(place, hash, wrong);
        if (place == 0) {
            wrong.add("audit trail: nothing was sealed");
        }
        return wrong;
    }

    private static TrailEntry entry(ResultSet row) throws SQLException {
        return new TrailEntry(row.getLong(4), row.getObject(5, OffsetDateTime.class).toInstant(), row.getObject(6, Long.class), row.getString(7), row.getString(8),
                row.getObject(9, Long.class), row.getObject(10, Long.class), row.getString(11), row.getString(12));
    }

    private void ends(long place, String hash, List<String> wrong) throws SQLException, IOException {
        String trail = "";
        try (Statement sql = db.createStatement(); ResultSet row = sql.executeQuery("select trail, sealed, hash from audit_head where id = 1")) {
            if (!row.next() || row.getLong(2) != place || !row.getString(3).equals(hash)) {
                wrong.add("audit trail: the record of its end is not that of its last entry, " + place);
                return;
            }
            trail = row.getString(1);
        }
        String[] kept = Files.readString(endFile).strip().split(" ");
        if (!kept[0].equals(trail) || !kept[2].equals(hashes.get(Long.parseLong(kept[1])))) {
            wrong.add("audit trail: the file beside it says " + kept[1] + ", the trail has " + place);
        }
    }
}
