package org.steadwork.exchange.csv;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntConsumer;
import org.steadwork.people.LikelyDoubles;
import org.steadwork.people.PatientIntake;
import org.steadwork.web.Form;

/** Patients with their work place and doctor. File numbers are given anew here; one in the file says who was known in the other program. */
@ApplicationScoped
class PatientImport implements ImportKind {

    /** The field of the form behind each column. */
    private static final Map<String, String> FIELDS = new LinkedHashMap<>();

    static final String FILE_NUMBER = "file_number";
    static final List<Column> COLUMNS = List.of(
            column(FILE_NUMBER, null, false, "File number of an export. Not taken over: the clinic gives its own. A row for somebody who is here already is pointed out.", ""),
            column("given_name", "givenName", true, "Given name, at most 80 characters", "Ada"),
            column("family_name", "familyName", true, "Family name, at most 80 characters", "Quillfeather"),
            column("birth_date", "birthDate", true, "Date of birth: 1990-04-02, 2 Apr 1990, 2.4.1990 or 2/4/1990 (day first)", "1990-04-02"),
            column("sex", "sex", false, "female, male or not_recorded; empty is not_recorded", "female"),
            column("hand_preferred", "handedness", false, "right, left, both or not_recorded; empty is not_recorded", "right"),
            column("job", "jobTitle", false, "Job, at most 120 characters", "Planner"),
            column("employer", "employer", false, "Employer; a new name makes a new employer", "Quayside Works"),
            column("site", "site", false, "Site of the employer; a new name makes a new site", "North hall"),
            column("department", "department", false, "Department, at most 120 characters", "Planning"),
            column("hours_a_week", "hoursAWeek", false, "Usual weekly hours, 0 to 100, one decimal", "37.5"),
            column("doctor", "doctor", false, "The patient's doctor; a new name makes a new entry", "Dr D. Sample"),
            column("phone", "phone", false, "Telephone, at most 40 characters", "01632 960123"),
            column("email", "email", false, "E-mail address", "ada@example.org"),
            column("address", "address", false, "Address, at most 400 characters", "1 Example Row"));

    private static Column column(String name, String field, boolean required, String meaning, String example) {
        if (field != null) {
            FIELDS.put(name, field);
        }
        return new Column(name, required, meaning, example);
    }

    @Inject
    PatientIntake intake;

    @Override
    public String key() {
        return "patients";
    }

    @Override
    public String label() {
        return "Patients";
    }

    @Override
    public List<Column> columns() {
        return COLUMNS;
    }

    @Override
    public Checked check(List<Row> rows, LocalDate today, IntConsumer checked) {
        List<PatientIntake.Read> read = new ArrayList<>(rows.size());
        List<Problem> problems = new ArrayList<>();
        List<LikelyDouble> doubles = new ArrayList<>();
        LikelyDoubles known = intake.doubles();
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            Form form = Form.empty();
            FIELDS.forEach((column, field) -> form.with(field, row.cell(column)));
            PatientIntake.Read one = intake.read(form, today);
            one.problems().forEach(problem -> problems.add(new Problem(row.number(), columnOf(problem.field()), problem.message())));
            if (one.problems().isEmpty()) {
                Optional<String> where = known.find(one.name(), one.birthDate());
                where.ifPresent(there -> doubles.add(new LikelyDouble(row.number(), one.name(), there)));
                known.add(one.name(), one.birthDate(), "row " + row.number());
            }
            read.add(one);
            checked.accept(i + 1);
        }
        return new Patients(rows, read, problems, doubles, today);
    }

    private static String columnOf(String field) {
        return FIELDS.entrySet().stream().filter(entry -> entry.getValue().equals(field)).map(Map.Entry::getKey).findFirst().orElse(null);
    }

    private final class Patients implements Checked {

        private final List<Row> rows;
        private final List<PatientIntake.Read> read;
        private final List<Problem> problems;
        private final List<LikelyDouble> doubles;
        private final LocalDate today;

        private Patients(List<Row> rows, List<PatientIntake.Read> read, List<Problem> problems, List<LikelyDouble> doubles, LocalDate today) {
            this.rows = rows;
            this.read = read;
            this.problems = problems;
            this.doubles = doubles;
            this.today = today;
        }

        @Override
        public List<Problem> problems() {
            return problems;
        }

        @Override
        public List<LikelyDouble> doubles() {
            return doubles;
        }

        @Override
        public int store(boolean withDoubles, IntConsumer stored) {
            Set<Integer> leftOut = new HashSet<>();
            if (!withDoubles) {
                doubles.forEach(one -> leftOut.add(one.row()));
            }
            List<PatientIntake.Read> taken = new ArrayList<>();
            for (int i = 0; i < rows.size(); i++) {
                if (!leftOut.contains(rows.get(i).number())) {
                    taken.add(read.get(i));
                }
            }
            intake.store(taken, today, stored);
            return taken.size();
        }
    }
}
