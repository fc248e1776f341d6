package org.steadwork.diary;

import java.util.List;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.VisitKind;
import org.steadwork.people.Patient;
import org.steadwork.people.PatientRow;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/**
 * The page that books.
 *
 * @param patient null until one is chosen
 * @param keep    the rest of the address, for the links of the search
 * @param gap     the time that was pressed in the diary, in words, or blank
 * @param coming  what is booked already for this patient
 * @param fits    who of the waiting list fits the time, until a patient is chosen
 */
record BookView(Form form, Patient patient, String keep, String gap, String q, List<PatientRow> found, List<CaseFile> cases, List<Option> clinicians,
        List<Option> rooms, String lengths, List<Proposal> proposals, List<Appointment> coming, List<WaitingLists.Fit> fits) {

    public List<Option> kinds() {
        return Option.of(VisitKind.class, VisitKind::label);
    }

    public List<Option> caseOptions() {
        return cases.stream().map(one -> new Option(one.id().toString(), "opened " + Dates.shown(one.openedOn()) + ", " + one.clinician().displayName())).toList();
    }

    public boolean several() {
        return cases.size() > 1;
    }
}
