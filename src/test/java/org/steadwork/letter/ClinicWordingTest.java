package org.steadwork.letter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steadwork.content.Content;
import org.steadwork.content.ContentException;

/** The clinic's own words: taken up, checked, and never without what must stay. */
class ClinicWordingTest {

    private final LetterKinds kinds = LetterKinds.read(DisclosureContent.read());

    @TempDir
    Path folder;

    private LetterKind reworded(String key, String yaml) {
        return ClinicWording.apply(kinds.find(key).orElseThrow(), Content.yaml(key + ".yaml", new StringReader(yaml)));
    }

    @Test
    void headingsAndFirstWordsCanBeTheClinicsOwn() {
        LetterKind kind = reworded("employer_report", """
                title: Work report
                sections:
                  - {key: certificate, heading: Please note, start: This is not a medical certificate of any kind.}
                """);
        assertEquals("Work report", kind.title());
        assertEquals("Please note", kind.section("certificate").orElseThrow().heading());
        assertEquals(kinds.find("employer_report").orElseThrow().sections().size(), kind.sections().size());
    }

    @Test
    void whatMustStayCannotBeTakenOut() {
        for (String[] words : new String[][] {{"employer_report", "certificate"}, {"employer_report", "advisory"}, {"urgent_referral", "caution"},
                {"urgent_referral", "defers"}, {"routine_referral", "defers"}, {"progress_report", "caution"}, {"discharge_summary", "defers"}}) {
            ContentException problem = assertThrows(ContentException.class,
                    () -> reworded(words[0], "sections:\n  - {key: " + words[1] + ", start: Kind regards.}\n"));
            assertTrue(problem.getMessage().contains("not taken out") && problem.getMessage().contains(words[0] + ".yaml"), problem.getMessage());
        }
    }

    @Test
    void slipsAreNamedWithFileAndLine() {
        assertTrue(assertThrows(ContentException.class, () -> reworded("employer_report", "sections:\n  - {key: no_such, start: x}\n")).getMessage()
                .contains("no section 'no_such'"));
        assertTrue(assertThrows(ContentException.class, () -> reworded("employer_report", "gate: none\n")).getMessage().contains("gate"));
        assertTrue(assertThrows(ContentException.class, () -> reworded("employer_report", "sections:\n  - {key: request, start: 'By {tomorrow}'}\n")).getMessage()
                .contains("{tomorrow}"));
    }

    @Test
    void filesInTheDataFolderAreRead() throws IOException {
        ClinicWording wording = new ClinicWording();
        wording.dataFolder = folder.toString();
        LetterKind plain = kinds.find("employer_report").orElseThrow();
        assertEquals(plain, wording.reworded(plain));
        Path own = Files.createDirectories(folder.resolve("letters/kinds"));
        Files.writeString(own.resolve("employer_report.yaml"), "title: Work report\n");
        Files.writeString(own.resolve("employer_reprot.yaml"), "title: Slip\n");
        Files.writeString(folder.resolve("letters/letterhead.yaml"), "name: Own Clinic\npaper: letter\n");
        assertEquals("Work report", wording.reworded(plain).title());
        assertEquals(java.util.List.of("employer_reprot.yaml"), wording.strays(Set.of("employer_report")));
        assertEquals("Own Clinic", wording.letterhead().orElseThrow().text("name"));
        Files.writeString(folder.resolve("letters/letterhead.yaml"), "paper: foolscap\n");
        assertThrows(ContentException.class, wording::letterhead);
    }
}
