package org.steadwork.letter;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.steadwork.letter.disclosure.Recipient;
import org.steadwork.people.Correspondent;
import org.steadwork.people.Employer;
import org.steadwork.people.Patient;

/**
 * The named person or body a letter or a consent is for: the worker, a correspondent or an employer, and one only.
 *
 * @param correspondent a doctor, specialist or insurer, or null
 * @param employer      an employer, or null
 * @param worker        the worker, or null; a worker needs no consent
 */
public record LetterReader(Recipient kind, Correspondent correspondent, Employer employer, Patient worker) {

    private static final Pattern LINE_END = Pattern.compile("[\\n;]");

    public LetterReader {
        Objects.requireNonNull(kind, "kind");
        if (Stream.of(correspondent, employer, worker).filter(Objects::nonNull).count() != (kind == Recipient.CASE_REVIEW ? 0 : 1)) {
            throw new IllegalArgumentException("A letter has one reader: the worker, a correspondent, an employer, or the case meeting");
        }
    }

    public static LetterReader of(Correspondent correspondent) {
        return new LetterReader(switch (correspondent.kind()) {
            case DOCTOR -> Recipient.DOCTOR;
            case SPECIALIST -> Recipient.SPECIALIST;
            case INSURER -> Recipient.INSURER;
        }, correspondent, null, null);
    }

    public static LetterReader of(Employer employer) {
        return new LetterReader(Recipient.EMPLOYER, null, employer, null);
    }

    /** Returns the case meeting of the clinic, which is no one person. */
    public static LetterReader caseMeeting() {
        return new LetterReader(Recipient.CASE_REVIEW, null, null, null);
    }

    public static LetterReader of(Patient worker) {
        return new LetterReader(Recipient.WORKER, null, null, worker);
    }

    /** Returns the name a form uses for this reader, for example {@code employer-12}. */
    String key() {
        return kind == Recipient.CASE_REVIEW ? "case-meeting" : worker != null ? "worker" : employer != null ? "employer-" + employer.id() : "correspondent-" + correspondent.id();
    }

    /** Returns the reader in one line. */
    String name() {
        return String.join(", ", names());
    }

    /** Returns name, body and address as printed on the letter; an address that begins with the name does not repeat it. */
    List<String> lines() {
        List<String> lines = new ArrayList<>(names());
        if (kind == Recipient.CASE_REVIEW) {
            return lines;
        }
        Optional.ofNullable(worker != null ? worker.address() : employer != null ? employer.address() : correspondent.address())
                .ifPresent(address -> Arrays.stream(LINE_END.split(address)).map(String::strip).filter(line -> !line.isEmpty())
                        .filter(line -> names().stream().noneMatch(line::equalsIgnoreCase)).forEach(lines::add));
        return lines;
    }

    private List<String> names() {
        if (kind == Recipient.CASE_REVIEW) {
            return List.of("Case meeting of the clinic");
        }
        if (worker != null) {
            return List.of(worker.name());
        }
        String first = employer != null ? employer.contactName() : correspondent.name();
        String second = employer != null ? employer.name() : correspondent.organisation();
        List<String> names = new ArrayList<>();
        for (String name : new String[] {first, second}) {
            if (name != null && !name.isBlank()) {
                names.add(name);
            }
        }
        return names;
    }
}
