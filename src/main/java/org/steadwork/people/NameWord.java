package org.steadwork.people;

import jakarta.persistence.Embeddable;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * A word of a patient's name as it is searched for ({@link SearchKey}).
 *
 * @param beginning its first two characters, or the only one
 */
@Embeddable
record NameWord(String beginning, String word) {

    private static final int BEGINNING = 2;

    static NameWord of(String word) {
        return new NameWord(beginning(word), word);
    }

    /** The different words of a search key, in its order. */
    static Set<NameWord> in(String key) {
        Set<NameWord> words = new LinkedHashSet<>();
        for (String word : key.split(" ")) {
            if (!word.isEmpty()) {
                words.add(of(word));
            }
        }
        return words;
    }

    static String beginning(String word) {
        return word.length() <= BEGINNING ? word : word.substring(0, BEGINNING);
    }
}
