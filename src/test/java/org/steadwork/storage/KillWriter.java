package org.steadwork.storage;

import java.net.URI;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.steadwork.journey.Drafts;
import org.steadwork.journey.Guest;

/** Somebody who writes as fast as the pages answer, until the process is gone. */
abstract class KillWriter implements Runnable {

    private static final Pattern LAST_NUMBER = Pattern.compile("/(\\d+)(?:/symptoms)?$");

    final Guest guest;
    final WriterBook book;
    final int round;
    int written;

    private KillWriter(Guest guest, WriterBook book, int round) {
        this.guest = guest;
        this.book = book;
        this.round = round;
    }

    /** Signs in whoever writes; their sessions outlast the process. */
    static List<Guest> signedIn(URI address) {
        return Stream.generate(() -> new Guest(address)).limit(4).map(guest -> guest.open("/sign-in").expect(200).formWithButton("Sign in").set("userName", "tamsin")
                .set("password", "desk-and-daylight").send().expect(200)).toList();
    }

    /** @param guests four, signed in */
    static List<KillWriter> all(List<Guest> guests, WriterBook book, int round) {
        return List.of(new Patients(guests.get(0), book, round, 1), new Patients(guests.get(1), book, round, 2), new Symptoms(guests.get(2), book, round),
                new Letters(guests.get(3), book, round));
    }

    @Override
    public void run() {
        try {
            while (true) {
                written++;
                write();
            }
        } catch (AssertionError unexpected) {
            book.surprise(this + ": " + unexpected.getMessage());
        } catch (Exception gone) {
            // the connection ended with the process
        }
    }

    /** Opens what is written to. */
    void begin() {
    }

    abstract void write();

    long number() {
        Matcher number = LAST_NUMBER.matcher(guest.at().getPath());
        if (!number.find()) {
            throw new AssertionError("no number in " + guest.at());
        }
        return Long.parseLong(number.group(1));
    }

    @Override
    public String toString() {
        return getClass().getSimpleName() + " of round " + round;
    }

    /** Registers patients and opens a case for each: several tables in one transaction. */
    private static final class Patients extends KillWriter {

        private final int which;

        Patients(Guest guest, WriterBook book, int round, int which) {
            super(guest, book, round);
            this.which = which;
        }

        @Override
        void write() {
            String name = "Kill" + letters(round) + letters(which) + letters(written);
            LocalDate born = LocalDate.of(1940, 1, 1).plusDays((round * 400L + which * 200L + written) % 20_000);
            guest.open("/patients/new").expect(200).formWithButton("Register the patient").set("givenName", "Invented").set("sex", "not_recorded").set("handedness", "not_recorded").set("familyName", name)
                    .set("birthDate", born.toString()).send();
            if (guest.offersForm("input[name=anotherPerson]")) {
                guest.formWithButton("Register the patient").tick("anotherPerson", "yes").send();
            }
            guest.expect(200);
            long patient = number();
            book.acknowledge("patient", patient, name);
            guest.open("/patients/" + patient + "/cases/new").expect(200).formWithButton("Open the case").set("complaint", "Neck of " + name).send().expect(200);
            book.acknowledge("case", number(), "Neck of " + name);
        }

        private static String letters(int number) {
            return Integer.toString(number, 26).chars().mapToObj(digit -> String.valueOf((char) ('a' + Character.digit(digit, 26)))).reduce("", String::concat);
        }
    }

    /** Changes one day's symptoms again and again; each state is kept in the history. */
    private static final class Symptoms extends KillWriter {

        private long report;

        Symptoms(Guest guest, WriterBook book, int round) {
            super(guest, book, round);
        }

        @Override
        void begin() {
            guest.open("/cases/1/symptoms").expect(200);
            Matcher link = Pattern.compile("/cases/1/symptoms/(\\d+)").matcher(guest.page().outerHtml());
            if (!link.find()) {
                throw guest.missing("no report of symptoms");
            }
            report = Long.parseLong(link.group(1));
            guest.open("/cases/1/symptoms/" + report).expect(200);
        }

        @Override
        void write() {
            String words = "round " + round + " write " + written;
            guest.formWithButton("Save symptoms").set("ownWords", words).send().expect(200);
            book.acknowledge("symptoms", report, words);
            guest.open("/cases/1/symptoms/" + report).expect(200);
        }
    }

    /** Saves a draft of a letter as the page does while one types. */
    private static final class Letters extends KillWriter {

        private String path;

        Letters(Guest guest, WriterBook book, int round) {
            super(guest, book, round);
        }

        @Override
        void begin() {
            path = Drafts.openLetter(guest);
        }

        @Override
        void write() {
            String words = "round " + round + " write " + written;
            guest.formWithButton("Save as draft").set("text-findings", words).send().expect(200);
            book.acknowledge("letter", Long.parseLong(path.split("/")[2]), words);
        }
    }
}
