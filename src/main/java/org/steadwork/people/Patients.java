package org.steadwork.people;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.steadwork.web.Dates;

/** The patients of the clinic, and the search that finds them by name (accents and slips forgiven), number, birth date or employer. */
@ApplicationScoped
public class Patients implements PanacheRepository<Patient> {

    private static final String ROW = "select new org.steadwork.people.PatientRow(p.id, p.fileNumber, p.givenName, p.familyName,"
            + " p.birthDate, e.name, p.jobTitle) from Patient p left join p.employer e ";

    /** From this likeness on, two names with one birth date are pointed out as a likely double. Common practice, no source. */
    private static final double ALIKE = 0.88;
    /** From this likeness on, a name is offered for what was typed. Common practice, no source. */
    private static final double LIKELY = 0.8;
    private static final int BORN_ON_ONE_DAY = 60;
    private static final int NUMBERS_AT_ONCE = 500;

    @Inject
    EntityManager db;

    @Inject
    NameSearch names;

    @Inject
    NameWords words;

    @ConfigProperty(name = "steadwork.file-number-prefix")
    String prefix;

    private final JaroWinklerSimilarity likeness = new JaroWinklerSimilarity();

    /** Takes the next file number; numbers are never used twice, and gaps are harmless. */
    public String nextFileNumber() {
        Number next = (Number) db.createNativeQuery("select nextval('file_number_seq')").getSingleResult();
        return "%s-%04d".formatted(prefix, next.longValue());
    }

    /** Takes many file numbers at once, in the order of the sequence. */
    List<String> nextFileNumbers(int count) {
        List<String> numbers = new ArrayList<>(count);
        while (numbers.size() < count) {
            int some = Math.min(NUMBERS_AT_ONCE, count - numbers.size());
            String several = "values " + String.join(", ", Collections.nCopies(some, "(nextval('file_number_seq'))"));
            for (Object number : db.createNativeQuery(several).getResultList()) {
                numbers.add("%s-%04d".formatted(prefix, ((Number) number).longValue()));
            }
        }
        return numbers;
    }

    public Optional<Patient> withAll(long id) {
        return find("from Patient p left join fetch p.employer left join fetch p.site left join fetch p.doctor where p.id = ?1", id)
                .firstResultOptional();
    }

    /** Finds at most {@code most} patients for what was typed, the likeliest first; fewer than two characters find nobody. */
    public List<PatientRow> search(String typed, int most) {
        String key = SearchKey.of(typed == null ? "" : typed);
        if (key.replace(" ", "").length() < 2) {
            return List.of();
        }
        Map<Long, PatientRow> found = new LinkedHashMap<>();
        keep(found, byNumber(typed.strip(), most));
        byDate(typed).ifPresent(date -> keep(found, rows("where p.birthDate = ?1 order by p.familyName, p.id", most, date)));
        if (key.chars().anyMatch(Character::isLetter)) {
            keep(found, ranked(key, names.beginning(key), most));
            if (found.size() < most) {
                keep(found, ranked(key, names.similar(key), most));
            }
            if (found.size() < most) {
                keep(found, byEmployer(key, most));
            }
        }
        return found.values().stream().limit(most).toList();
    }

    /** Returns patients with the same birth date and a similar name, other than {@code except}. */
    public List<PatientRow> likelyDoubles(String givenName, String familyName, LocalDate birthDate, Long except) {
        String key = SearchKey.of(givenName + " " + familyName);
        return rows("where p.birthDate = ?1 order by p.id", BORN_ON_ONE_DAY, birthDate).stream()
                .filter(row -> except == null || row.id() != except)
                .filter(row -> alike(key, SearchKey.of(row.name()))).toList();
    }

    boolean alike(String a, String b) {
        if (likeness.apply(a, b) >= ALIKE || likeness.apply(turned(a), b) >= ALIKE) {
            return true;
        }
        // a double name typed in half: every word of the shorter stands in the longer
        List<String> left = List.of(a.split(" "));
        List<String> right = List.of(b.split(" "));
        return left.containsAll(right) || right.containsAll(left);
    }

    /** Forgets the words of names that are kept in memory for slips. */
    public void forgetWords() {
        words.forget();
    }

    private static String turned(String name) {
        int gap = name.lastIndexOf(' ');
        return gap < 0 ? name : name.substring(gap + 1) + " " + name.substring(0, gap);
    }

    private List<PatientRow> byNumber(String typed, int most) {
        String digits = typed.replaceAll("\\D", "");
        if (digits.isEmpty() || !typed.matches("(?i)[a-z]{0,4}[- ]?\\d{1,9}")) {
            return List.of();
        }
        String number = "%s-%04d".formatted(prefix, Long.parseLong(digits));
        return rows("where p.fileNumber = ?1", most, number);
    }

    private static Optional<LocalDate> byDate(String typed) {
        try {
            return Optional.of(Dates.parse(typed));
        } catch (java.time.DateTimeException e) {
            return Optional.empty();
        }
    }

    private List<PatientRow> ranked(String key, List<Long> ids, int most) {
        record Scored(PatientRow row, double score) {
        }
        return ids.isEmpty() ? List.of() : rows("where p.id in ?1", ids.size(), ids).stream().map(row -> new Scored(row, words.scoreOf(key, SearchKey.of(row.name()))))
                .filter(s -> s.score() >= LIKELY).sorted(Comparator.comparingDouble(Scored::score).reversed().thenComparing(s -> s.row().name()))
                .limit(most).map(Scored::row).toList();
    }

    private List<PatientRow> byEmployer(String key, int most) {
        List<Long> employers = db.createQuery("select e.id from Employer e where e.searchName like ?1 or e.searchName like ?2 order by e.searchName, e.id", Long.class)
                .setParameter(1, key + "%").setParameter(2, "% " + key + "%").setMaxResults(most).getResultList();
        return employers.isEmpty() ? List.of() : rows("where e.id in ?1 order by p.familyName, p.id", most, employers);
    }

    private List<PatientRow> rows(String condition, int most, Object... parameters) {
        var query = db.createQuery(ROW + condition, PatientRow.class).setMaxResults(most);
        for (int i = 0; i < parameters.length; i++) {
            query.setParameter(i + 1, parameters[i]);
        }
        return query.getResultList();
    }

    /** Returns the patients registered last. */
    public List<PatientRow> latest(int most) {
        return rows("order by p.id desc", most);
    }

    private static void keep(Map<Long, PatientRow> found, Collection<PatientRow> rows) {
        new ArrayList<>(rows).forEach(row -> found.putIfAbsent(row.id(), row));
    }
}
