package org.steadwork.account;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.steadwork.account.trail.AuditChain;
import org.steadwork.account.trail.TrailEntry;
import org.steadwork.account.trail.TrailHead;

/** The sealed chain in the database, read and written row by row: plain SQL, since a long trail must never be held in memory. */
@ApplicationScoped
class AuditStore {

    static final String ENTRY = "e.id, e.happened_at, e.account_id, e.actor, e.action, e.patient_id, e.case_file_id, e.detail, e.address";

    /** Returns where the sealed part ends and holds it against other sealers until the transaction ends; makes it in a new clinic. */
    TrailHead lockedHead(Connection db) throws SQLException {
        TrailHead head = head(db, " for update");
        if (head != null) {
            return head;
        }
        TrailHead first = new TrailHead(UUID.randomUUID().toString(), 0, AuditChain.START);
        try (PreparedStatement make = db.prepareStatement("insert into audit_head (id, trail, sealed, hash) values (1, ?, 0, ?)")) {
            make.setString(1, first.trail());
            make.setString(2, first.hash());
            make.executeUpdate();
        }
        return first;
    }

    /** Returns where the sealed part ends, null when nothing says so. */
    TrailHead head(Connection db) throws SQLException {
        return head(db, "");
    }

    private static TrailHead head(Connection db, String lock) throws SQLException {
        try (PreparedStatement query = db.prepareStatement("select trail, sealed, hash from audit_head where id = 1" + lock);
                ResultSet row = query.executeQuery()) {
            return row.next() ? new TrailHead(row.getString(1), row.getLong(2), row.getString(3)) : null;
        }
    }

    /** Returns entries that are not sealed yet, in the order of their numbers. */
    List<TrailEntry> unsealed(Connection db, long fromId, int most) throws SQLException {
        try (PreparedStatement query = db.prepareStatement("select " + ENTRY + " from audit_event e where e.id >= ? and not exists"
                + " (select 1 from audit_seal s where s.event_id = e.id) order by e.id fetch first " + most + " rows only")) {
            query.setLong(1, fromId);
            try (ResultSet row = query.executeQuery()) {
                List<TrailEntry> entries = new ArrayList<>();
                while (row.next()) {
                    entries.add(entry(row, 1));
                }
                return entries;
            }
        }
    }

    /** Seals entries in the given order and returns the new end. */
    TrailHead seal(Connection db, TrailHead head, List<TrailEntry> entries) throws SQLException {
        long sequence = head.sealed();
        String hash = head.hash();
        try (PreparedStatement insert = db.prepareStatement("insert into audit_seal (sequence, event_id, previous_hash, hash) values (?, ?, ?, ?)")) {
            for (TrailEntry entry : entries) {
                String next = AuditChain.hash(hash, ++sequence, entry);
                insert.setLong(1, sequence);
                insert.setLong(2, entry.id());
                insert.setString(3, hash);
                insert.setString(4, next);
                insert.addBatch();
                hash = next;
            }
            insert.executeBatch();
        }
        try (PreparedStatement move = db.prepareStatement("update audit_head set sealed = ?, hash = ? where id = 1")) {
            move.setLong(1, sequence);
            move.setString(2, hash);
            move.executeUpdate();
        }
        return new TrailHead(head.trail(), sequence, hash);
    }

    /** Returns how many entries are stored and not sealed. */
    long waiting(Connection db) throws SQLException {
        return Math.max(0, number(db, "select (select count(*) from audit_event) - (select count(*) from audit_seal)"));
    }

    long lastId(Connection db) throws SQLException {
        return number(db, "select coalesce(max(id), 0) from audit_event");
    }

    private static long number(Connection db, String sql) throws SQLException {
        try (PreparedStatement query = db.prepareStatement(sql); ResultSet row = query.executeQuery()) {
            row.next();
            return row.getLong(1);
        }
    }

    /** Returns the hash at a place in the chain, null when there is none. */
    String hashAt(Connection db, long sequence) throws SQLException {
        try (PreparedStatement query = db.prepareStatement("select hash from audit_seal where sequence = ?")) {
            query.setLong(1, sequence);
            try (ResultSet row = query.executeQuery()) {
                return row.next() ? row.getString(1) : null;
            }
        }
    }

    /** Reads an entry from the columns of {@link #ENTRY}, the first of which is {@code at}. */
    static TrailEntry entry(ResultSet row, int at) throws SQLException {
        return new TrailEntry(row.getLong(at), row.getObject(at + 1, OffsetDateTime.class).toInstant(), number(row, at + 2), row.getString(at + 3),
                row.getString(at + 4), number(row, at + 5), number(row, at + 6), row.getString(at + 7), row.getString(at + 8));
    }

    private static Long number(ResultSet row, int column) throws SQLException {
        long value = row.getLong(column);
        return row.wasNull() ? null : value;
    }
}
