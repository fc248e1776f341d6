package org.steadwork.people;

import java.text.Normalizer;
import java.util.Locale;

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
}
