package org.steadwork.letter;

/**
 * One check of a draft before signing.
 *
 * @param key   name of the check, for confirming it
 * @param level whether it holds, needs the clinician's word, or stops the signature
 * @param word  the result in a word or two
 * @param text  what was looked at and what to do, in a sentence
 */
record Check(String key, Level level, String word, String text) {

    enum Level {
        /** Nothing to do. */
        HOLDS,
        /** Worth another look; does not stand in the way. */
        LOOK,
        /** The clinician must say that it stays. */
        ASK,
        /** Cannot be signed like this. */
        STOP
    }

    static Check holds(String key, String word, String text) {
        return new Check(key, Level.HOLDS, word, text);
    }

    static Check look(String key, String word, String text) {
        return new Check(key, Level.LOOK, word, text);
    }

    static Check ask(String key, String word, String text) {
        return new Check(key, Level.ASK, word, text);
    }

    static Check stop(String key, String word, String text) {
        return new Check(key, Level.STOP, word, text);
    }

    boolean stops() {
        return level == Level.STOP;
    }

    boolean asks() {
        return level == Level.ASK;
    }

    /** Returns the name of the field that takes the clinician's word. */
    public String question() {
        return "why-" + key;
    }

    /** Returns the name of the style for the status mark. */
    public String mark() {
        return switch (level) {
            case HOLDS -> "in";
            case LOOK, ASK -> "near";
            case STOP -> "out";
        };
    }
}
