package org.steadwork.retention;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steadwork.backup.SmallClinic;
import org.steadwork.tables.Table;
import org.steadwork.tables.Tables;

/**
 * Every table leads to its patient through foreign keys, by which export and removal find a person's rows, or stands here with what it holds
 * instead. A new table that does neither fails.
 */
class PersonTablesTest {

    private static final Map<String, String> OF_NO_PATIENT = new TreeMap<>(Map.ofEntries(
            Map.entry("account", "those who work here"), Map.entry("recovery_code", "those who work here"), Map.entry("sign_in_link", "those who work here"),
            Map.entry("sign_in_session", "those who work here"), Map.entry("sign_in_tries", "names typed at sign-in, hashed or of accounts"),
            Map.entry("known_address", "those who work here"), Map.entry("working_week", "those who work here"), Map.entry("clinic_leave", "those who work here"),
            Map.entry("report_token", "programs that ask for figures"), Map.entry("revision", "who changed something when"),
            Map.entry("audit_event", "stays whole; a patient stands in it as a number"), Map.entry("audit_head", "hashes"), Map.entry("audit_seal", "hashes"),
            Map.entry("person_removal", "that somebody was removed, as a number"), Map.entry("removed_case_tally", "counts by year"),
            Map.entry("employer", "employers"), Map.entry("employer_contact", "people at employers"), Map.entry("site", "employers"), Map.entry("room", "employers"),
            Map.entry("furniture", "desks; who sits there is the work-place assessment"), Map.entry("furniture_size", "desks"),
            Map.entry("correspondent", "doctors, insurers and others who are written to"), Map.entry("clinic_room", "rooms of the clinic"),
            Map.entry("group_report", "counts, small ones withheld"), Map.entry("signed_group_report", "counts, small ones withheld"),
            Map.entry("review_meeting", "when and who; what was said of a case is in meeting_case"), Map.entry("meeting_person", "who was there"),
            Map.entry("meeting_minutes", "stay as closed: file numbers and what was said, no names from the record; docs/operations.md says so"),
            Map.entry("meeting_addendum", "corrections of minutes"), Map.entry("import_job", "uploaded files; forgotten at every removal"),
            Map.entry("work_turn", "which node does the work by the clock"), Map.entry("first_run_key", "a hash for the first account"),
            Map.entry("worklist_state", "one row: how far Today has read"), Map.entry("backup_run", "backups"), Map.entry("clinic_mark", "the clinic"),
            Map.entry("demo_part", "the demo")));

    @TempDir
    Path folder;

    @Test
    void everyTableLeadsToItsPatientOrIsNamedHere() throws Exception {
        String url = SmallClinic.url(folder, "tables");
        SmallClinic.make(url, 1);
        try (Connection db = DriverManager.getConnection(url)) {
            Tables tables = Tables.read(db);
            Set<String> reached = new TreeSet<>(Set.of("patient"));
            while (tables.all().stream().filter(table -> table.references().stream().anyMatch(one -> reached.contains(one.parent()))).map(Table::name)
                    .map(reached::add).reduce(false, Boolean::logicalOr)) {
                // until nothing is added
            }
            Set<String> others = tables.all().stream().filter(table -> !tables.isHistory(table)).map(Table::name).filter(name -> !reached.contains(name))
                    .collect(Collectors.toCollection(TreeSet::new));
            assertEquals(new TreeSet<>(OF_NO_PATIENT.keySet()), others);
            Set<String> histories = tables.all().stream().filter(tables::isHistory).map(Table::name).filter(name -> tables.all().stream()
                    .noneMatch(table -> (table.name() + "_history").equals(name))).collect(Collectors.toCollection(TreeSet::new));
            assertEquals(Set.of(), histories, "earlier states of no table");
        }
    }
}
