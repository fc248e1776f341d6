package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.steadwork.account.Account;
import org.steadwork.casefile.CaseFile;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.disclosure.Recipient;
import org.steadwork.letter.pdf.LetterPdf;
import org.steadwork.people.Correspondent;
import org.steadwork.people.Employer;
import org.steadwork.people.Patient;
import org.steadwork.web.Dates;

/** Prints each kind of letter on an invented case that is nowhere stored, to show wording and letterhead. */
@ApplicationScoped
class SampleLetters {

    @Inject
    LetterContent content;

    @Inject
    LetterPrinter printer;

    @Inject
    Letterhead letterhead;

    @Inject
    Clock clock;

    LetterPdf print(LetterKind kind, Account author) {
        LocalDate today = LocalDate.now(clock);
        Patient patient = new Patient("SAMPLE-1", "Ada", "Quillfeather", LocalDate.of(1990, 4, 2), today.minusDays(30));
        CaseFile file = new CaseFile(patient, author, "Sample complaint", today.minusDays(60), today.minusDays(30));
        Recipient recipient = kind.recipients().stream().sorted().findFirst().orElseThrow();
        CaseValues values = new CaseValues().with("patient", Optional.of(patient.name())).with("given_name", Optional.of(patient.givenName()))
                .with("patient_phone", Optional.of("0000 555 010")).with("assessed", Optional.of(Dates.inLetter(today.minusDays(2))))
                .with("consent_date", Optional.of(Dates.inLetter(today.minusDays(30)))).with("clinic_phone", letterhead.phone())
                .with("next_review", Optional.of(Dates.inLetter(today.plusDays(28)))).with("how_soon", Optional.of("today"));
        Composer composer = new Composer(content.matrix());
        Set<InformationCategory> all = Set.of(InformationCategory.values());
        Map<String, String> texts = new LinkedHashMap<>(composer.draft(kind, recipient, all, facts(kind), values).texts());
        Letter letter = new Letter(file, 1, kind.key(), reader(recipient, patient), texts, author, Instant.now(clock));
        return printer.draft(letter, kind, composer.sections(kind, recipient, all), author);
    }

    /** A sample sentence for every section that has no first words, so that its heading shows. */
    private static List<LetterFact> facts(LetterKind kind) {
        List<LetterFact> facts = new ArrayList<>();
        kind.sections().stream().filter(section -> section.start().isEmpty() && section.drawing().isEmpty())
                .forEach(section -> facts.add(new LetterFact(section.information(), section.key(), section.table()
                        ? "Sample" + "\tSample".repeat(section.columns().size() - 1) : "Sample words of this section.", "sample")));
        return facts;
    }

    private static LetterReader reader(Recipient recipient, Patient patient) {
        return switch (recipient) {
            case WORKER -> LetterReader.of(patient);
            case CASE_REVIEW -> LetterReader.caseMeeting();
            case EMPLOYER -> LetterReader.of(new Employer("Quayside Works"));
            case INSURER -> LetterReader.of(new Correspondent(Correspondent.Kind.INSURER, "Claims desk"));
            case SPECIALIST -> LetterReader.of(new Correspondent(Correspondent.Kind.SPECIALIST, "Dr S. Sample"));
            default -> LetterReader.of(new Correspondent(Correspondent.Kind.DOCTOR, "Dr D. Sample"));
        };
    }
}
