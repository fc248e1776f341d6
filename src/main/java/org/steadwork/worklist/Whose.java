package org.steadwork.worklist;

/**
 * Whose entries are shown: the whole clinic's, or those of the cases one clinician treats. What is for now is shown to everybody: who
 * treats the case may not be in today.
 *
 * @param clinician number of an account, or null for the whole clinic
 */
record Whose(Long clinician, String value) {

    static final String MINE = "mine";
    static final String ALL = "all";

    /** Reads what an address says; anything that is not understood means the whole clinic, so that nothing is hidden by a slip. */
    static Whose of(String asked, long me) {
        if (MINE.equals(asked)) {
            return new Whose(me, MINE);
        }
        if (asked != null && asked.matches("\\d{1,15}")) {
            return new Whose(Long.valueOf(asked), asked);
        }
        return everybody();
    }

    static Whose everybody() {
        return new Whose(null, ALL);
    }

    boolean all() {
        return clinician == null;
    }
}
