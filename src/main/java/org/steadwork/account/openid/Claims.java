package org.steadwork.account.openid;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;

/**
 * What a verified ID token says of somebody: texts, lists and nested objects, as JSON has them. A claim that is not there, or is of another
 * kind than asked for, says nothing.
 */
public record Claims(Map<String, Object> all) {

    /** Returns the text of a claim at the top, null without one. */
    public String text(String name) {
        return all.get(name) instanceof String text && !text.isBlank() ? text.strip() : null;
    }

    /** True when the claim at the top is the word or value {@code true}. */
    public boolean says(String name) {
        Object value = all.get(name);
        return Boolean.TRUE.equals(value) || "true".equals(value);
    }

    /** Returns the texts of a claim at the top: those of a list, or the one it is. */
    public List<String> values(String name) {
        return values(new ClaimPath(List.of(name)));
    }

    /** Returns the texts at a path: those of a list, or the one that stands there. A text is never cut into several. */
    public List<String> values(ClaimPath path) {
        Object found = all;
        for (String name : path.names()) {
            found = found instanceof Map<?, ?> object ? object.get(name) : null;
        }
        if (found instanceof String text) {
            return List.of(text);
        }
        List<String> texts = new ArrayList<>();
        if (found instanceof Collection<?> list) {
            for (Object one : list) {
                if (one instanceof String text) {
                    texts.add(text);
                }
            }
        }
        return texts;
    }
}
