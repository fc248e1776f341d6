package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jboss.logging.Logger;
import org.steadwork.content.Entry;
import org.steadwork.demo.DemoLetterWords;
import org.steadwork.demo.DemoVisit;
import org.steadwork.demo.DemoVisitPart;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.disclosure.Rule;
import org.steadwork.people.Correspondent;
import org.steadwork.people.Directory;
import org.steadwork.web.DemoClock;

/** The demo's consents to write and its letters, drafted and signed as the pages do it, each on its own day. */
@ApplicationScoped
class DemoLetters implements DemoVisitPart {

    private static final Logger LOG = Logger.getLogger("steadwork");

    @Inject
    Directory directory;

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

    @Override
    public int order() {
        return 70;
    }

    @Override
    public void load(DemoVisit visit) {
        visit.demo().entries("consents").stream().filter(written -> written.text("kind").equals("c3") && !written.flag("refused")
                && written.text("on").equals(visit.day().toString())).forEach(written -> consent(visit, written));
        Set<String> kinds = content.kinds().stream().map(LetterKind::key).collect(Collectors.toSet());
        for (Entry written : visit.entry().entries("letters")) {
            boolean shut = written.entry("expected").map(expected -> expected.has("gate")).orElse(false);
            if (kinds.contains(written.text("kind")) && !shut && !written.text("recipient").equals("worker")) {
                letter(visit, written);
            }
        }
    }

    private LetterReader reader(DemoVisit visit, Entry written) {
        String key = written.text("recipient");
        if (key.equals("employer")) {
            return LetterReader.of(visit.file().patient().employer());
        }
        Entry reader = visit.known("correspondents", key);
        return LetterReader.of(directory.correspondent(reader.constant("kind", Correspondent.Kind.class), reader.text("name")));
    }

    private void consent(DemoVisit visit, Entry written) {
        LetterReader reader = reader(visit, written);
        Set<InformationCategory> ticked = written.texts("ticked").stream().map(key -> InformationCategory.valueOf(key.toUpperCase(Locale.ROOT)))
                .filter(category -> content.matrix().cell(category, reader.kind()).rule() == Rule.EXPLICIT).collect(Collectors.toSet());
        Consent.How how = written.text("form").equals("written") ? Consent.How.SIGNED : Consent.How.SPOKEN;
        String shown = ConsentOffer.of(content.matrix(), reader, visit.file().patient().name()).shownText();
        consents.add(new Consent(visit.file(), reader, how, visit.day(), LocalDate.parse(written.text("until")), ticked, shown, visit.clinician()));
    }

    private void letter(DemoVisit visit, Entry written) {
        moveTo(written.text("written"));
        Letter letter = desk.begin(visit.file(), content.kind(written.text("kind")), reader(visit, written), visit.clinician());
        Map<String, String> texts = new LinkedHashMap<>(letter.texts());
        DemoLetterWords words = DemoLetterWords.of(visit.demo(), visit.entry(), written);
        String found = texts.getOrDefault("findings", "");
        texts.putAll(words.texts());
        if (words.texts().containsKey("findings")) {
            texts.put("findings", found + "\n" + words.texts().get("findings"));
        }
        words.tables().forEach((section, cells) -> texts.put(section, TableText.of(cells, DemoLetterWords.COLUMNS)));
        letter.write(texts, visit.clinician(), Instant.now(clock));
        letters.flush();
        if (written.has("agreed")) {
            moveTo(written.text("agreed"));
            event(letter, LetterEvent.Kind.AGREED, written.text("agreed"), "In the clinic", visit);
        }
        if (!written.text("signed").equals("no")) {
            moveTo(written.text("signed"));
            if (sign(visit, letter)) {
                event(letter, LetterEvent.Kind.SENT, written.text("sent"), written.text("by"), visit);
            }
        }
    }

    /** Signs as the page does; a letter that a check holds up stays a draft, and the log says why. */
    private boolean sign(DemoVisit visit, Letter letter) {
        List<Check> checks = desk.look(letter, visit.clinician()).checks();
        List<String> stops = checks.stream().filter(Check::stops).map(Check::text).toList();
        if (!stops.isEmpty()) {
            LOG.warnf("Letter %d of %s stays a draft: %s", letter.number(), visit.demo().text("key"), stops);
            return false;
        }
        Map<String, String> confirmed = checks.stream().filter(Check::asks)
                .collect(Collectors.toMap(Check::key, check -> "Needed to make sense of the request; the worker agreed to the words."));
        signing.sign(visit.file().id(), letter.number(), letter.version(), visit.clinician(), confirmed);
        return true;
    }

    private void event(Letter letter, LetterEvent.Kind kind, String day, String how, DemoVisit visit) {
        letters.add(new LetterEvent(letter, kind, LocalDate.parse(day), how, null, visit.clinician(), Instant.now(clock)));
        letters.flush();
    }

    private void moveTo(String day) {
        if (clock instanceof DemoClock demoClock) {
            demoClock.runFrom(LocalDate.parse(day).atTime(LocalTime.of(16, 0)).atZone(ZoneId.systemDefault()).toInstant());
        }
    }
}
