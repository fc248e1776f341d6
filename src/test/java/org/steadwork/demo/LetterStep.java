package org.steadwork.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.steadwork.account.DemoPassword;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.journey.FilledForm;
import org.steadwork.journey.Guest;

/**
 * Letters: records the consents on their day, drafts each letter, shows it, signs it, and reads the signed file: what it must
 * say is there, what its reader may not have is not.
 */
final class LetterStep implements WalkStep {

    private final Set<String> kinds = Set.copyOf(Content.yaml("letters/kinds/index.yaml").texts("kinds"));

    @Override
    public void walk(WalkedVisit visit) {
        visit.demo().entries("consents").stream().filter(consent -> consent.text("kind").equals("c3") && !consent.flag("refused")
                && consent.text("on").equals(visit.day().toString())).forEach(consent -> consent(visit, consent));
        visit.entry().entries("letters").stream().filter(letter -> kinds.contains(letter.text("kind")) && !letter.text("recipient").equals("worker"))
                .forEach(letter -> write(visit, letter));
    }

    private static void consent(WalkedVisit visit, Entry consent) {
        Guest guest = visit.guest();
        guest.open(visit.path("/consents/new")).expect(200);
        guest.formWithButton("Choose the reader").choose("to", reader(visit, consent)).send().expect(200);
        FilledForm form = guest.formWithButton("Record the consent").choose("how", consent.text("form").equals("written") ? "signed" : "spoken")
                .set("givenOn", consent.text("on")).set("until", consent.text("until"));
        consent.texts("ticked").stream().map(category -> category.toUpperCase(Locale.ROOT)).filter(category -> form.offers("tick", category))
                .forEach(category -> form.tick("tick", category));
        form.send().expect(200);
    }

    private static String reader(WalkedVisit visit, Entry entry) {
        String key = entry.text("recipient");
        return key.equals("employer") ? DemoPeople.keyed(visit.clinic(), "employers", visit.demo().text("employer")).text("name")
                : DemoPeople.keyed(visit.clinic(), "correspondents", key).text("name");
    }

    private static void write(WalkedVisit visit, Entry letter) {
        Guest guest = visit.on(LocalDate.parse(letter.text("written")));
        guest.open(visit.path("/letters/new/" + letter.text("kind"))).expect(200);
        guest.formWithButton("Draft the letter").choose("to", reader(visit, letter)).send().expect(200);
        String path = guest.at().getPath();
        fill(visit, letter, guest).send().expect(200);
        boolean shut = letter.entry("expected").flatMap(e -> e.optionalText("gate")).orElse("open").equals("shut");
        if (shut) {
            sign(guest.open(path).expect(200));
            assertEquals(422, guest.status(), visit.where() + "a letter was signed without consent");
            return;
        }
        if (letter.has("shown")) {
            Guest shown = visit.on(LocalDate.parse(letter.text("agreed")));
            shown.open(path).expect(200).formWithButton("Record the answer").set("answer", "agreed").set("happenedOn", letter.text("agreed"))
                    .set("how", "In the clinic").send().expect(200);
        }
        if (letter.text("signed").equals("no")) {
            return;
        }
        Guest signer = visit.on(LocalDate.parse(letter.text("signed")));
        sign(signer.open(path).expect(200));
        assertEquals(200, signer.status(), () -> visit.where() + letter.text("kind") + " was not signed: " + signer.errors() + signer.page().select(".checks").text());
        signer.formWithButton("Record it").set("answer", "sent").set("happenedOn", letter.text("sent")).set("how", letter.text("by")).send().expect(200);
        signer.open(path + "/file/letter.pdf").expect(200);
        read(visit, letter, text(signer.body()));
    }

    /** Signs, giving a reason for every word that the page asks about. */
    private static void sign(Guest guest) {
        for (int tries = 0; tries < 2; tries++) {
            FilledForm form = guest.formWithButton("Sign the letter").set("password", DemoPassword.VALUE);
            form.fields().stream().filter(field -> field.startsWith("why") || field.startsWith("confirm"))
                    .forEach(field -> form.set(field, "Needed to make sense of the request; the worker agreed to these words."));
            form.send();
            if (guest.status() != 422) {
                return;
            }
        }
    }

    /** Fills the draft; what the case file put under the findings stays. A table grows by saving. */
    private static FilledForm fill(WalkedVisit visit, Entry letter, Guest guest) {
        DemoLetterWords words = DemoLetterWords.of(visit.demo(), visit.entry(), letter);
        FilledForm form = guest.formWithButton("Save as draft");
        for (Map.Entry<String, List<String>> table : words.tables().entrySet()) {
            String field = "rows-" + table.getKey();
            for (int places = form.places(field); places < table.getValue().size(); places = form.places(field)) {
                form.setAll(field, table.getValue().subList(0, places)).send().expect(200);
                form = guest.formWithButton("Save as draft");
            }
            form.setAll(field, table.getValue());
        }
        for (Map.Entry<String, String> text : words.texts().entrySet()) {
            String field = "text-" + text.getKey();
            if (form.offers(field)) { // what the consent does not cover is not offered
                form.set(field, text.getKey().equals("findings") ? form.value(field) + "\n" + text.getValue() : text.getValue());
            }
        }
        return form;
    }

    private static String text(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replace('\u00a0', ' ').replaceAll("\\s+", " ");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void read(WalkedVisit visit, Entry letter, String text) {
        letter.entry("expected").ifPresent(expected -> {
            for (String words : expected.texts("says")) {
                assertTrue(text.toLowerCase().contains(words.toLowerCase()), visit.where() + letter.text("kind") + " does not say '" + words + "': " + text);
            }
            for (String words : expected.texts("silent")) {
                assertFalse(Pattern.compile("\\b" + Pattern.quote(words), Pattern.CASE_INSENSITIVE).matcher(text).find(),
                        visit.where() + letter.text("kind") + " says '" + words + "': " + text);
            }
        });
    }
}
