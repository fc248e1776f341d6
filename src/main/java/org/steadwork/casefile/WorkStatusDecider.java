package org.steadwork.casefile;

/** Who decided on a work status. */
public enum WorkStatusDecider {
    WORKER("the worker"), CLINICIAN("clinician’s advice"), DOCTOR("doctor’s certificate"), EMPLOYER("the employer"), UNKNOWN("not known");

    private final String label;

    WorkStatusDecider(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
