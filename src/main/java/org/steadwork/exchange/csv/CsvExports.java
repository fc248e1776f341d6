package org.steadwork.exchange.csv;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.steadwork.outcome.Score;

/** Writes the lists of the clinic as CSV, each in one or two queries. */
@ApplicationScoped
class CsvExports {

    @Inject
    EntityManager db;

    byte[] patients(boolean mark) {
        List<List<?>> rows = new ArrayList<>();
        db.createQuery("select p.fileNumber, p.givenName, p.familyName, p.birthDate, p.sex, p.handedness, p.jobTitle, e.name, s.name, p.department, p.hoursAWeek, d.name,"
                + " p.phone, p.email, p.address from Patient p left join p.employer e left join p.site s left join p.doctor d order by p.id", Object[].class)
                .getResultStream().forEach(row -> rows.add(Arrays.stream(row).map(CsvExports::cell).collect(Collectors.toList())));
        return CsvText.write(names(PatientImport.COLUMNS), rows, mark);
    }

    private static Object cell(Object value) {
        return value instanceof Enum<?> constant ? constant.name().toLowerCase(Locale.ROOT)
                : value instanceof BigDecimal number ? number.stripTrailingZeros().toPlainString() : value;
    }

    /** Sites and contacts that are in use, one row for each; an employer without either has one row. */
    byte[] employers(boolean mark) {
        List<List<?>> rows = new ArrayList<>();
        db.createQuery("select e.name, e.contactName, e.address, e.phone, e.email, s.name, s.address, cast(null as string), cast(null as string), cast(null as string),"
                + " cast(null as string) from Employer e left join Site s on s.employer = e and s.retiredOn is null where e.retiredOn is null order by e.name, e.id, s.id",
                Object[].class).getResultStream().forEach(row -> rows.add(Arrays.asList(row)));
        db.createQuery("select e.name, e.contactName, e.address, e.phone, e.email, cast(null as string), cast(null as string), c.name, c.role, c.phone, c.email"
                + " from EmployerContact c join c.employer e where e.retiredOn is null and c.retiredOn is null order by e.name, e.id, c.id", Object[].class)
                .getResultStream().forEach(row -> rows.add(Arrays.asList(row)));
        return CsvText.write(names(EmployerImport.COLUMNS), rows, mark);
    }

    byte[] scores(boolean mark) {
        List<List<?>> rows = new ArrayList<>();
        db.createQuery("from Score s join fetch s.caseFile c join fetch c.patient order by s.id", Score.class).getResultStream().forEach(score -> rows.add(row(score)));
        return CsvText.write(names(ScoreImport.COLUMNS), rows, mark);
    }

    private static List<?> row(Score score) {
        return Arrays.asList(score.caseFile().patient().fileNumber(), score.caseFile().id(), score.instrument(), score.instrumentVersion(), score.scoredOn(),
                score.answers().stream().map(answer -> answer == null ? "_" : answer.toString()).collect(Collectors.joining(" ")),
                score.value() == null ? null : ScoreImport.shown(score.value()), score.unit(), score.estimated() ? "yes" : "no");
    }

    private static List<String> names(List<ImportKind.Column> columns) {
        return columns.stream().map(ImportKind.Column::name).toList();
    }

    long countPatients() {
        return count("Patient");
    }

    long countEmployers() {
        return count("Employer");
    }

    long countScores() {
        return count("Score");
    }

    private long count(String entity) {
        return db.createQuery("select count(*) from " + entity, Long.class).getSingleResult();
    }
}
