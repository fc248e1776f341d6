package org.steadwork.web;

/** Something stored is not what it was when it was stored, and is not handed out; the page shows {@code what} and {@code help} in words. */
public final class BrokenRecordException extends RuntimeException {

    private final String what;
    private final String help;

    /**
     * @param what without names and clinical content, since it is logged too
     * @param help what to do now
     */
    public BrokenRecordException(String what, String help) {
        super(what);
        this.what = what;
        this.help = help;
    }

    String what() {
        return what;
    }

    String help() {
        return help;
    }
}
