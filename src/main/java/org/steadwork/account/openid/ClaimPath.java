package org.steadwork.account.openid;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where a claim stands: its name, or the names of the objects it lies in before it, parted by slashes, as {@code groups} or
 * {@code access/roles}. A name that has slashes itself, such as an address, stands in double quotes.
 */
public record ClaimPath(List<String> names) {

    private static final Pattern NAME = Pattern.compile("\"([^\"]+)\"|([^/\"]+)");
    private static final Pattern WHOLE = Pattern.compile("(?:\"[^\"]+\"|[^/\"]+)(?:/(?:\"[^\"]+\"|[^/\"]+))*");

    /** @throws IllegalArgumentException when it is no path of names */
    public static ClaimPath of(String written) {
        String path = written.strip();
        if (!WHOLE.matcher(path).matches()) {
            throw new IllegalArgumentException("“" + written + "” is no path of a claim, such as groups or access/roles");
        }
        List<String> names = new ArrayList<>();
        Matcher found = NAME.matcher(path);
        while (found.find()) {
            names.add(found.group(1) != null ? found.group(1) : found.group(2));
        }
        return new ClaimPath(List.copyOf(names));
    }
}
