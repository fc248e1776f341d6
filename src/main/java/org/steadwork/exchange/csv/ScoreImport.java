package org.steadwork.exchange.csv;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.outcome.Instruments;
import org.steadwork.outcome.Score;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.InvalidAnswer;
import org.steadwork.outcome.scoring.Scored;
import org.steadwork.web.Dates;

/** Filled-in questionnaires by item; the score is worked out here, and a value in the file that differs from it is refused rather than believed. */
@ApplicationScoped
class ScoreImport implements ImportKind {

    private static final int FLUSH_EVERY = 500;
    /** Half of the last of six decimals, which is how scores are exported. */
    private static final double AGREE = 0.5e-6;
    static final int DECIMALS = 6;
    static final List<Column> COLUMNS = List.of(
            new Column("file_number", true, "File number of the patient in this clinic", "SW-0001"),
            new Column("case", false, "Number of the case; may be empty when the patient has one case", ""),
            new Column("instrument", true, "Key of the instrument, for example ndi, odi21a, quickdash", "ndi"),
            new Column("version", false, "Version of the form; must be the one in use here when it is given", ""),
            new Column("scored_on", true, "Day, between the opening of the case and today", "2026-03-04"),
            new Column("answers", true, "The answers in item order, separated by blanks; _ for an item without one", "2 1 3 2 2 1 2 _ 2 1"),
            new Column("value", false, "The score in the other program; must agree with the one worked out here", ""),
            new Column("unit", false, "Unit of the value; ignored when reading", "%"),
            new Column("estimated", false, "yes when the instrument's rule filled in missing items; ignored when reading", ""));

    @Inject
    EntityManager db;

    @Inject
    Instruments instruments;

    @Inject
    CurrentAccount account;

    @Inject
    AuditTrail audit;

    @Inject
    Clock clock;

    private record Wanted(CaseFile file, Instrument instrument, LocalDate on, List<Integer> answers) {
    }

    @Override
    public String key() {
        return "scores";
    }

    @Override
    public String label() {
        return "Scores";
    }

    @Override
    public List<Column> columns() {
        return COLUMNS;
    }

