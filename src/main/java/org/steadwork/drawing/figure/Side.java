package org.steadwork.drawing.figure;

/** A side of the figure's body, with its sign along z. */
enum Side {
    R(1), L(-1);

    private final int sign;

    Side(int sign) {
        this.sign = sign;
    }

    int sign() {
        return sign;
    }

    Side other() {
        return this == R ? L : R;
    }

    /** The name with this side's ending, as in {@code ankle_R}. */
    String of(String name) {
        return name + "_" + this;
    }
}
