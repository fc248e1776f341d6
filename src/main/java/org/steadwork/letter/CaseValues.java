package org.steadwork.letter;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Values of a case that the first words of a section may name in braces. A value that is not known becomes a placeholder in
 * square brackets, which the clinician must replace before signing.
 */
final class CaseValues {

    static final List<String> NAMES = List.of("patient", "given_name", "patient_phone", "assessed", "consent_date", "clinic_phone", "next_review", "how_soon");
    private static final Pattern NAME = Pattern.compile("\\{([a-z_]+)}");

    private final Map<String, String> values = new HashMap<>();

    /** Sets a value; an empty or blank one counts as not known. */
    CaseValues with(String name, Optional<String> value) {
        if (!NAMES.contains(name)) {
            throw new IllegalArgumentException("There is no value " + name);
        }
        value.filter(text -> !text.isBlank()).ifPresent(text -> values.put(name, text));
        return this;
    }

    String fill(String start) {
        Matcher names = NAME.matcher(start);
        return names.replaceAll(found -> Matcher.quoteReplacement(
                values.getOrDefault(found.group(1), "[" + found.group(1).replace('_', ' ') + "]")));
    }
}
