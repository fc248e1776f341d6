package org.steadwork.letter;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.steadwork.letter.disclosure.Gate;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.disclosure.Matrix;
import org.steadwork.letter.disclosure.Reader;
import org.steadwork.letter.disclosure.Recipient;
import org.steadwork.letter.disclosure.Rule;
import org.steadwork.letter.pdf.LetterFonts;

/** Checks the words of a draft: what must be there, what may not be, and what cannot be printed. */
final class TextChecks {

    private static final Pattern PLACEHOLDER = Pattern.compile("\\[[^\\[\\]\\n]{1,120}]|…|\\bTODO\\b|\\?\\?+");
    private final Matrix matrix;
    private final WatchWords watchWords;

    TextChecks(Matrix matrix, WatchWords watchWords) {
        this.matrix = matrix;
        this.watchWords = watchWords;
    }

    /**
     * Checks the texts that would be printed.
     *
     * @param sections the sections the reader may have
     * @param texts    text by section key
     */
    List<Check> check(List<SectionKind> sections, Map<String, String> texts, Recipient recipient, Set<InformationCategory> ticked) {
        List<Check> checks = new ArrayList<>();
        mustHaves(sections, texts, checks);
        standing(sections, texts, checks);
        placeholders(texts, checks);
        testable(sections, texts, checks);
        if (recipient.needsConsent()) {
            nothingExtra(sections, texts, recipient, ticked, checks);
        }
        glyphs(texts, checks);
        checks.add(Readability.check(sections, texts));
        return checks;
    }

    static boolean placeholder(String text) {
        return PLACEHOLDER.matcher(text).find();
    }

    private static void mustHaves(List<SectionKind> sections, Map<String, String> texts, List<Check> checks) {
        List<String> empty = sections.stream().filter(section -> section.required() && section.standing().isEmpty()
                && texts.getOrDefault(section.key(), "").isBlank()).map(section -> "“" + section.heading() + "”").toList();
        checks.add(empty.isEmpty() ? Check.holds("must", "complete", "Every section that must be filled has words")
                : Check.stop("must", "missing", "Fill in " + String.join(", ", empty)));
    }

    private static void standing(List<SectionKind> sections, Map<String, String> texts, List<Check> checks) {
        for (SectionKind section : sections) {
            section.standing().ifPresent(standing -> {
                List<String> lost = section.lostFrom(texts.getOrDefault(section.key(), ""));
                String key = "standing-" + section.key();
                checks.add(lost.isEmpty() ? Check.holds(key, "present", "“" + section.heading() + "” says what it must")
                        : Check.stop(key, "missing", "“" + section.heading() + "” can be reworded but must still say: " + String.join(", ", lost)));
            });
        }
    }

    private static void placeholders(Map<String, String> texts, List<Check> checks) {
        Set<String> open = new LinkedHashSet<>();
        texts.values().forEach(text -> {
            Matcher found = PLACEHOLDER.matcher(text);
            while (found.find()) {
                open.add(found.group());
            }
        });
        checks.add(open.isEmpty() ? Check.holds("placeholders", "filled", "No placeholder is left")
                : Check.stop("placeholders", "open", "Replace " + String.join(", ", open)));
    }

    /** A row of changes that can be tested has an amount, a start and an end or review. */
    private static void testable(List<SectionKind> sections, Map<String, String> texts, List<Check> checks) {
        for (SectionKind section : sections) {
            String text = texts.getOrDefault(section.key(), "");
            if (section.table() && section.required() && !text.isBlank()) {
                List<String> vague = TableText.rows(text, section.columns().size()).stream()
                        .filter(row -> row.stream().anyMatch(String::isBlank)).map(row -> "“" + row.get(0) + "”").toList();
                String key = "testable-" + section.key();
                checks.add(vague.isEmpty() ? Check.holds(key, "testable", "Each change has an amount, a start and an end or review")
                        : Check.look(key, "look again", "Not testable yet, a cell is empty: " + String.join(", ", vague)));
            }
        }
    }

    private void nothingExtra(List<SectionKind> sections, Map<String, String> texts, Recipient recipient, Set<InformationCategory> ticked,
                              List<Check> checks) {
        String all = sections.stream().filter(section -> section.standing().isEmpty())
                .map(section -> texts.getOrDefault(section.key(), "")).collect(Collectors.joining("\n"));
        boolean clean = true;
        for (InformationCategory category : InformationCategory.values()) {
            if (matrix.decide(category, new Reader(recipient, Gate.IN_FORCE, ticked)).allowed()) {
                continue;
            }
            Set<String> found = watchWords.in(all, category);
            if (!found.isEmpty()) {
                clean = false;
                String words = found.stream().map(word -> "“" + word + "”").collect(Collectors.joining(", "));
                String key = "words-" + category.name().toLowerCase(Locale.ROOT);
                String says = words + " may tell " + recipient.label() + " about: " + matrix.label(category).toLowerCase(Locale.ROOT) + ". ";
                checks.add(matrix.cell(category, recipient).rule() == Rule.NEVER
                        ? Check.stop(key, "never", says + "It never goes there: say it in work terms")
                        : Check.ask(key, "not agreed", says + "It is not ticked: say it in work terms, or say why the words stay"));
            }
        }
        if (clean) {
            checks.add(Check.holds("words", "nothing extra", "None of the watched words for scores, diagnoses, symptoms, regions or red flags "
                    + "outside what the reader may have"));
        }
    }

    private static void glyphs(Map<String, String> texts, List<Check> checks) {
        Set<String> missing = new TreeSet<>();
        texts.values().forEach(text -> missing.addAll(LetterFonts.missing(text)));
        if (!missing.isEmpty()) {
            checks.add(Check.stop("glyphs", "cannot print", "The letter’s type does not carry " + String.join(" ", missing)
                    + ": write it in another script"));
        }
    }
}
