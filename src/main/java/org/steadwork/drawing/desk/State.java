package org.steadwork.drawing.desk;

/** How a value stands against its band; ordered from harmless to bad. Each has a word and a shape besides its colour. */
enum State {
    IN_RANGE("in range", Palette.GREEN),
    NOT_MEASURED("not measured", Palette.MUTED),
    A_LITTLE_OFF("a little off", Palette.AMBER),
    OUT_OF_RANGE("out of range", Palette.RED);

    final String word;
    final String colour;

    State(String word, String colour) {
        this.word = word;
        this.colour = colour;
    }

    boolean off() {
        return this == A_LITTLE_OFF || this == OUT_OF_RANGE;
    }

    static State worse(State a, State b) {
        return a.compareTo(b) >= 0 ? a : b;
    }
}
