package org.steadwork.diary;

/** What can be done with an appointment. */
enum Act {
    BOOKED("Booked"), MOVED("Moved"), ARRIVED("Arrived"), SEEN("Seen"), MISSED("Missed"), CANCELLED("Cancelled"),
    GIVEN_UP("Time given up: the visit was changed in the case"), UNDONE("Undone");

    private final String label;

    Act(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
