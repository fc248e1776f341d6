package org.steadwork.workplace;

import jakarta.ws.rs.core.MultivaluedMap;
import java.util.List;

/** What was asked for in the address of the page: who is to be counted in, under which marks, and which settings go on the cards. */
record SharedDeskAsked(MultivaluedMap<String, String> query) {

    private static final int LETTERS = 26;

    /** @param byDefault whether to count the person in while nothing was picked */
    boolean counts(long assessment, boolean byDefault) {
        return query.containsKey("picked") ? query.getOrDefault("who", List.of()).contains(String.valueOf(assessment)) : byDefault;
    }

    /** Returns the mark typed for a person, cut after 12 characters; a letter in order while none was typed. */
    String mark(long assessment, int place) {
        String typed = query.getFirst("mark-" + assessment);
        String kept = typed == null ? "" : typed.strip();
        return kept.isEmpty() ? String.valueOf((char) ('A' + place % LETTERS)) : kept.substring(0, Math.min(DeskSharer.LONGEST_MARK, kept.length()));
    }

    /** Tells whether the cards show the settings with everything shared; otherwise each person's own. */
    boolean sharing() {
        return "shared".equals(query.getFirst("with"));
    }
}
