package org.steadwork.account.trail;

/** Walks along the chain link by link and stops at the first that does not hold. */
public final class TrailWalk {

    private String hash;
    private long sequence;
    private String problem;

    /** @param from the last place that is taken as sound, 0 for the whole chain; {@code hash} is the hash of it */
    public TrailWalk(long from, String hash) {
        this.sequence = from;
        this.hash = hash;
    }

    /**
     * Takes the next link.
     *
     * @param place where the link says it stands
     * @param entry null when the entry it seals is not there
     * @return false when it does not hold; the walk is over then
     */
    public boolean take(long place, String previous, String sealed, TrailEntry entry) {
        if (place != sequence + 1) {
            problem = place - sequence == 2 ? "Entry " + (sequence + 1) + " was removed"
                    : "Entries " + (sequence + 1) + " to " + (place - 1) + " were removed";
        } else if (entry == null) {
            problem = "Entry " + place + " was removed";
        } else if (!previous.equals(hash)) {
            problem = "Entry " + place + " does not follow the one before it: they were put in another order, or one was put between";
        } else if (!AuditChain.hash(previous, place, entry).equals(sealed)) {
            problem = "Entry " + place + " is not what was sealed: it was changed, or another stands in its place";
        } else {
            sequence = place;
            hash = sealed;
            return true;
        }
        return false;
    }

    /** Compares the end of the walk with where the trail is known to have ended at least. */
    public void endsAt(TrailHead head, String keptWhere) {
        if (problem == null && sequence < head.sealed()) {
            problem = "The end of the trail is missing: it has " + sequence + " entries, " + keptWhere + " knows of " + head.sealed();
        }
    }

    public void note(String found) {
        if (problem == null) {
            problem = found;
        }
    }

    /** Returns what is wrong at the first place that does not hold, or null. */
    public String problem() {
        return problem;
    }

    public long sequence() {
        return sequence;
    }

    public String hash() {
        return hash;
    }
}
