package org.steadwork.caseload;

import io.quarkus.qute.RawString;
import java.util.List;

/**
 * One section of a page of the caseload.
 *
 * @param note the one sentence in the margin
 * @param words paragraphs before the table
 * @param figure finished drawing in three widths, or null; {@code figureWords} under it
 * @param table null where there is nothing to count
 * @param definitions what its figures count
 * @param form true for the section that holds the choice of two groups
 */
record Section(String id, String title, String note, List<String> words, RawString figure, String figureWords, FigureTable table,
        List<Definitions.Definition> definitions, boolean form) {

    Section {
        words = List.copyOf(words);
        definitions = List.copyOf(definitions);
    }

    Section(String id, String title, String note, List<String> words, String figure, String figureWords, FigureTable table,
            List<Definitions.Definition> definitions) {
        this(id, title, note, words, figure == null || figure.isEmpty() ? null : new RawString(figure), figureWords, table, definitions, false);
    }
}
