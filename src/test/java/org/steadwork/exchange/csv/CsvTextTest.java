package org.steadwork.exchange.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Tables out and in again: every text comes back as it went, and none can be a formula on the way. */
class CsvTextTest {

    private static final Set<String> COLUMNS = Set.of("name", "phone");
    private static final Set<String> NAME = Set.of("name");

    private static List<CsvText.Row> read(String text) {
        return CsvText.read(text, COLUMNS, NAME, 100);
    }

    /** The characters with which a cell becomes a formula. Source: OWASP, CSV Injection. */
    @Test
    void noCellBeginsAsAFormulaAndAllComeBack() {
        char[] alphabet = {'=', '+', '-', '@', '\t', '\r', '\n', '\'', '"', ',', ';', 'a', '1', ' ', '\u00fc', '\u0001'};
        Random random = new Random(7);
        for (int i = 0; i < 20_000; i++) {
            StringBuilder made = new StringBuilder();
            for (int length = random.nextInt(6); length >= 0; length--) {
                made.append(alphabet[random.nextInt(alphabet.length)]);
            }
            String text = made.toString();
            String guarded = FormulaGuard.guarded(text);
            assertFalse("=+-@\t\r\n".indexOf(guarded.charAt(0)) >= 0, text);
            assertEquals(text, FormulaGuard.plain(guarded), text);
        }
    }

    @Test
    void aTableComesBackAsItWent() {
        List<String> names = List.of("=HYPERLINK(\"http://example.org\",\"x\")", "+44 1632 960123", "'tis", "'=quoted", "a \"b\" c", "two\nlines", "M\u00fcller, \u0141ukasz", "-");
        for (boolean mark : new boolean[] {false, true}) {
            byte[] written = CsvText.write(List.of("name", "phone"), names.stream().map(name -> List.of(name, "1")).toList(), mark);
            assertEquals(mark, written[0] == (byte) 0xEF && written[1] == (byte) 0xBB && written[2] == (byte) 0xBF);
            List<CsvText.Row> rows = read(CsvText.decode(written));
            assertEquals(names, rows.stream().map(row -> row.cells().get("name")).toList());
        }
    }

    @Test
    void numbersStayNumbers() {
        assertEquals("name,phone\r\n-5,1.5\r\n", new String(CsvText.write(List.of("name", "phone"), List.of(List.of(-5, 1.5)), false), StandardCharsets.UTF_8));
    }

    @Test
    void semicolonsAndTabsAreTakenToo() {
        for (String separator : List.of(",", ";", "\t")) {
            assertEquals("2", read("name" + separator + "phone\na" + separator + "2\n").get(0).cells().get("phone"), separator);
        }
    }

    @Test
    void rowsAreCountedAsASpreadsheetDoes() {
        assertEquals(List.of(2, 4), read("name\na\n \nb\n").stream().map(CsvText.Row::number).toList());
    }

    @Test
    void whatIsNoTableIsRefusedInWords() {
        for (String broken : List.of("", "\uFEFF", "name\n", "nom\na\n", "name,name\na,b\n", "phone\n1\n", "name\n\"open\n", "name\n\"a\"b\n")) {
            CsvText.NoTable refusal = assertThrows(CsvText.NoTable.class, () -> read(broken), broken);
            assertTrue(refusal.getMessage().endsWith("."), refusal.getMessage());
        }
        assertThrows(CsvText.NoTable.class, () -> CsvText.decode("M\u00fcller".getBytes(StandardCharsets.ISO_8859_1)));
        assertThrows(CsvText.NoTable.class, () -> CsvText.decode(new byte[] {'P', 'K', 3, 4, 0, 0}));
        List<String> many = new ArrayList<>();
        for (int i = 0; i < 102; i++) {
            many.add("a");
        }
        assertThrows(CsvText.NoTable.class, () -> read("name\n" + String.join("\n", many)));
    }
}
