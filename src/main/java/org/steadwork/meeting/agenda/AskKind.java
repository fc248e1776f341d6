package org.steadwork.meeting.agenda;

/** Why a clinician asks for a case to be discussed; only a person can know these. */
public enum AskKind {
    MEMBER("A member asks"), CONFLICT_OF_ADVICE("Conflict of advice"), COMPLAINT("Complaint"), SAFETY_INCIDENT("Safety incident"),
    EMPLOYER_DECLINED("The employer declined a change"), NEUROLOGICAL_SIGN("New neurological sign");

    private final String label;

    AskKind(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
