package org.steadwork.account;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.arc.Arc;
import io.quarkus.arc.ManagedContext;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Inject;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import javax.sql.DataSource;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * The sealed audit trail on a database: whatever is done to it behind the product's back is found, and the first broken place is named.
 * Every test puts back what it took away, since the database is shared.
 */
abstract class AuditTrailContract {

    @Inject
    AuditTrail audit;

    @Inject
    AuditCheck check;

    @Inject
    AuditSealer sealer;

    @Inject
    CheckAudit command;

    @Inject
    DataSource source;

    @ConfigProperty(name = "steadwork.audit.anchor-file")
    String anchorFile;

    private final List<String> undo = new ArrayList<>();
    private String anchor;

    @BeforeEach
    void eightEntries() throws IOException {
        for (int i = 0; i < 8; i++) {
            audit.record("viewed a thing of this test", null, null, "entry " + i);
        }
        audit.head();
        assertTrue(check.whole().sound(), () -> check.latest().words());
        anchor = Files.readString(Path.of(anchorFile));
    }

    @AfterEach
    void putBack() throws IOException {
        for (int i = undo.size() - 1; i >= 0; i--) {
            sql(undo.get(i));
        }
        Files.writeString(Path.of(anchorFile), anchor);
        assertTrue(check.whole().sound(), () -> "not put back: " + check.latest().words());
    }

    @Test
    void aChangedEntryIsFoundAtItsPlace() {
        for (String change : List.of("actor = 'Somebody else'", "action = 'viewed nothing'", "detail = 'another'", "detail = null", "patient_id = 77",
                "account_id = 77", "address = '192.0.2.99'", "happened_at = timestamp with time zone '2020-01-01 00:00:00+00'")) {
            long place = last() - 3;
            long event = event(place);
            sql("create table kept_event as select * from audit_event where id = " + event);
            sql("update audit_event set " + change + " where id = " + event);
            broken(place, "is not what was sealed");
            sql("delete from audit_event where id = " + event);
            sql("insert into audit_event select * from kept_event");
            sql("drop table kept_event");
            assertTrue(check.whole().sound(), change);
        }
    }

    @Test
    void aDeletedEntryIsFoundWithOrWithoutItsSeal() {
        long place = last() - 4;
        take("audit_event", "id = " + event(place));
        broken(place, "was removed");
        take("audit_seal", "sequence = " + place);
        broken(place, "was removed");
        take("audit_seal", "sequence = " + (place + 1));
        AuditCheck.Result result = check.whole();
        assertEquals("Entries " + place + " to " + (place + 1) + " were removed", result.problem());
    }

    @Test
    void entriesInAnotherOrderAreFound() {
        long place = last() - 5;
        swap(place, place + 2);
        broken(place, "is not what was sealed");
        swap(place, place + 2);
        assertTrue(check.whole().sound());
        sql("update audit_seal set previous_hash = '" + "1".repeat(64) + "' where sequence = " + place);
        undo.add("update audit_seal set previous_hash = (select s.hash from audit_seal s where s.sequence = " + (place - 1) + ") where sequence = " + place);
        broken(place, "does not follow the one before it");
    }

    @Test
    void anEntryPutBetweenIsFound() {
        long place = last() - 2;
        long event = event(place);
        sql("insert into audit_event (id, happened_at, actor, action) values (999999999, current_timestamp, 'Nobody', 'viewed a thing')");
        undo.add("delete from audit_event where id = 999999999");
        sql("update audit_seal set event_id = 999999999 where sequence = " + place);
        undo.add("update audit_seal set event_id = " + event + " where sequence = " + place);
        broken(place, "is not what was sealed");
    }

    @Test
    void aShortenedTrailIsFound() {
        long last = last();
        long event = event(last);
        String hash = text("select hash from audit_seal where sequence = " + last);
        String before = text("select hash from audit_seal where sequence = " + (last - 1));
        take("audit_seal", "sequence = " + last);
        take("audit_event", "id = " + event);
        broken(last, "The end of the trail is missing");
        sql("update audit_head set sealed = " + (last - 1) + ", hash = '" + before + "'");
        undo.add("update audit_head set sealed = " + last + ", hash = '" + hash + "'");
        AuditCheck.Result result = check.whole();
        assertTrue(result.problem() != null && result.problem().contains("the file beside the database knows of " + last), "also where its end was moved: "
                + result.words());
        assertFalse(check.last(2).sound(), "the look at the start finds it too");
    }

    /** Work goes on after the trail was shortened: the file beside the database does not move on over the gap. */
    @Test
    void aShortenedTrailStaysFoundWhenItGrowsPastItsFormerEnd() {
        long last = last();
        String hash = text("select hash from audit_seal where sequence = " + last);
        String before = text("select hash from audit_seal where sequence = " + (last - 2));
        String events = event(last - 1) + ", " + event(last);
        take("audit_seal", "sequence > " + (last - 2));
        take("audit_event", "id in (" + events + ")");
        sql("update audit_head set sealed = " + (last - 2) + ", hash = '" + before + "'");
        undo.add("update audit_head set sealed = " + last + ", hash = '" + hash + "'");
        undo.add("delete from audit_event where detail like 'grown %'");
        undo.add("delete from audit_seal where sequence > " + (last - 2));
        for (int i = 0; i < 5; i++) {
            audit.record("viewed a thing of this test", null, null, "grown " + i);
        }
        audit.head();
        assertTrue(last() > last, "it did not grow");
        AuditCheck.Result result = check.whole();
        assertTrue(result.problem() != null && result.problem().contains("the trail was written anew"), result.words());
    }

