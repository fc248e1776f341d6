package org.steadwork.letter.pdf;

/** The sheets letters are printed on. */
public enum Paper {
    A4("A4"), LETTER("8.5in 11in");

    private final String size;

    Paper(String size) {
        this.size = size;
    }

    /** Returns the size as a style sheet for paged media names it. */
    String size() {
        return size;
    }
}
