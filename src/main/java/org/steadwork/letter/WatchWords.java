package org.steadwork.letter;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;
import java.util.stream.Collectors;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.letter.disclosure.InformationCategory;

/**
 * Words that give a category of information away, such as the name of a body region. They are pointed out, never changed. The
 * list cannot know everything: finding nothing is no proof that nothing is there.
 */
final class WatchWords {

    private static final String REGIONS = "region_names";

    private final List<Group> groups;

    private WatchWords(List<Group> groups) {
        this.groups = groups;
    }

    static WatchWords read() {
        return read(Content.yaml("letters/watch-words.yaml"));
    }

    static WatchWords read(Entry file) {
        file.text("source");
        List<Group> groups = new ArrayList<>();
        Set<String> keys = new HashSet<>();
        for (Entry row : file.entries("groups")) {
            if (!keys.add(row.text("key"))) {
                throw row.problem("'" + row.text("key") + "' is written twice");
            }
            List<Pattern> patterns = new ArrayList<>();
            List<String> words = row.texts("words");
            if (!words.isEmpty()) {
                patterns.add(wholeWords(words));
            }
            row.texts("pattern").forEach(pattern -> patterns.add(pattern(row, pattern)));
            if (patterns.isEmpty()) {
                throw row.problem("has neither words nor a pattern");
            }
            List<String> except = row.texts("except");
            groups.add(new Group(row.text("key"), row.constant("information", InformationCategory.class), patterns,
                    except.isEmpty() ? Pattern.compile("(?!)") : wholeWords(except)));
        }
        return new WatchWords(List.copyOf(groups));
    }

    /** Returns these words with phrases taken out of the names of regions: the names of things at a work place tell nothing of a body. */
    WatchWords sparing(Collection<String> phrases) {
        return new WatchWords(groups.stream().map(group -> group.key.equals(REGIONS)
                ? new Group(group.key, group.category, group.patterns, Pattern.compile(group.except.pattern() + "|" + wholeWords(phrases).pattern(),
                        Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE)) : group).toList());
    }

    /** Returns the words in a text that belong to a category, as written, each once. */
    Set<String> in(String text, InformationCategory category) {
        Set<String> found = new LinkedHashSet<>();
        for (Group group : groups) {
            if (group.category == category) {
                String rest = group.except.matcher(text).replaceAll("\u0001");
                for (Pattern pattern : group.patterns) {
                    Matcher matcher = pattern.matcher(rest);
                    while (matcher.find()) {
                        found.add(matcher.group().strip());
                    }
                }
            }
        }
        return found;
    }

    private static Pattern wholeWords(Collection<String> words) {
        String any = words.stream().map(word -> Pattern.quote(word).replace(" ", "\\E\\s+\\Q")).collect(Collectors.joining("|"));
        return Pattern.compile("(?<![\\p{L}\\p{N}])(?:" + any + ")(?![\\p{L}\\p{N}])", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    private static Pattern pattern(Entry row, String pattern) {
        try {
            return Pattern.compile(pattern, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
        } catch (PatternSyntaxException e) {
            throw row.problem("'" + pattern + "' is not a regular expression: " + e.getDescription());
        }
    }

    private record Group(String key, InformationCategory category, List<Pattern> patterns, Pattern except) {
    }
}
