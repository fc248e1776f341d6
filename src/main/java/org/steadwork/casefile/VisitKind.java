package org.steadwork.casefile;

/** What a contact with the patient was. */
public enum VisitKind {
    INITIAL("First visit"), FOLLOW_UP("Review"), WORK_PLACE("Work-place visit"), PHONE("Telephone"), DISCHARGE("Discharge visit");

    private final String label;

    VisitKind(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
