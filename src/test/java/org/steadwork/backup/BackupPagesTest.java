package org.steadwork.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.agroal.api.AgroalDataSource;
import io.quarkus.arc.ClientProxy;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeUnit;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steadwork.account.Role;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

/** Backups from the page and by the schedule, of the running clinic: listed, handed out, thinned, and a failure is said where the lead looks. */
@QuarkusTest
class BackupPagesTest {

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    Backups backups;

    @Inject
    BackupSchedule schedule;

    @Inject
    AgroalDataSource source;

    @TempDir
    Path folder;

    private Backups inside;
    private Path before;
    private Visitor lead;

    @BeforeEach
    void useAFolderOfItsOwn() {
        inside = ClientProxy.unwrap(backups);
        before = inside.folder;
        inside.folder = folder;
        cases.open("Bertha", "Backhouse");
        lead = accounts.visitor(Role.LEAD);
    }

    @AfterEach
    void giveBackTheFolder() {
        inside.folder = before;
    }

    @Test
    void oneMadeFromThePageIsListedHandedOutAndReadsBack() throws Exception {
        lead.open("/clinic/backup");
        Document page = lead.submit("/clinic/backup", Map.of());
        assertEquals(200, lead.status());
        for (int i = 0; i < 300 && page.text().contains("A backup is being made"); i++) { // on a slow machine the page does not wait to its end
            TimeUnit.MILLISECONDS.sleep(200);
            page = lead.open("/clinic/backup");
        }
        String text = page.text();
        String file = page.select("a[href$=.backup]").text();
        assertTrue(file.matches(".*-asked\\.backup"), text);
        lead.open("/clinic/backup/" + file);
        byte[] sent = lead.answer().asByteArray();
        Path copy = Files.write(folder.resolve("copy"), sent);
        BackupFile.Read read = new BackupFile(copy, backups.key().orElseThrow()).check();
        try (Connection db = source.getConnection()) {
            Map<String, List<String>> now = RowByRow.of(db);
            assertEquals(now.keySet(), new TreeSet<>(read.head().tables().stream().map(BackupHead.Part::name).toList()));
            for (BackupHead.Part part : read.head().tables()) {
                if (!Set.of("audit_event", "sign_in_session", "backup_run").contains(part.name())) {
                    assertEquals(now.get(part.name()).size(), part.rows(), part.name());
                }
            }
        }
        assertFalse(new String(sent, StandardCharsets.ISO_8859_1).contains("Backhouse"), "a name in a sealed file");
    }

    @Test
    void onlyTheLeadMakesOrTakesOne() {
        for (Role role : List.of(Role.CLINICIAN, Role.ASSISTANT)) {
            Visitor other = accounts.visitor(role);
            other.open("/clinic/backup");
            assertEquals(403, other.status());
        }
        lead.open("/clinic/backup/..%2f..%2fpom.xml");
        assertTrue(lead.status() == 404 || lead.status() == 400, "" + lead.status());
        lead.open("/clinic/backup/clinic-2030-01-01T00-00-00-asked.backup");
        assertEquals(404, lead.status());
    }

    @Test
    void theScheduleMakesOneWhenTheLastIsOldAndKeepsTheNewest() throws Exception {
        for (int day = 10; day < 30; day++) {
            Files.writeString(folder.resolve(inside.database + "-2020-01-" + day + "T00-00-00-scheduled.backup"), "old");
        }
        Path asked = Files.writeString(folder.resolve(inside.database + "-2019-01-01T00-00-00-asked.backup"), "asked for");
        Path foreign = Files.writeString(folder.resolve("holiday.jpg"), "not ours");
        backups.begin(null).orElseThrow().get(60, TimeUnit.SECONDS);
        List<String> scheduled = backups.files().stream().map(Backups.Kept::name).filter(name -> name.contains("scheduled")).toList();
        assertEquals(inside.keep, scheduled.size(), scheduled.toString());
        assertFalse(scheduled.get(0).contains("2020"), "the new one is kept");
        assertTrue(Files.exists(asked) && Files.exists(foreign), "what the schedule did not make was removed");
        int many = backups.files().size();
        schedule.look();
        assertTrue(backups.running().isEmpty() && backups.files().size() == many, "one was made though the last is new");
    }

    @Test
    void aFailureIsShownOnThePageOnClinicAndLeavesNoHalfFile() throws IOException {
        Path notAFolder = Files.writeString(folder.resolve("in-the-way"), "a file");
        inside.folder = notAFolder;
        lead.open("/clinic/backup");
        Document page = lead.submit("/clinic/backup", Map.of());
        assertTrue(page.text().contains("failed"), page.text());
        assertTrue(lead.open("/clinic").text().contains("The last backup failed"), lead.page().text());
        inside.folder = folder;
        lead.open("/clinic/backup");
        lead.submit("/clinic/backup", Map.of());
        assertFalse(lead.open("/clinic").text().contains("The last backup failed"));
        assertTrue(Files.list(folder).noneMatch(file -> file.toString().endsWith(".part")));
    }
}
