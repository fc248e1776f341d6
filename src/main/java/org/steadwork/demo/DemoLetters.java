package org.steadwork.demo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import org.steadwork.content.Entry;
import org.steadwork.letter.DemoCorrespondence;
import org.steadwork.letter.LetterReader;
import org.steadwork.people.Correspondent;
import org.steadwork.people.Directory;
import org.steadwork.web.DemoClock;

/** The demo's consents to write and its letters, drafted and signed as the pages do it, each on its own day. */
@ApplicationScoped
class DemoLetters implements DemoVisitPart {

    @Inject
    Directory directory;

    @Inject
    DemoCorrespondence letters;

    @Inject
    Clock clock;

    @Override
    public int order() {
        return 70;
    }

    @Override
    public void load(DemoVisit visit) {
        visit.demo().entries("consents").stream().filter(written -> written.text("kind").equals("c3") && !written.flag("refused")
                && written.text("on").equals(visit.day().toString())).forEach(written -> letters.consent(visit.file(), reader(visit, written),
                        written.text("form").equals("written"), LocalDate.parse(written.text("until")), written.texts("ticked"), visit.clinician()));
        for (Entry written : visit.entry().entries("letters")) {
            boolean shut = written.entry("expected").map(expected -> expected.has("gate")).orElse(false);
            // what the files call a summary for the worker is the exercise sheet handed over, and no letter
            if (!shut && !written.text("recipient").equals("worker") && letters.writes(written.text("kind"), reader(visit, written))) {
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

    private void letter(DemoVisit visit, Entry written) {
        moveTo(written.text("written"));
        DemoLetterWords words = DemoLetterWords.of(visit.demo(), visit.entry(), written);
        int number = letters.draft(visit.file(), written.text("kind"), reader(visit, written), words.texts(), words.tables(), visit.clinician());
        if (written.has("agreed")) {
            moveTo(written.text("agreed"));
            letters.agreed(visit.file(), number, visit.clinician());
        }
        if (!written.text("signed").equals("no")) {
            moveTo(written.text("signed"));
            if (letters.sign(visit.file(), number, visit.clinician())) {
                moveTo(written.text("sent"));
                letters.sent(visit.file(), number, written.text("by"), visit.clinician());
            }
        }
    }

    private void moveTo(String day) {
        if (clock instanceof DemoClock demoClock) {
            demoClock.runFrom(LocalDate.parse(day).atTime(LocalTime.of(16, 0)).atZone(ZoneId.systemDefault()).toInstant());
        }
    }
}
