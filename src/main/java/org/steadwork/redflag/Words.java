package org.steadwork.redflag;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Keys and tokens stored as one text with spaces between them; neither holds a space. */
final class Words {

    private Words() {
    }

    static String join(Collection<String> words) {
        return String.join(" ", new TreeSet<>(words));
    }

    static Set<String> split(String text) {
        return text.isEmpty() ? Set.of() : new LinkedHashSet<>(List.of(text.split(" ")));
    }
}
