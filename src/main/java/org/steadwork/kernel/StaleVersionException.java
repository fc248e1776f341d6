package org.steadwork.kernel;

/** What is being saved was made from a version that is no longer the stored one. */
public final class StaleVersionException extends RuntimeException {

    private final int stored;

    public StaleVersionException(int seen, int stored) {
        super("Made from version " + seen + ", but version " + stored + " is stored");
        this.stored = stored;
    }

    public int stored() {
        return stored;
    }

    /** Throws when the version a page was made from is not the stored one. */
    public static void check(int seen, int stored) {
        if (seen != stored) {
            throw new StaleVersionException(seen, stored);
        }
    }
}
