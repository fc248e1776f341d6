package org.steadwork.meeting;

import jakarta.enterprise.context.ApplicationScoped;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.steadwork.people.Patient;

/** What a case is called in a meeting: its number, and the initials where the clinic set it and no guest hears it; never the name. */
@ApplicationScoped
class CaseName {

    @ConfigProperty(name = "steadwork.meeting.initials", defaultValue = "false")
    boolean initials;

    String of(Patient patient, boolean cliniciansOnly) {
        return initials && cliniciansOnly ? patient.fileNumber() + ", " + initial(patient.givenName()) + initial(patient.familyName()) : patient.fileNumber();
    }

    private static String initial(String name) {
        return name.substring(0, name.offsetByCodePoints(0, 1)) + ".";
    }
}
