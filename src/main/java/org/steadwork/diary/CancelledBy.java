package org.steadwork.diary;

/** Who called an appointment off. Only the patient's short notice counts as cancelled late. */
enum CancelledBy {
    PATIENT("The patient"), CLINIC("The clinic");

    private final String label;

    CancelledBy(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
