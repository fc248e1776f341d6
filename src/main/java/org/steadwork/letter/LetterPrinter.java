package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.steadwork.account.Account;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.Visits;
import org.steadwork.letter.disclosure.Recipient;
import org.steadwork.letter.pdf.LetterPdf;
import org.steadwork.letter.pdf.PdfPress;
import org.steadwork.people.Patient;
import org.steadwork.web.Dates;

/** Prints a letter through the template of its kind: the same way for the preview and for the file that is signed. */
@ApplicationScoped
class LetterPrinter {

    @Inject
    LetterContent content;

    @Inject
    Letterhead letterhead;

    @Inject
    LetterDrawings drawings;

    @Inject
    Visits visits;

    @Inject
    Clock clock;

    /** Prints a draft as it stands, under the name of who would sign it. */
    LetterPdf draft(Letter letter, LetterKind kind, List<SectionKind> sections, Account author) {
        return print(letter, kind, sections, author, "");
    }

    LetterPdf signed(Letter letter, LetterKind kind, List<SectionKind> sections, Account author) {
        return print(letter, kind, sections, author, "Signed electronically on " + Dates.inLetter(LocalDate.now(clock)));
    }

    /** Prints what is handed out as it stands and is signed by nobody: a copy of the record. */
    LetterPdf copy(Letter letter, LetterKind kind, List<SectionKind> sections, Account author) {
        return print(letter, kind, sections, author, "Copy made on " + Dates.inLetter(LocalDate.now(clock)));
    }

    private LetterPdf print(Letter letter, LetterKind kind, List<SectionKind> sections, Account author, String signed) {
        Patient patient = letter.caseFile().patient();
        PrintedLetter printed = new PrintedLetter(letterhead.lines(), letter.reader().lines(), about(letter),
                subject(letter, patient) + ": " + lowerFirst(kind.title()),
                PrintedLetter.sections(sections, letter.texts(), (section, text) -> drawings.of(section, text, letter.caseFile())), signature(author), letterhead.foot(), signed);
        String xhtml = content.template(kind).data("letter", printed).render();
        // the title shows in windows and lists of files, so it names the letter and not the person
        return PdfPress.print(xhtml, kind.title() + ", " + letter.reference(), author.fullName(), Instant.now(clock), letterhead.paper());
    }

    /** Whom the letter is about; a case meeting reads a number and no name. */
    private static String subject(Letter letter, Patient patient) {
        return letter.reader().kind() == Recipient.CASE_REVIEW ? "Case " + patient.fileNumber()
                : patient.name() + ", born " + Dates.inLetter(patient.birthDate());
    }

    private String about(Letter letter) {
        String today = Dates.inLetter(LocalDate.ofInstant(Instant.now(clock), ZoneId.systemDefault()));
        String assessed = assessed(letter.caseFile().id()).map(day -> " Last assessed " + day + ".").orElse("");
        String replaces = letter.replaces() == null ? "" : " It takes the place of our letter " + letter.replaces().reference()
                + ", which should no longer be relied on.";
        return today + "." + assessed + " Our reference " + letter.reference() + "." + replaces;
    }

    /** Returns the day of the last visit that took place, as letters write it. */
    Optional<String> assessed(Long caseId) {
        return caseId == null ? Optional.empty() : visits.of(caseId).stream().filter(visit -> visit.attendance() == Attendance.ATTENDED).map(Visit::visitedOn)
                .reduce((earlier, later) -> later.isBefore(earlier) ? earlier : later).map(Dates::inLetter);
    }

    private List<String> signature(Account author) {
        List<String> lines = new ArrayList<>();
        lines.add(author.fullName());
        if (author.profession() != null) {
            lines.add(author.profession() + (author.registration() == null ? "" : ", registration number " + author.registration()));
        }
        letterhead.phone().ifPresent(number -> lines.add("Telephone " + number));
        return lines;
    }

    private static String lowerFirst(String text) {
        return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }
}
