package org.steadwork.account;

import java.util.Set;

/** What an account may do: the assistant sees no clinical detail; the lead is a clinician who also runs the clinic. */
public enum Role {
    CLINICIAN("Clinician", Set.of("clinician", "staff")),
    ASSISTANT("Assistant", Set.of("assistant", "staff")),
    LEAD("Lead", Set.of("clinician", "lead", "staff"));

    private final String label;
    private final Set<String> grants;

    Role(String label, Set<String> grants) {
        this.label = label;
        this.grants = grants;
    }

    public String label() {
        return label;
    }

    /** The names that pages ask for with {@code @RolesAllowed}. */
    public Set<String> grants() {
        return grants;
    }
}
