package org.steadwork.bench;

/** The headings under which the Bench lists its calculators, in the order of the page. */
public enum BenchGroup {
    WORK_PLACE("Work place"), EXPOSURE("Exposure"), OUTCOMES("Outcomes"), RED_FLAGS("Red flags"), DAY_PLAN("Day plan");

    private final String label;

    BenchGroup(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
