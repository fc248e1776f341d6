package org.steadwork.exchange.csv;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import org.steadwork.people.EmployerIntake;
import org.steadwork.web.Form;

/** Employers with their sites and further contacts: one row for each site and contact, the employer repeated. What is there already stays as it is. */
@ApplicationScoped
class EmployerImport implements ImportKind {

    static final List<Column> COLUMNS = List.of(
            new Column("employer", true, "Name of the employer, at most 120 characters; rows of one name belong together", "Quayside Works"),
            new Column("letters_to", false, "Who receives letters, at most 120 characters", "Jo Quayle"),
            new Column("address", false, "Address for letters, at most 400 characters", "2 Example Quay"),
            new Column("phone", false, "Telephone, at most 40 characters", "01632 960124"),
            new Column("email", false, "E-mail address", "office@example.org"),
            new Column("site", false, "A site of the employer, at most 120 characters", "North hall"),
            new Column("site_address", false, "Address of the site; needs a site", "3 Example Quay"),
            new Column("contact", false, "A further contact, at most 120 characters", "Sam Field"),
            new Column("contact_role", false, "Role of the contact; needs a contact", "Supervisor"),
            new Column("contact_phone", false, "Telephone of the contact; needs a contact", "01632 960125"),
            new Column("contact_email", false, "E-mail of the contact; needs a contact", "sam@example.org"));

    @Inject
    EmployerIntake intake;

    @Override
    public String key() {
        return "employers";
    }

    @Override
    public String label() {
        return "Employers";
    }

    @Override
    public List<Column> columns() {
        return COLUMNS;
    }

    @Override
    public Checked check(List<Row> rows, LocalDate today, IntConsumer checked) {
        List<EmployerIntake.Read> read = new ArrayList<>(rows.size());
        List<Problem> problems = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            Form form = Form.empty();
            COLUMNS.forEach(column -> form.with(column.name(), row.cell(column.name())));
            read.add(EmployerIntake.read(form));
            form.problems().forEach(problem -> problems.add(new Problem(row.number(), problem.field(), problem.message())));
            checked.accept(i + 1);
        }
        return new Checked() {
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
                return intake.store(read, stored);
            }
        };
    }
}
