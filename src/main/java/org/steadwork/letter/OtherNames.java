package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.steadwork.account.Account;
import org.steadwork.letter.disclosure.Recipient;
import org.steadwork.people.Patient;

/** Finds names of people a letter is not about: other patients of the clinic, and, where no doctor reads it, people named with a title. */
@ApplicationScoped
class OtherNames {

    private static final Pattern TWO_NAMES = Pattern.compile("(?=\\b(\\p{Lu}[\\p{L}’'-]+\\s+\\p{Lu}[\\p{L}’'-]+))");
    private static final Pattern TITLED = Pattern.compile("\\b(?:Dr|Mr|Mrs|Ms|Miss|Mx|Prof|Professor|Sister)\\.?\\s+((?:\\p{Lu}\\.?\\s+)?\\p{Lu}[\\p{L}’'-]+)");

    @Inject
    EntityManager db;

    /** Looks through the words as printed; the worker, the reader and the writer are not others. */
    Optional<Check> check(Letter letter, Collection<String> texts, Account author) {
        String all = String.join("\n", texts);
        Set<String> known = known(letter, author);
        Set<String> found = new LinkedHashSet<>(otherPatients(all, letter.caseFile().patient()));
        if (letter.reader().kind() == Recipient.CASE_REVIEW) {
            found.addAll(ownNames(all, letter.caseFile().patient()));
        }
        if (letter.reader().kind() == Recipient.EMPLOYER || letter.reader().kind() == Recipient.INSURER) {
            Matcher titled = TITLED.matcher(all);
            while (titled.find()) {
                if (Stream.of(titled.group(1).split("\\s+")).noneMatch(part -> known.contains(part.toLowerCase(Locale.ROOT)))) {
                    found.add(titled.group());
                }
            }
        }
        return found.isEmpty() ? Optional.empty() : Optional.of(Check.ask("names", "other people", found.stream().map(name -> "“" + name + "”")
                .collect(Collectors.joining(", ")) + " may be somebody this letter is not about: take the name out, or say why it stays"));
    }

    /** A case meeting knows the case by its number, so the worker's own name is one too many there. */
    private static List<String> ownNames(String all, Patient own) {
        return Stream.of(own.givenName(), own.familyName()).filter(name -> Pattern.compile("(?<!\\p{L})" + Pattern.quote(name) + "(?!\\p{L})",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE).matcher(all).find()).toList();
    }

    private Set<String> otherPatients(String all, Patient own) {
        Set<String> pairs = new HashSet<>();
        Matcher names = TWO_NAMES.matcher(all);
        while (names.find()) {
            pairs.add(names.group(1).replaceAll("\\s+", " ").toLowerCase(Locale.ROOT));
        }
        if (pairs.isEmpty()) {
            return Set.of();
        }
        List<Patient> others = db.createQuery("from Patient p where lower(concat(p.givenName, ' ', p.familyName)) in ?1 and p.id <> ?2", Patient.class)
                .setParameter(1, pairs).setParameter(2, own.id()).getResultList();
        return others.stream().map(Patient::name).filter(name -> !name.equals(own.name())).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static Set<String> known(Letter letter, Account author) {
        return Stream.of(letter.caseFile().patient().name(), letter.reader().name(), author.fullName(), author.displayName())
                .flatMap(name -> Stream.of(name.split("[\\s,.]+"))).filter(part -> part.length() > 1).map(part -> part.toLowerCase(Locale.ROOT))
                .collect(Collectors.toSet());
    }
}