    @Test
    void aTrailWrittenAnewIsFoundByTheFileBesideTheDatabase() {
        long last = last();
        take("audit_head", "id = 1");
        assertEquals("The record of where the trail ends was removed", check.whole().problem());
        sql("insert into audit_head (id, trail, sealed, hash) select 1, 'another-trail', " + last + ", hash from audit_seal where sequence = " + last);
        AuditCheck.Result result = check.whole();
        assertTrue(result.problem().contains("belongs to another trail"), result.words());
        sql("delete from audit_head");
    }

    @Test
    void theFileBesideTheDatabaseIsMissed() throws IOException {
        Files.delete(Path.of(anchorFile));
        assertEquals("The file that keeps the end of the trail is missing", check.whole().problem());
        Files.writeString(Path.of(anchorFile), "nonsense");
        assertTrue(check.whole().problem().contains("cannot be read"));
        String[] words = anchor.split(" ");
        Files.writeString(Path.of(anchorFile), words[0] + " " + words[1] + " " + "f".repeat(64));
        assertTrue(check.whole().problem().contains("was written anew"), check.latest().words());
    }

    @Test
    void theCommandSaysWhatIsWrongAndEndsWithIt() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertEquals(0, command.check(new String[0], new PrintStream(out, true, StandardCharsets.UTF_8)));
        assertTrue(out.toString(StandardCharsets.UTF_8).startsWith("The audit trail is sound. Entries 1 to "), out.toString(StandardCharsets.UTF_8));
        long place = last() - 1;
        String detail = text("select detail from audit_event where id = " + event(place));
        sql("update audit_event set detail = 'another' where id = " + event(place));
        undo.add("update audit_event set detail = '" + detail + "' where id = " + event(place));
        out.reset();
        assertEquals(1, command.check(new String[0], new PrintStream(out, true, StandardCharsets.UTF_8)));
        assertTrue(out.toString(StandardCharsets.UTF_8).contains("Entry " + place + " is not what was sealed"), out.toString(StandardCharsets.UTF_8));
        assertEquals(2, command.check(new String[]{"x"}, new PrintStream(out, true, StandardCharsets.UTF_8)));
    }

    @Test
    void entriesStoredBeforeThereWasAChainAreSealedInOrder() {
        long first = -20; // no number of the sequence; also far from where a quick look goes
        for (int i = 0; i < 3; i++) {
            sql("insert into audit_event (id, happened_at, actor, action, detail) values (" + (first + i)
                    + ", timestamp with time zone '2026-11-25 10:00:00+00', 'Of before', 'viewed a thing', 'old " + i + "')");
        }
        assertEquals(3, check.whole().waiting());
        long before = last();
        audit.head();
        assertTrue(check.whole().sound());
        assertEquals(List.of(first, first + 1, first + 2), List.of(event(before + 1), event(before + 2), event(before + 3)));
        undo.clear();
        anchor = readAnchor();
    }

    @Test
    void manyAtOneMomentAreAllSealedOnce() {
        long before = last();
        CompletableFuture.allOf(IntStream.range(0, 200).mapToObj(i -> CompletableFuture.runAsync(() -> inRequest(
                () -> audit.record("viewed a thing of this test", null, null, "at once " + i)))).toArray(CompletableFuture[]::new)).join();
        audit.head();
        assertTrue(last() >= before + 200);
        assertTrue(check.whole().sound(), () -> check.latest().words());
        assertEquals(0, check.latest().waiting());
        anchor = readAnchor();
    }

    private static void inRequest(Runnable work) {
        ManagedContext context = Arc.container().requestContext();
        context.activate();
        try {
            work.run();
        } finally {
            context.terminate();
        }
    }

    private void broken(long place, String words) {
        AuditCheck.Result result = check.whole();
        assertNotNull(result.problem(), "not found");
        assertTrue(result.problem().contains(words), result.words());
        assertEquals(place - 1, result.to(), "up to there all is sound: " + result.words());
    }

    private void swap(long one, long two) {
        long first = event(one);
        long second = event(two);
        sql("update audit_seal set event_id = -1 where sequence = " + one);
        sql("update audit_seal set event_id = " + first + " where sequence = " + two);
        sql("update audit_seal set event_id = " + second + " where sequence = " + one);
    }

    /** Deletes rows and keeps them for putting back. */
    private void take(String table, String which) {
        String kept = "kept_" + undo.size();
        sql("create table " + kept + " as select * from " + table + " where " + which);
        sql("delete from " + table + " where " + which);
        undo.add("drop table " + kept);
        undo.add("insert into " + table + " select * from " + kept);
    }

    private String readAnchor() {
        try {
            return Files.readString(Path.of(anchorFile));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private long last() {
        return Long.parseLong(text("select max(sequence) from audit_seal"));
    }

    private long event(long place) {
        return Long.parseLong(text("select event_id from audit_seal where sequence = " + place));
    }

    private void sql(String statement) {
        with(db -> {
            try (PreparedStatement run = db.prepareStatement(statement)) {
                return run.executeUpdate();
            }
        });
    }

    private String text(String query) {
        return with(db -> {
            try (PreparedStatement run = db.prepareStatement(query); ResultSet row = run.executeQuery()) {
                return row.next() ? row.getString(1) : null;
            }
        });
    }

    private interface Work<T> {
        T on(Connection db) throws SQLException;
    }

    private <T> T with(Work<T> work) {
        return QuarkusTransaction.requiringNew().call(() -> {
            try (Connection db = source.getConnection()) {
                return work.on(db);
            }
        });
    }
}
