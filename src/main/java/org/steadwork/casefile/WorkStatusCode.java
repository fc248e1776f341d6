package org.steadwork.casefile;

/** What a person's work is at a time. Unknown never counts as full. */
public enum WorkStatusCode {
    FULL("Full", "usual duties and hours"),
    MODIFIED("Modified", "usual hours, changed tasks or limits"),
    REDUCED("Reduced", "fewer hours"),
    OFF("Off", "not at work for this problem"),
    OFF_OTHER("Off, other reason", "away for another reason"),
    UNKNOWN("Unknown", "not established");

    private final String label;
    private final String meaning;

    WorkStatusCode(String label, String meaning) {
        this.label = label;
        this.meaning = meaning;
    }

    public String label() {
        return label;
    }

    public String meaning() {
        return meaning;
    }
}
