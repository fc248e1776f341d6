package org.steadwork.letter;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.redflag.rules.Urgency;

/** The red-flag content in the words a doctor reads: what a "yes" to a question says, and what a suspension stops. */
final class RedFlagWords {

    private final Map<String, String> questions = new LinkedHashMap<>();
    private final Map<String, Urgency> urgencies = new HashMap<>();
    private final Map<String, String> stops = new LinkedHashMap<>();

    private RedFlagWords() {
    }

    static RedFlagWords read() {
        RedFlagWords words = new RedFlagWords();
        for (Entry row : Content.csv("red-flags/questions.csv")) {
            words.questions.put(row.text("key"), row.text("name"));
            words.urgencies.put(row.text("key"), row.constant("urgency", Urgency.class));
        }
        for (Entry row : Content.yaml("red-flags/suspensions.yaml").entries("tokens")) {
            words.stops.put(row.text("token"), row.text("blocks"));
        }
        return words;
    }

    boolean asks(String key) {
        return questions.containsKey(key);
    }

    /** Returns what a "yes" to a question says; the key itself when the content no longer has the question. */
    String question(String key) {
        return questions.getOrDefault(key, key);
    }

    /** Returns how urgent a "yes" to a question would be. */
    Urgency urgency(String key) {
        return urgencies.getOrDefault(key, Urgency.WATCH);
    }

    boolean knowsStop(String token) {
        return stops.containsKey(plain(token));
    }

    /** Returns what a token stops; one for a region, such as {@code region_all:knee}, names it. */
    String stop(String token) {
        int colon = token.indexOf(':');
        String words = stops.getOrDefault(plain(token), token.replace('_', ' '));
        return colon < 0 ? words : words + " (" + token.substring(colon + 1).replace('_', ' ') + ")";
    }

    private static String plain(String token) {
        int colon = token.indexOf(':');
        return colon < 0 ? token : token.substring(0, colon);
    }
}
