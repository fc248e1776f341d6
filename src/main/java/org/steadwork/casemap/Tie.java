package org.steadwork.casemap;

import java.time.Instant;
import org.steadwork.casefile.CardKey;
import org.steadwork.casefile.Link;

/**
 * A row of the table of ties: two cards, why the line is drawn and what was decided.
 *
 * @param why     for a candidate the factors it was ranked by, else the clinician's reason
 * @param decided confirmed or rejected, null while undecided
 * @param by      who decided, null while undecided or when the action was agreed for the finding
 * @param version of the stored decision; -1 when there is none
 * @param gone    one of the cards no longer stands on the map
 */
record Tie(int number, CardKey from, String fromTitle, CardKey to, String toTitle, String why, String decided, String by, Instant at,
        int version, boolean gone) {

    static Tie candidate(int number, CardKey from, String fromTitle, CardKey to, String toTitle, String why) {
        return new Tie(number, from, fromTitle, to, toTitle, why, null, null, null, -1, false);
    }

    static Tie of(int number, Link link, String fromTitle, String toTitle, boolean gone) {
        return new Tie(number, link.from(), fromTitle, link.to(), toTitle, link.reason(), link.decision().label(),
                link.decidedBy().displayName(), link.decidedAt(), link.version(), gone);
    }

    static Tie agreed(int number, CardKey from, String fromTitle, CardKey to, String toTitle) {
        return new Tie(number, from, fromTitle, to, toTitle, "Agreed for this finding.", "confirmed", null, null, -1, false);
    }

    public boolean open() {
        return decided == null;
    }

    public String fromText() {
        return from.text();
    }

    public String toText() {
        return to.text();
    }
}
