package org.steadwork.people;

import java.util.List;
import org.steadwork.web.Option;

/** What the choices of the patient's form offer. */
public record PatientLists(List<Option> sexes, List<Option> hands, List<String> employers, List<String> doctors) {

    static PatientLists of(Directory directory) {
        return new PatientLists(Option.of(Sex.class, Sex::label), Option.of(Handedness.class, Handedness::label), directory.employerNames(),
                directory.doctorNames());
    }
}
