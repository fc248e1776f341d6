package org.steadwork.people;

import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.Date;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Types;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntConsumer;
import org.hibernate.Session;
import org.hibernate.engine.spi.SharedSessionContractImplementor;
import org.hibernate.envers.AuditReaderFactory;
import org.hibernate.generator.BeforeExecutionGenerator;
import org.hibernate.generator.EventType;
import org.steadwork.account.ClinicRevision;

/**
 * Writes many patients by JDBC in batches, with the words that find them and the history that Envers would write: as entities they would
 * take several times as long and hold all of them in memory. Its columns are those of {@link Patient}; a test holds the two together.
 */
final class PatientBatch {

    private static final int BATCH = 1000;
    private static final short ADDED = 0;
    private static final String COLUMNS = "file_number, given_name, family_name, search_name, birth_date, sex, handedness, job_title, employer_id, site_id, department,"
            + " hours_a_week, doctor_id, phone, email, address, registered_on";
    private static final String PLACES = ", ?".repeat(17);

    private final EntityManager db;
    private final LocalDate registeredOn;
    private final Map<String, Employer> employers = new HashMap<>();
    private final Map<String, Site> sites = new HashMap<>();
    private final Map<String, Correspondent> doctors = new HashMap<>();

    PatientBatch(EntityManager db, LocalDate registeredOn) {
        this.db = db;
        this.registeredOn = registeredOn;
    }

    /** @param fileNumbers one for each */
    void store(List<PatientForm> forms, List<String> fileNumbers, IntConsumer stored) {
        places(forms);
        long revision = AuditReaderFactory.get(db).getCurrentRevision(ClinicRevision.class, true).id();
        db.flush();
        Session session = db.unwrap(Session.class);
        SharedSessionContractImplementor internal = db.unwrap(SharedSessionContractImplementor.class);
        BeforeExecutionGenerator ids = (BeforeExecutionGenerator) internal.getFactory().getMappingMetamodel().getEntityDescriptor(Patient.class).getGenerator();
        session.doWork(connection -> {
            for (int from = 0; from < forms.size(); from += BATCH) {
                int to = Math.min(forms.size(), from + BATCH);
                List<Row> rows = new ArrayList<>();
                for (int i = from; i < to; i++) {
                    rows.add(new Row((Long) ids.generate(internal, null, null, EventType.INSERT), fileNumbers.get(i), forms.get(i)));
                }
                write(connection, rows, revision);
                stored.accept(to);
            }
        });
    }

    private record Row(long id, String fileNumber, PatientForm form) {

        String searchName() {
            return SearchKey.of(form.givenName() + " " + form.familyName());
        }
    }

    private void write(Connection connection, List<Row> rows, long revision) throws SQLException {
        try (PreparedStatement patient = connection.prepareStatement("insert into patient (id, version, " + COLUMNS + ") values (?, 0" + PLACES + ")");
                PreparedStatement word = connection.prepareStatement("insert into patient_word (patient_id, beginning, word) values (?, ?, ?)");
                PreparedStatement history = connection.prepareStatement("insert into patient_history (id, revision, revision_kind, " + COLUMNS + ") values (?, ?, ?" + PLACES + ")")) {
            for (Row row : rows) {
                patient.setLong(1, row.id());
                fill(patient, 2, row);
                patient.addBatch();
                history.setLong(1, row.id());
                history.setLong(2, revision);
                history.setShort(3, ADDED);
                fill(history, 4, row);
                history.addBatch();
                for (NameWord one : NameWord.in(row.searchName())) {
                    word.setLong(1, row.id());
                    word.setString(2, one.beginning());
                    word.setString(3, one.word());
                    word.addBatch();
                }
            }
            patient.executeBatch();
            word.executeBatch();
            history.executeBatch();
        }
    }

    private void fill(PreparedStatement into, int first, Row row) throws SQLException {
        PatientForm form = row.form();
        int at = first;
        for (String text : new String[] {row.fileNumber(), form.givenName(), form.familyName(), row.searchName()}) {
            into.setString(at++, text);
        }
        into.setDate(at++, Date.valueOf(form.birthDate()));
        into.setString(at++, form.sex().name());
        into.setString(at++, form.handedness().name());
        into.setString(at++, form.jobTitle());
        number(into, at++, form.employer() == null ? null : employers.get(SearchKey.of(form.employer())).id());
        number(into, at++, form.site() == null ? null : sites.get(siteKey(form)).id());
        into.setString(at++, form.department());
        BigDecimal hours = form.hoursAWeek();
        into.setBigDecimal(at++, hours);
        number(into, at++, form.doctor() == null ? null : doctors.get(SearchKey.of(form.doctor())).id());
        for (String text : new String[] {form.phone(), form.email(), form.address()}) {
            into.setString(at++, text);
        }
        into.setDate(at, Date.valueOf(registeredOn));
    }

    private static void number(PreparedStatement into, int at, Long value) throws SQLException {
        if (value == null) {
            into.setNull(at, Types.BIGINT);
        } else {
            into.setLong(at, value);
        }
    }

    /** Finds every employer, site and doctor that is named, in three queries, and makes those that are new. */
    private void places(List<PatientForm> forms) {
        db.createQuery("from Employer order by id", Employer.class).getResultStream().forEach(one -> employers.putIfAbsent(SearchKey.of(one.name()), one));
        db.createQuery("from Site order by id", Site.class).getResultStream().forEach(one -> sites.putIfAbsent(siteKey(one.employer().id(), one.name()), one));
        db.createQuery("from Correspondent where kind = ?1 order by id", Correspondent.class).setParameter(1, Correspondent.Kind.DOCTOR).getResultStream()
                .forEach(one -> doctors.putIfAbsent(SearchKey.of(one.name()), one));
        for (PatientForm form : forms) {
            if (form.employer() != null) {
                Employer employer = employers.computeIfAbsent(SearchKey.of(form.employer()), key -> keep(new Employer(form.employer())));
                if (form.site() != null) {
                    sites.computeIfAbsent(siteKey(employer.id(), form.site()), key -> keep(new Site(employer, form.site())));
                }
            }
            if (form.doctor() != null) {
                doctors.computeIfAbsent(SearchKey.of(form.doctor()), key -> keep(new Correspondent(Correspondent.Kind.DOCTOR, form.doctor())));
            }
        }
    }

    private String siteKey(PatientForm form) {
        return siteKey(employers.get(SearchKey.of(form.employer())).id(), form.site());
    }

    private static String siteKey(long employerId, String name) {
        return employerId + " " + name.toLowerCase(Locale.ROOT);
    }

    private <T> T keep(T made) {
        db.persist(made);
        return made;
    }
}
