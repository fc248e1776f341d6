package org.steadwork.letter;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Counts words and sentences of a draft, so that the clinician sees how heavy it reads. */
final class Readability {

    private static final int LONG_SENTENCE = 20;

    private Readability() {
    }

    /** Points out sentences over 20 words, the limit plain-language guidance for letters gives (common practice, no single source). */
    static Check check(List<SectionKind> sections, Map<String, String> texts) {
        String prose = sections.stream().filter(section -> !section.table())
                .map(section -> texts.getOrDefault(section.key(), "")).collect(Collectors.joining("\n"));
        List<String> sentences = Arrays.stream(prose.split("(?<=[.!?:])\\s+|\\n+")).filter(sentence -> !sentence.isBlank()).toList();
        int total = sentences.stream().mapToInt(Readability::words).sum();
        int longest = sentences.stream().mapToInt(Readability::words).max().orElse(0);
        String says = total + " words; the longest sentence has " + longest;
        return longest <= LONG_SENTENCE ? Check.holds("length", "short", says)
                : Check.look("length", "look again", says + ": " + LONG_SENTENCE + " or fewer are easier to read");
    }

    static int words(String text) {
        return (int) Arrays.stream(text.strip().split("\\s+")).filter(word -> word.chars().anyMatch(Character::isLetterOrDigit)).count();
    }
}
