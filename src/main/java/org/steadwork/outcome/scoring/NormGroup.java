package org.steadwork.outcome.scoring;

/** The two groups for which published norms of strength are given. */
public enum NormGroup {
    MEN("men"), WOMEN("women");

    private final String words;

    NormGroup(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
