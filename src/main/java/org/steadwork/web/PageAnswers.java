package org.steadwork.web;

import jakarta.enterprise.context.RequestScoped;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the database answered while one page is being read. */
@RequestScoped
class PageAnswers {

    private final Map<List<Object>, Object> known = new HashMap<>();
    private boolean reading;

    /** From here on answers are kept: the request only reads. */
    void read() {
        reading = true;
    }

    boolean reading() {
        return reading;
    }

    Object of(List<Object> asked) {
        return known.get(asked);
    }

    void keep(List<Object> asked, Object answer) {
        known.put(asked, answer);
    }
}
