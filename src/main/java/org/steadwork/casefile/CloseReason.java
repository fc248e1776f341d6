package org.steadwork.casefile;

/** Why a case ends; the trade's usual reasons. */
public enum CloseReason {
    GOALS_MET("Goals met"), SELF_MANAGING("Change kept, manages alone"), PLATEAU("No further change after a change of plan"),
    REFERRED_ON("Referred on, no active part left"), OWN_WISH("The patient’s own wish"), NON_ATTENDANCE("Lost to follow-up"),
    MOVED("Moved away or changed clinic");

    private final String label;

    CloseReason(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
