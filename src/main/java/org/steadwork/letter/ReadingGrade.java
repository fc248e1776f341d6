package org.steadwork.letter;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * How hard a text in English reads, as a school grade of the United States: Flesch-Kincaid grade level. It counts length and
 * nothing else: a low grade is no proof that a text is understood, and names and dates weigh in it like any other word.
 * Source: Kincaid, Fishburne, Rogers and Chissom 1975, Derivation of new readability formulas for Navy enlisted personnel, Research
 * Branch Report 8-75.
 */
final class ReadingGrade {

    private static final double A_SENTENCE = 0.39;
    private static final double A_WORD = 11.8;
    private static final double AT_ZERO = 15.59;
    private static final int FEWEST_WORDS = 30;
    private static final Pattern WORD = Pattern.compile("[\\p{L}][\\p{L}’'\u2011-]*");
    private static final Pattern VOWELS = Pattern.compile("[aeiouyàâäåéèêëíîïóôöøúùûü]{1,2}");

    private ReadingGrade() {
    }

    /** Shows the grade against the target of the kind; a text of under 30 words is not judged, since one long word would decide. */
    static Optional<Check> check(LetterKind kind, List<SectionKind> sections, Map<String, String> texts) {
        if (kind.readingGrade().isEmpty()) {
            return Optional.empty();
        }
        String prose = sections.stream().filter(section -> !section.table())
                .map(section -> texts.getOrDefault(section.key(), "")).collect(Collectors.joining("\n"));
        OptionalDouble grade = of(prose);
        if (grade.isEmpty()) {
            return Optional.empty();
        }
        int target = kind.readingGrade().getAsInt();
        String shown = String.format(Locale.ENGLISH, "%.1f", Math.max(0, grade.getAsDouble()));
        String says = "Flesch-Kincaid grade " + shown + ", target " + target + " or lower; it counts lengths only";
        return Optional.of(grade.getAsDouble() <= target ? Check.holds("grade", "grade " + shown, says)
                : Check.look("grade", "grade " + shown, says + ": shorter sentences and shorter words bring it down"));
    }

    /** Returns the grade of a text, not rounded; empty under 30 words. */
    static OptionalDouble of(String text) {
        int sentences = 0;
        int words = 0;
        int syllables = 0;
        for (String sentence : text.split("(?<=[.!?:])\\s+|\\n+")) {
            Matcher found = WORD.matcher(sentence);
            int before = words;
            while (found.find()) {
                words++;
                syllables += syllables(found.group());
            }
            sentences += words > before ? 1 : 0;
        }
        return words < FEWEST_WORDS ? OptionalDouble.empty() : OptionalDouble.of(grade(words, sentences, syllables));
    }

    /** @param words 1 or more; {@code sentences} likewise */
    static double grade(int words, int sentences, int syllables) {
        return A_SENTENCE * words / sentences + A_WORD * syllables / words - AT_ZERO;
    }

    /** Counts the groups of vowels, without a silent e at the end: right for most English words, off by one for some. */
    static int syllables(String word) {
        String plain = word.toLowerCase(Locale.ENGLISH).replaceAll("(?:[^laeiouyscxzgh]es|[^laeiouytd]ed|[^laeiouy]e)$", "").replaceAll("^y", "")
                .replaceAll("io(?!n|us)", "i-o");
        Matcher groups = VOWELS.matcher(plain);
        int count = 0;
        while (groups.find()) {
            count++;
        }
        return Math.max(1, count);
    }
}
