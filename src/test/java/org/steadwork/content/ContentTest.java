package org.steadwork.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.junit.jupiter.api.Test;

class ContentTest {

    @Test
    void yamlKeepsTheDigitsThatWereWritten() {
        Entry entry = Content.yaml("x.yaml", new StringReader("value: 12.50\nparts: [a, b]\nnested:\n  - key: no\n"));
        assertEquals("12.50", entry.text("value"));
        assertEquals(12.5, entry.number("value"));
        assertEquals(List.of("a", "b"), entry.texts("parts"));
        assertEquals("no", entry.entries("nested").get(0).text("key"));
        assertEquals(4, entry.entries("nested").get(0).line());
    }

    @Test
    void aWrongNumberNamesFileLineAndReason() {
        Entry entry = Content.yaml("x.yaml", new StringReader("items:\n  - n: 1\n  - n: one\n")).entries("items").get(1);
        ContentException problem = assertThrows(ContentException.class, () -> entry.number("n"));
        assertEquals("x.yaml, line 3: 'n' must be a number, but is 'one'", problem.getMessage());
    }

    @Test
    void aMissingKeyIsNamed() {
        Entry entry = Content.yaml("x.yaml", new StringReader("a: 1\n"));
        assertTrue(assertThrows(ContentException.class, () -> entry.text("b")).getMessage().contains("'b' is missing"));
    }

    @Test
    void brokenYamlNamesTheLine() {
        ContentException problem = assertThrows(ContentException.class,
                () -> Content.yaml("x.yaml", new StringReader("a: 1\nb: [1, 2\nc: 3\n")));
        assertTrue(problem.getMessage().startsWith("x.yaml, line 3"), problem.getMessage());
    }

    @Test
    void csvRowOfAnotherWidthIsRefused() throws IOException {
        assertEquals(2, Content.csv("x.csv", new StringReader("# Source: none\na,b\n1,2\n3,4\n")).size());
        assertThrows(ContentException.class, () -> Content.csv("x.csv", new StringReader("a,b\n1,2,3\n")));
    }

    @Test
    void aDuplicatedKeyIsRefused() {
        assertThrows(ContentException.class, () -> Content.yaml("x.yaml", new StringReader("a: 1\na: 2\n")));
    }
}