    @Override
    public Checked check(List<Row> rows, LocalDate today, IntConsumer checked) {
        Map<String, List<CaseFile>> cases = new HashMap<>();
        Set<String> numbers = new HashSet<>();
        rows.forEach(row -> numbers.add(row.cell("file_number")));
        List<String> all = List.copyOf(numbers);
        Set<String> taken = new HashSet<>();
        for (int from = 0; from < all.size(); from += FLUSH_EVERY) {
            List<String> some = all.subList(from, Math.min(all.size(), from + FLUSH_EVERY));
            db.createQuery("from CaseFile c join fetch c.patient p where p.fileNumber in ?1 order by c.id", CaseFile.class).setParameter(1, some).getResultList()
                    .forEach(file -> cases.computeIfAbsent(file.patient().fileNumber(), key -> new ArrayList<>()).add(file));
            db.createQuery("select s.caseFile.id, s.instrument, s.scoredOn from Score s where s.caseFile.patient.fileNumber in ?1", Object[].class).setParameter(1, some)
                    .getResultList().forEach(row -> taken.add(row[0] + " " + row[1] + " " + row[2]));
        }
        List<Problem> problems = new ArrayList<>();
        List<Wanted> wanted = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            Optional<Wanted> read = read(rows.get(i), cases, today, problems);
            if (read.isPresent() && !taken.add(read.get().file().id() + " " + read.get().instrument().key() + " " + read.get().on())) {
                problems.add(new Problem(rows.get(i).number(), "scored_on", "This instrument has a score on " + Dates.shown(read.get().on()) + " already, here or further up."));
            }
            read.ifPresent(wanted::add);
            checked.accept(i + 1);
        }
        return new Scores(wanted, problems);
    }

    private Optional<Wanted> read(Row row, Map<String, List<CaseFile>> cases, LocalDate today, List<Problem> problems) {
        int before = problems.size();
        CaseFile file = caseOf(row, cases, problems);
        Instrument instrument = instruments.find(row.cell("instrument")).orElse(null);
        if (instrument == null) {
            problems.add(new Problem(row.number(), "instrument", "There is no instrument \u201c" + shortened(row.cell("instrument")) + "\u201d."));
        } else if (!row.cell("version").isEmpty() && !row.cell("version").equals(instrument.version())) {
            problems.add(new Problem(row.number(), "version", "The version in use here is \u201c" + instrument.version() + "\u201d. Scores of two versions never make one series."));
        }
        LocalDate on = day(row, file, today, problems);
        List<Integer> answers = answers(row, instrument, problems);
        if (problems.size() > before) {
            return Optional.empty();
        }
        try {
            agree(row, instrument.score(answers), problems);
        } catch (InvalidAnswer e) {
            problems.add(new Problem(row.number(), "answers", e.getMessage()));
        }
        return problems.size() > before ? Optional.empty() : Optional.of(new Wanted(file, instrument, on, answers));
    }

    private static CaseFile caseOf(Row row, Map<String, List<CaseFile>> cases, List<Problem> problems) {
        List<CaseFile> known = cases.getOrDefault(row.cell("file_number"), List.of());
        String number = row.cell("case");
        List<CaseFile> meant = number.isEmpty() ? known : known.stream().filter(file -> String.valueOf(file.id()).equals(number)).toList();
        if (known.isEmpty()) {
            problems.add(new Problem(row.number(), "file_number", "No patient with a case has the file number \u201c" + shortened(row.cell("file_number")) + "\u201d."));
        } else if (meant.isEmpty()) {
            problems.add(new Problem(row.number(), "case", "This patient has no case \u201c" + shortened(number) + "\u201d."));
        } else if (meant.size() > 1) {
            problems.add(new Problem(row.number(), "case", "This patient has " + meant.size() + " cases: say which, "
                    + String.join(" or ", meant.stream().map(file -> String.valueOf(file.id())).toList()) + "."));
        }
        return meant.size() == 1 ? meant.get(0) : null;
    }

    private static LocalDate day(Row row, CaseFile file, LocalDate today, List<Problem> problems) {
        try {
            LocalDate on = Dates.parse(row.cell("scored_on"));
            if (on.isAfter(today) || file != null && on.isBefore(file.openedOn())) {
                problems.add(new Problem(row.number(), "scored_on", "The day must lie between the opening of the case and today. You entered " + Dates.shown(on) + "."));
            }
            return on;
        } catch (DateTimeException e) {
            problems.add(new Problem(row.number(), "scored_on", "This must be a date, for example 2030-03-04. You entered \u201c" + shortened(row.cell("scored_on")) + "\u201d."));
            return null;
        }
    }

    private static List<Integer> answers(Row row, Instrument instrument, List<Problem> problems) {
        String written = row.cell("answers");
        if (!written.matches("(_|-?\\d{1,4})( +(_|-?\\d{1,4}))*")) {
            problems.add(new Problem(row.number(), "answers", "Whole numbers separated by blanks, _ for an item without an answer. You entered \u201c" + shortened(written) + "\u201d."));
            return List.of();
        }
        List<Integer> answers = Arrays.stream(written.split(" +")).map(one -> one.equals("_") ? null : Integer.valueOf(one)).collect(Collectors.toList());
        if (instrument != null && answers.size() != instrument.items().size()) {
            problems.add(new Problem(row.number(), "answers", instrument.name() + " has " + instrument.items().size() + " items, but there are " + answers.size() + " answers."));
        }
        if (answers.stream().allMatch(Objects::isNull)) {
            problems.add(new Problem(row.number(), "answers", "No item has an answer."));
        }
        return answers;
    }

    private static void agree(Row row, Scored scored, List<Problem> problems) {
        String given = row.cell("value");
        if (given.isEmpty()) {
            return;
        }
        boolean number = given.matches("-?\\d{1,6}([.,]\\d{1,9})?");
        if (!number || scored.value().isEmpty() || Math.abs(Double.parseDouble(given.replace(',', '.')) - scored.value().getAsDouble()) > tolerance(given)) {
            problems.add(new Problem(row.number(), "value", "The answers give " + (scored.value().isEmpty() ? "no score" : shown(scored.value().getAsDouble()))
                    + ", but the file says \u201c" + shortened(given) + "\u201d. Leave the value out, or mend the answers."));
        }
    }

    /** A value in the file may be rounded; it must agree to the last decimal it shows. */
    private static double tolerance(String given) {
        int decimals = given.contains(".") || given.contains(",") ? given.length() - Math.max(given.indexOf('.'), given.indexOf(',')) - 1 : 0;
        return Math.max(AGREE, 0.5 * Math.pow(10, -decimals)) + 1e-9;
    }

    static String shown(double value) {
        return BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }

    private static String shortened(String text) {
        return text.length() > 40 ? text.substring(0, 40) + "\u2026" : text;
    }

    private final class Scores implements Checked {

        private final List<Wanted> wanted;
        private final List<Problem> problems;

        private Scores(List<Wanted> wanted, List<Problem> problems) {
            this.wanted = wanted;
            this.problems = problems;
        }

        @Override
        public List<Problem> problems() {
            return problems;
        }

        @Override
        public List<LikelyDouble> doubles() {
            return List.of();
        }

        @Override
        public int store(boolean withDoubles, IntConsumer stored) {
            Set<Long> patients = new HashSet<>();
            for (int i = 0; i < wanted.size(); i++) {
                Wanted one = wanted.get(i);
                Score score = new Score(db.getReference(CaseFile.class, one.file().id()), one.instrument(), one.on());
                score.record(one.instrument(), one.answers(), account.displayName(), Instant.now(clock));
                db.persist(score);
                if (patients.add(one.file().id())) {
                    audit.record("took in scores from a file", one.file().patient().id(), one.file().id(), null);
                }
                if ((i + 1) % FLUSH_EVERY == 0) {
                    db.flush();
                    stored.accept(i + 1);
                }
            }
            return wanted.size();
        }
    }
}
