package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.steadwork.account.Account;
import org.steadwork.casefile.CaseFile;
import org.steadwork.letter.disclosure.Gate;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.disclosure.Reader;
import org.steadwork.letter.pdf.LetterPdf;
import org.steadwork.web.Dates;

/** Begins letters and lays drafts out for a look: what they may hold today, how they print, what is still in the way. */
@ApplicationScoped
class LetterDesk {

    @Inject
    LetterContent content;

    @Inject
    Letters letters;

    @Inject
    Consents consents;

    @Inject
    LetterPrinter printer;

    @Inject
    Letterhead letterhead;

    @Inject
    OtherNames otherNames;

    @Inject
    @Any
    Instance<LetterFacts> facts;

    @Inject
    @Any
    Instance<LetterStops> stops;

    @Inject
    Clock clock;

    /** Begins a letter with what the case file holds and this reader may have. */
    Letter begin(CaseFile file, LetterKind kind, LetterReader reader, Account by) {
        Optional<Consent> consent = consents.latest(file, reader);
        Draft draft = composer().draft(kind, reader.kind(), ticked(consent), facts(file), values(file, consent));
        return keep(file, kind, reader, draft.texts(), by);
    }

    /** Returns what is known of the values that first words name. */
    CaseValues values(CaseFile file, Optional<Consent> consent) {
        CaseValues values = new CaseValues().with("patient", Optional.of(file.patient().name())).with("given_name", Optional.of(file.patient().givenName()))
                .with("patient_phone", Optional.ofNullable(file.patient().phone())).with("assessed", printer.assessed(file.id()))
                .with("consent_date", consent.map(given -> Dates.inLetter(given.givenOn()))).with("clinic_phone", letterhead.phone())
                .with("next_review", Optional.ofNullable(file.nextReviewOn()).map(Dates::inLetter));
        facts.forEach(source -> source.values(file).forEach((name, value) -> values.with(name, Optional.of(value))));
        return values;
    }

    /** Begins a letter that takes the place of a signed one: the same words to the same reader, to be put right. */
    Letter beginInPlaceOf(Letter wrong, Account by) {
        Letter letter = keep(wrong.caseFile(), content.kind(wrong.kind()), wrong.reader(), wrong.texts(), by);
        letter.inPlaceOf(wrong);
        letters.flush();
        return letter;
    }

    private Letter keep(CaseFile file, LetterKind kind, LetterReader reader, Map<String, String> texts, Account by) {
        Letter letter = new Letter(file, letters.nextNumber(file.patient().id()), kind.key(), reader, texts, by, Instant.now(clock));
        letters.add(letter);
        letters.flush();
        return letter;
    }

    /** Returns the sections the reader of a letter may have today. */
    List<SectionKind> sections(Letter letter) {
        return composer().sections(content.kind(letter.kind()), letter.reader().kind(),
                ticked(consents.latest(letter.caseFile(), letter.reader())));
    }

