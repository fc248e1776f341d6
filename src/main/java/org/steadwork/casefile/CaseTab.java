package org.steadwork.casefile;

/** The pages of a case, in the order of its navigation. */
public enum CaseTab {
    MAP("Map", ""), SYMPTOMS("Symptoms", "/symptoms"), RED_FLAGS("Red flags", "/red-flags"), WORK_PLACE("Work place", "/work-place"),
    PROGRAMME("Programme", "/programme"), OUTCOMES("Outcomes", "/outcomes"), VISITS("Visits", "/visits"), LETTERS("Letters", "/letters");

    private final String label;
    private final String path;

    CaseTab(String label, String path) {
        this.label = label;
        this.path = path;
    }

    public String label() {
        return label;
    }

    /** The address of this page for a case. */
    public String href(long caseId) {
        return "/cases/" + caseId + path;
    }
}
