package org.steadwork.casefile;

/** Whether a visit took place. A missed visit is never "no change". */
public enum Attendance {
    PLANNED("planned"), ATTENDED("attended"), MISSED("missed"), CANCELLED("cancelled"), LATE_CANCELLED("cancelled late");

    private final String label;

    Attendance(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
