package org.steadwork.letter;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.steadwork.letter.disclosure.InformationCategory;

/**
 * One section of a kind of letter, as the content lays it down.
 *
 * @param key         name within the letter
 * @param heading     heading as printed
 * @param information the category its words belong to; the section stands in a letter only if the reader may have it
 * @param required    whether the letter cannot be signed while it is empty
 * @param hint        what to write, for the clinician; may be empty
 * @param start       the words a draft begins with; may be empty; {@code {name}} stands for a value of the case
 * @param columns     headings of the columns when the section is a table; empty for plain text
 * @param standing    set when the section holds words that must stay
 * @param drawing     what the lines of the section name to be drawn; empty for plain text and tables
 * @param needsTick   true when the letter cannot be signed until the reader may have this section
 * @param keeps       phrases that a rewording must still hold, any case; empty unless standing
 */
record SectionKind(String key, String heading, InformationCategory information, boolean required, String hint, String start,
                   List<String> columns, Optional<Drawn> drawing, boolean needsTick, Optional<Standing> standing, List<String> keeps) {

    /** What a section can draw. */
    enum Drawn {
        TREND, EXERCISES, DESK
    }

    SectionKind {
        columns = List.copyOf(columns);
        keeps = List.copyOf(keeps);
    }

    boolean table() {
        return !columns.isEmpty();
    }

    /** Returns the phrases of {@link #keeps} that a text has lost. */
    List<String> lostFrom(String text) {
        String plain = plain(text);
        return keeps.stream().filter(phrase -> !plain.contains(plain(phrase))).toList();
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    }
}
