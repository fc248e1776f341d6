package org.steadwork.people;

import java.time.LocalDate;

/** A patient as a list shows them; nothing clinical. */
public record PatientRow(long id, String fileNumber, String givenName, String familyName, LocalDate birthDate, String employer,
        String jobTitle) {

    public String name() {
        return givenName + " " + familyName;
    }
}