    /** Lays a draft out. */
    Desk look(Letter letter, Account author) {
        LetterKind kind = content.kind(letter.kind());
        LetterReader reader = letter.reader();
        Optional<Consent> consent = consents.latest(letter.caseFile(), reader);
        Set<InformationCategory> ticked = ticked(consent);
        Gate gate = Reader.of(reader.kind(), consent.map(Consent::given), LocalDate.now(clock)).gate();
        List<SectionKind> sections = composer().sections(kind, reader.kind(), ticked);
        Optional<DisclosureOverride> override = letters.override(letter);
        List<LetterEvent> events = letters.events(letter);
        LetterPdf file = printer.draft(letter, kind, sections, author);
        List<Check> checks = new ArrayList<>();
        checks.add(gateCheck(kind, reader, gate, consent, override));
        SeenFirstCheck.check(kind, letter, events).ifPresent(checks::add);
        stops.stream().map(stop -> stop.stop(letter.caseFile(), kind)).flatMap(Optional::stream)
                .forEach(reason -> checks.add(Check.stop("suspended", "suspended", reason)));
        Map<String, String> printed = new LinkedHashMap<>();
        sections.forEach(section -> printed.put(section.key(), letter.texts().getOrDefault(section.key(), "")));
        checks.addAll(new TextChecks(content.matrix(), content.watchWords()).check(sections, printed, reader.kind(), ticked));
        otherNames.check(letter, printed.values(), author).ifPresent(checks::add);
        ReadingGrade.check(kind, sections, printed).ifPresent(checks::add);
        kind.sections().stream().filter(section -> section.needsTick() && !sections.contains(section)).forEach(section -> checks.add(Check.stop(
                "tick-" + section.key(), "not ticked", "“" + section.heading() + "” goes to " + reader.kind().label() + " only if the worker ticks it")));
        checks.add(pages(kind, file));
        if (!letterhead.complete()) {
            checks.add(Check.look("letterhead", "look again", "The clinic’s name and telephone number are not set, so the letterhead is bare"));
        }
        List<LetterFact> known = facts(letter.caseFile());
        return new Desk(letter, kind, sections, consent, gate, override, composer().included(kind, reader.kind(), ticked, known),
                heldBack(letter, kind, ticked, sections, known), events, checks, file);
    }

    private List<Draft.HeldBack> heldBack(Letter letter, LetterKind kind, Set<InformationCategory> ticked, List<SectionKind> sections,
                                          List<LetterFact> known) {
        List<Draft.HeldBack> heldBack = new ArrayList<>(composer().heldBack(kind, letter.reader().kind(), ticked, known));
        for (SectionKind section : kind.sections()) {
            if (!sections.contains(section) && !letter.texts().getOrDefault(section.key(), "").isBlank()) {
                heldBack.add(new Draft.HeldBack("What was written under “" + section.heading() + "”",
                        "It is kept in the draft and not printed: the consent no longer covers it"));
            }
        }
        return heldBack;
    }

    private static Check gateCheck(LetterKind kind, LetterReader reader, Gate gate, Optional<Consent> consent, Optional<DisclosureOverride> override) {
        String whom = "Consent to write to " + reader.name();
        if (kind.gate() == LetterKind.GateRule.NONE || !reader.kind().needsConsent()) {
            return Check.holds("consent", "not needed", "The worker is the reader");
        }
        if (gate == Gate.IN_FORCE) {
            return Check.holds("consent", "in force", whom + ", until " + Dates.shown(consent.orElseThrow().holdsUntil()) + ", checked for today");
        }
        if (kind.gate() == LetterKind.GateRule.CONSENT_OR_OVERRIDE && override.isPresent()) {
            return Check.holds("consent", "override", whom + " is " + gate.label() + "; an override is on record, on the ground of "
                    + override.get().ground().label());
        }
        return Check.stop("consent", gate.label(), whom + " is " + gate.label() + ". Record it"
                + (kind.gate() == LetterKind.GateRule.CONSENT_OR_OVERRIDE ? ", or record why it cannot be asked" : ""));
    }

    private static Check pages(LetterKind kind, LetterPdf file) {
        String says = file.pages() + (file.pages() == 1 ? " page" : " pages");
        return file.pages() <= kind.maxPages() ? Check.holds("pages", says, "Not longer than this kind of letter should be")
                : Check.look("pages", says, "This kind of letter should not be longer than " + kind.maxPages() + (kind.maxPages() == 1 ? " page" : " pages"));
    }

    List<LetterFact> facts(CaseFile file) {
        // the container finds these beans in another order at each build; the lines of a section keep theirs
        return facts.stream().sorted(Comparator.comparing(source -> source.getClass().getSimpleName())).flatMap(source -> source.of(file).stream()).toList();
    }

    Composer composer() {
        return new Composer(content.matrix());
    }

    private static Set<InformationCategory> ticked(Optional<Consent> consent) {
        return consent.map(Consent::ticked).orElse(Set.of());
    }
}
