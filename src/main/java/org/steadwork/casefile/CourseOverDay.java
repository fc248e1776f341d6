package org.steadwork.casefile;

/** How the complaint runs over a day. */
public enum CourseOverDay {
    WORSE_ON_RISING("Worse on rising"), WORSE_LATER("Worse later"), THE_SAME("The same"), UNKNOWN("Unknown"), NOT_ASKED("Not asked");

    private final String label;

    CourseOverDay(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
