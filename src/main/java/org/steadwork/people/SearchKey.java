package org.steadwork.people;

import java.text.Normalizer;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;

/** The form in which names are compared: lower case, without accents, words apart by one blank. */
final class SearchKey {

    private SearchKey() {
    }

    static String of(String text) {
        String plain = Normalizer.normalize(text, Normalizer.Form.NFD).replaceAll("\\p{M}+", "").toLowerCase(Locale.ROOT)
                .replace("ß", "ss").replace("ø", "o").replace("æ", "ae").replace("œ", "oe").replace("đ", "d").replace("ł", "l")
                .replace("ð", "d").replace("þ", "th").replace("ı", "i");
        return plain.replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
    }

    /** Returns the runs of three characters of each word, the word led by two blanks, as used to find names with slips. */
    static Set<String> grams(String text) {
        Set<String> grams = new LinkedHashSet<>();
        for (String word : of(text).split(" ")) {
            if (word.isEmpty()) {
                continue;
            }
            String padded = "__" + word;
            for (int i = 0; i + 3 <= padded.length(); i++) {
                grams.add(padded.substring(i, i + 3));
            }
        }
        return grams;
    }
}
