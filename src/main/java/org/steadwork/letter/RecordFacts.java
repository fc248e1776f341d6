package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.VisitNote;
import org.steadwork.casefile.VisitNotes;
import org.steadwork.casefile.Visits;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.web.Dates;

/** What only the worker's own copy of the record, or a confirmation of attendance, has a place for: visits, notes, letters, consents. */
@ApplicationScoped
class RecordFacts implements LetterFacts {

    private static final String WRITTEN = "written";
    private static final String CONSENTS = "consents";

    /** Sections that name who else was written to or may be: no category of the matrix closes them, so no other reader's letter may have one. */
    static final Set<String> NAMES_READERS = Set.of(WRITTEN, CONSENTS);

    @Inject
    Visits visits;

    @Inject
    VisitNotes notes;

    @Inject
    Letters letters;

    @Inject
    LetterContent content;

    @Inject
    Consents consents;

    @Override
    public List<LetterFact> of(CaseFile file) {
        List<LetterFact> facts = new ArrayList<>();
        Map<Integer, VisitNote> written = notes.ofCase(file.id());
        for (Visit visit : visits.of(file.id())) {
            if (visit.attendance() != Attendance.PLANNED) {
                facts.add(new LetterFact(InformationCategory.ATTENDANCE, "visits", Dates.inLetter(visit.visitedOn()) + "\t" + visit.attendance().label(),
                        "visits"));
            }
            VisitNote note = written.get(visit.number());
            if (note != null && note.signed()) {
                facts.add(new LetterFact(InformationCategory.DIAGNOSIS, "notes", Dates.inLetter(visit.visitedOn()) + ", signed by " + note.signedBy() + ": "
                        + words(note), "signed note of " + Dates.shown(visit.visitedOn())));
            }
        }
        letters.ofCase(file.id()).stream().filter(LetterRow::signed).forEach(row -> facts.add(new LetterFact(InformationCategory.IDENTITY, WRITTEN,
                "- " + content.title(row.kind()) + " to " + (row.to() == null ? row.body() : row.to()) + ", " + Dates.shown(row.signedAt()) + ".", "letters")));
        consents.ofCase(file.id()).forEach(consent -> facts.add(new LetterFact(InformationCategory.IDENTITY, CONSENTS, "- " + consent.recipientName()
                + ": given " + Dates.inLetter(consent.givenOn()) + ", until " + Dates.inLetter(consent.holdsUntil())
                + (consent.withdrawnOn() == null ? "." : ", withdrawn " + Dates.inLetter(consent.withdrawnOn()) + "."), "consents")));
        return facts;
    }

    private static String words(VisitNote note) {
        return Stream.of(note.subjective(), note.objective(), note.assessment(), note.plan()).filter(part -> part != null && !part.isBlank())
                .map(part -> part.strip().replaceAll("\\s*\\n\\s*", " ")).collect(Collectors.joining(" "));
    }
}
