package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.steadwork.account.Account;
import org.steadwork.casefile.CaseFile;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.disclosure.Rule;

/**
 * The one way to sign letters without their pages, and only in the invented demo clinic: its consents and letters, recorded,
 * drafted and signed by the same rules as on the pages. In a real clinic every method refuses.
 */
@ApplicationScoped
public class DemoCorrespondence {

    private static final Logger LOG = Logger.getLogger("steadwork");

    @Inject
    Consents consents;

    @Inject
    LetterContent content;

    @Inject
    Letters letters;

    @Inject
    LetterDesk desk;

    @Inject
    Signing signing;

    @Inject
    Clock clock;

    @ConfigProperty(name = "steadwork.demo", defaultValue = "false")
    boolean demo;

    /** True for a kind of letter that can be written to this reader. */
    public boolean writes(String kind, LetterReader reader) {
        return content.kinds().stream().anyMatch(known -> known.key().equals(kind) && known.recipients().contains(reader.kind()));
    }

    /** Records a consent given today by the demo's clock; of the ticks those count that this reader can be given. */
    public void consent(CaseFile file, LetterReader reader, boolean onPaper, LocalDate until, Collection<String> ticked, Account by) {
        requireDemo();
        Set<InformationCategory> ticks = ticked.stream().map(key -> InformationCategory.valueOf(key.toUpperCase(Locale.ROOT)))
                .filter(category -> content.matrix().cell(category, reader.kind()).rule() == Rule.EXPLICIT).collect(Collectors.toSet());
        String shown = ConsentOffer.of(content.matrix(), reader, file.patient().name()).shownText();
        consents.add(new Consent(file, reader, onPaper ? Consent.How.SIGNED : Consent.How.SPOKEN, LocalDate.now(clock), until, ticks, shown, by));
    }

    /**
     * Drafts a letter and puts words in.
     *
     * @param texts  words by section; what the case file put under {@code findings} stays before them
     * @param tables cells, row after row, by section
     * @return the letter's number
     */
    public int draft(CaseFile file, String kind, LetterReader reader, Map<String, String> texts, Map<String, List<String>> tables, Account by) {
        requireDemo();
        LetterKind known = content.kind(kind);
        Letter letter = desk.begin(file, known, reader, by);
        Map<String, String> words = new LinkedHashMap<>(letter.texts());
        texts.forEach((section, text) -> words.put(section, section.equals("findings") ? words.getOrDefault(section, "") + "\n" + text : text));
        tables.forEach((section, cells) -> words.put(section, TableText.of(cells, known.section(section).orElseThrow().columns().size())));
        letter.write(words, by, Instant.now(clock));
        letters.flush();
        return letter.number();
    }

    /** Records that the worker saw the draft and agreed, today. */
    public void agreed(CaseFile file, int number, Account by) {
        event(file, number, LetterEvent.Kind.AGREED, "In the clinic", by);
    }

    /** Records that a signed letter left, today. */
    public void sent(CaseFile file, int number, String how, Account by) {
        event(file, number, LetterEvent.Kind.SENT, how, by);
    }

    /** Signs as the page does; a letter that a check holds up stays a draft, and the log says why. */
    public boolean sign(CaseFile file, int number, Account by) {
        requireDemo();
        Letter letter = letters.numbered(file.id(), number).orElseThrow();
        List<Check> checks = desk.look(letter, by).checks();
        List<String> stops = checks.stream().filter(Check::stops).map(Check::text).toList();
        if (!stops.isEmpty()) {
            LOG.warnf("Letter %s stays a draft: %s", letter.reference(), stops);
            return false;
        }
        Map<String, String> confirmed = checks.stream().filter(Check::asks)
                .collect(Collectors.toMap(Check::key, check -> "Needed to make sense of the request; the worker agreed to the words."));
        signing.sign(file.id(), number, letter.version(), by, confirmed);
        return true;
    }

    private void event(CaseFile file, int number, LetterEvent.Kind kind, String how, Account by) {
        requireDemo();
        Letter letter = letters.numbered(file.id(), number).orElseThrow();
        letters.add(new LetterEvent(letter, kind, LocalDate.now(clock), how, null, by, Instant.now(clock)));
        letters.flush();
    }

    private void requireDemo() {
        if (!demo) {
            throw new IllegalStateException("Letters are signed on their pages; only the demo clinic's are signed without");
        }
    }
}
