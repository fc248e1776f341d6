package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.Visits;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.web.Dates;

/** What the case itself says: age, complaint, history, attendance. */
@ApplicationScoped
class CaseFacts implements LetterFacts {

    @Inject
    Visits visits;

    @Override
    public List<LetterFact> of(CaseFile file) {
        List<LetterFact> facts = new ArrayList<>();
        facts.add(new LetterFact(InformationCategory.SYMPTOMS, "symptoms", file.complaint()
                + (file.onsetOn() == null ? "; when it began is not established." : ", reported since " + Dates.inLetter(file.onsetOn()) + "."), "the case"));
        if (file.history() != null) {
            facts.add(new LetterFact(InformationCategory.MEDICAL_HISTORY, "background", sentences(file.history()), "medical history of the case"));
        }
        attendance(file, facts);
        return facts;
    }

    /** Makes one paragraph of lines, each ended as a sentence. */
    private static String sentences(String lines) {
        return lines.lines().map(String::strip).filter(line -> !line.isEmpty()).map(line -> line.matches(".*[.!?]") ? line : line + ".")
                .collect(Collectors.joining(" "));
    }

    private void attendance(CaseFile file, List<LetterFact> facts) {
        List<Visit> all = visits.of(file.id());
        List<Visit> attended = all.stream().filter(visit -> visit.attendance() == Attendance.ATTENDED).toList();
        long missed = all.stream().filter(visit -> visit.attendance() == Attendance.MISSED).count();
        if (!attended.isEmpty()) {
            String first = Dates.inLetter(attended.get(0).visitedOn());
            String last = Dates.inLetter(attended.get(attended.size() - 1).visitedOn());
            facts.add(new LetterFact(InformationCategory.ATTENDANCE, "attendance", "Attended " + attended.size()
                    + (attended.size() == 1 ? " visit, on " + first : " visits, from " + first + " to " + last)
                    + (missed == 0 ? "." : "; missed " + missed + "."), "visits"));
        }
    }
}
