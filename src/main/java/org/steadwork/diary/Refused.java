package org.steadwork.diary;

/** A booking that cannot be: which field is in the way, and why in words. {@code taken} says that somebody else has the time. */
final class Refused extends RuntimeException {

    private final String field;
    private final boolean taken;

    Refused(String field, String message, boolean taken) {
        super(message);
        this.field = field;
        this.taken = taken;
    }

    String field() {
        return field;
    }

    boolean taken() {
        return taken;
    }
}
