package org.steadwork.letter;

import io.quarkus.qute.RawString;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * What the print template of a letter gets: finished words only, nothing that was held back.
 *
 * @param clinic    name of the clinic, then its address, line by line
 * @param to        the reader, line by line
 * @param about     the line with dates and reference
 * @param title     the heading
 * @param sections  the sections that have words, in printed order
 * @param signature the clinician, line by line
 * @param foot      the small print
 * @param signed    when it was signed, in words; empty while it is a draft, and the page says so
 */
public record PrintedLetter(List<String> clinic, List<String> to, String about, String title, List<Section> sections,
                            List<String> signature, String foot, String signed) {

    /** A straight apostrophe within or at the end of a word; it is set as a curved one. */
    private static final Pattern APOSTROPHE = Pattern.compile("(?<=\\p{L})'(?=\\p{L})|(?<=s)'(?=\\s)");

    /** Characters of a section that is not broken over two pages: about eight lines. */
    private static final int SHORT = 700;

    /**
     * One printed section.
     *
     * @param standing true for words that must stay in the letter
     * @param columns  headings when it is a table, else empty
     */
    public record Section(String key, String heading, List<Block> blocks, boolean standing, List<String> columns, List<List<String>> rows,
                          List<Drawing> drawings) {

        public boolean drawn() {
            return !drawings.isEmpty();
        }

        public boolean table() {
            return !columns.isEmpty();
        }

        /** Returns whether it is short enough to stand on one page with its heading, rather than to be broken. */
        public boolean whole() {
            return !table() && (drawn() ? drawings.size() == 1 : words().length() <= SHORT);
        }

        /** Returns the words without their division into blocks. */
        public String words() {
            return String.join(" ", blocks.stream().flatMap(block -> block.lines().stream()).toList());
        }
    }

    /**
     * A drawing with its words.
     *
     * @param svg    the drawing; null where there is none for the words
     * @param beside true when the words stand beside it, false for below
     */
    public record Drawing(RawString svg, boolean beside, List<String> words) {
    }

    /** A paragraph, or a list of points. */
    public record Block(boolean points, List<String> lines) {
    }

    public boolean draft() {
        return signed.isEmpty();
    }

    /** Returns a section by its key, if it has words. */
    public Optional<Section> find(String key) {
        return sections.stream().filter(section -> section.key().equals(key)).findFirst();
    }

    /** Returns the sections a template has not placed by name. */
    public List<Section> without(String first, String second) {
        return sections.stream().filter(section -> !section.standing() && !section.key().equals(first) && !section.key().equals(second)).toList();
    }

    public List<Section> standing() {
        return sections.stream().filter(Section::standing).toList();
    }

    /** @param drawings draws what the text of a section names */
    static List<Section> sections(List<SectionKind> kinds, Map<String, String> texts, BiFunction<SectionKind, String, List<Drawing>> drawings) {
        List<Section> sections = new ArrayList<>();
        for (SectionKind kind : kinds) {
            String text = APOSTROPHE.matcher(texts.getOrDefault(kind.key(), "").strip()).replaceAll("’");
            if (!text.isEmpty()) {
                sections.add(kind.table() ? table(kind, text)
                        : new Section(kind.key(), kind.heading(), kind.drawing().isPresent() ? List.of() : blocks(text), kind.standing().isPresent(),
                                List.of(), List.of(), kind.drawing().isPresent() ? drawings.apply(kind, text) : List.of()));
            }
        }
        return sections;
    }

    /** Makes a table of the columns that hold anything. */
    private static Section table(SectionKind kind, String text) {
        List<List<String>> rows = TableText.rows(text, kind.columns().size());
        List<Integer> used = IntStream.range(0, kind.columns().size()).filter(column -> rows.stream().anyMatch(row -> !row.get(column).isEmpty()))
                .boxed().toList();
        return new Section(kind.key(), kind.heading(), List.of(), false, used.stream().map(kind.columns()::get).toList(),
                rows.stream().map(row -> used.stream().map(row::get).toList()).toList(), List.of());
    }

    /** Lines that begin with a dash become a list; every other line is a paragraph. */
    private static List<Block> blocks(String text) {
        List<Block> blocks = new ArrayList<>();
        List<String> points = new ArrayList<>();
        for (String line : text.split("\n")) {
            String plain = line.strip();
            if (plain.startsWith("- ") || plain.startsWith("– ")) {
                points.add(plain.substring(2).strip());
                continue;
            }
            if (!points.isEmpty()) {
                blocks.add(new Block(true, List.copyOf(points)));
                points.clear();
            }
            if (!plain.isEmpty()) {
                blocks.add(new Block(false, List.of(plain)));
            }
        }
        if (!points.isEmpty()) {
            blocks.add(new Block(true, List.copyOf(points)));
        }
        return blocks;
    }
}
