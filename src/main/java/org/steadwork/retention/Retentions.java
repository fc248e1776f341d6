package org.steadwork.retention;

import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import jakarta.transaction.Transactional;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.drawing.TrendChart;
import org.steadwork.exchange.csv.WaitingFiles;
import org.steadwork.people.Patient;
import org.steadwork.people.Patients;

/** Who may be looked at for removal, what holds them, and the removal itself. Nothing is ever removed by the clock. */
@ApplicationScoped
class Retentions {

    static final int MOST_SHOWN = 100;
    private static final String NOT_BEFORE = """
            from Patient p where p.registeredOn < :cutoff and p.birthDate <= :born
            and not exists (select 1 from CaseFile c where c.patient = p and (c.closedOn is null or c.closedOn >= :cutoff))
            and not exists (select 1 from Visit v where v.caseFile.patient = p and v.visitedOn >= :cutoff)
            """;

    /** One person on the review list. */
    record Due(long id, String name, String fileNumber, LocalDate lastContact, long cases, long holds) {
    }

    @Inject
    WaitingFiles waitingFiles;

    @Inject
    Patients patients;

    @Inject
    EntityManager db;

    @Inject
    AgroalDataSource source;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    Clock clock;

    @ConfigProperty(name = "steadwork.retention.years")
    int years;

    @ConfigProperty(name = "steadwork.retention.not-before-age")
    int notBeforeAge;

    /** Returns at most {@value #MOST_SHOWN} people whose period is over, the longest gone first; two queries. */
    List<Due> due() {
        LocalDate today = LocalDate.now(clock);
        return db.createQuery("""
                select p.id as id, p.givenName as given, p.familyName as family, p.fileNumber as number, p.registeredOn as registered,
                (select max(c.closedOn) from CaseFile c where c.patient = p) as closed,
                (select max(v.visitedOn) from Visit v where v.caseFile.patient = p) as visited,
                (select count(c) from CaseFile c where c.patient = p) as cases,
                (select count(h) from LegalHold h where h.caseFile.patient = p and h.liftedAt is null) as holds
                """ + NOT_BEFORE + " order by p.registeredOn, p.id", Tuple.class)
                .setParameter("cutoff", today.minusYears(years)).setParameter("born", today.minusYears(notBeforeAge)).setMaxResults(MOST_SHOWN).getResultList()
                .stream().map(Retentions::due).toList();
    }

    private static Due due(Tuple row) {
        LocalDate last = Stream.of(row.get("registered"), row.get("closed"), row.get("visited")).filter(Objects::nonNull).map(LocalDate.class::cast)
                .max(LocalDate::compareTo).orElseThrow();
        return new Due(row.get("id", Long.class), row.get("given") + " " + row.get("family"), row.get("number", String.class), last,
                row.get("cases", Long.class), row.get("holds", Long.class));
    }

    boolean isDue(long patient) {
        LocalDate today = LocalDate.now(clock);
        return db.createQuery("select count(p) " + NOT_BEFORE + " and p.id = :id", Long.class).setParameter("cutoff", today.minusYears(years))
                .setParameter("born", today.minusYears(notBeforeAge)).setParameter("id", patient).getSingleResult() > 0;
    }

    List<LegalHold> holds(long patient) {
        return db.createQuery("from LegalHold h join fetch h.caseFile where h.caseFile.patient.id = ?1 order by h.id", LegalHold.class).setParameter(1, patient)
                .getResultList();
    }

    List<Removal> removals() {
        return db.createQuery("from Removal order by id desc", Removal.class).setMaxResults(MOST_SHOWN).getResultList();
    }

    void hold(CaseFile file, String reason) {
        db.persist(new LegalHold(file, reason, account.displayName(), Instant.now(clock)));
        audit.record("placed a hold", file.patient().id(), file.id(), null);
    }

    LegalHold find(long hold) {
        return db.find(LegalHold.class, hold);
    }

    void lift(LegalHold hold) {
        hold.lift(account.displayName(), Instant.now(clock));
        audit.record("lifted a hold", hold.caseFile().patient().id(), hold.caseFile().id(), null);
    }

    /** Returns what would go, by table. */
    @Transactional
    public Map<String, Integer> counts(long patient) {
        try (Connection connection = source.getConnection()) {
            return PersonRows.of(connection, patient).count();
        } catch (SQLException e) {
            throw new IllegalStateException("The rows of a person could not be counted", e);
        }
    }

    /**
     * Removes a person: every row and every earlier state of it, in one transaction. The audit trail keeps its entries, which name the patient by a
     * number only, and the counts of removed cases are added to. Files uploaded for import that still wait are forgotten, as they may name anybody,
     * and so are the charts and words of names this node keeps in memory.
     *
     * @throws IllegalStateException when a case is open or held
     */
    @Transactional
    public void remove(Patient patient, RemovalGround ground) {
        List<CaseFile> cases = db.createQuery("from CaseFile c where c.patient = ?1", CaseFile.class).setParameter(1, patient).getResultList();
        if (cases.stream().anyMatch(CaseFile::open) || holds(patient.id()).stream().anyMatch(LegalHold::inForce)) {
            throw new IllegalStateException("Patient " + patient.id() + " has an open or held case");
        }
        long id = patient.id();
        cases.forEach(this::tally);
        db.flush();
        db.clear();
        long removed;
        try (Connection connection = source.getConnection()) {
            removed = PersonRows.of(connection, id).remove();
        } catch (SQLException e) {
            throw new IllegalStateException("A person could not be removed", e);
        }
        waitingFiles.forgetAll();
        TrendChart.forgetAll();
        patients.forgetWords();
        db.persist(new Removal(id, Instant.now(clock), account.displayName(), ground, removed));
        audit.record("removed a person", id, null, ground.name());
    }

    private void tally(CaseFile file) {
        long visits = db.createQuery("select count(v) from Visit v where v.caseFile = ?1", Long.class).setParameter(1, file).getSingleResult();
        String ending = file.closeReason() == null ? "NOT_NOTED" : file.closeReason().name();
        int changed = db.createNativeQuery("update removed_case_tally set cases = cases + 1, visits = visits + ?1 where year_opened = ?2 and ending = ?3")
                .setParameter(1, visits).setParameter(2, file.openedOn().getYear()).setParameter(3, ending).executeUpdate();
        if (changed == 0) {
            db.createNativeQuery("insert into removed_case_tally (year_opened, ending, cases, visits) values (?1, ?2, 1, ?3)")
                    .setParameter(1, file.openedOn().getYear()).setParameter(2, ending).setParameter(3, visits).executeUpdate();
        }
    }

    LocalDate keptUntil(LocalDate lastContact, LocalDate born) {
        LocalDate byPeriod = lastContact.plusYears(years);
        LocalDate byAge = born.plusYears(notBeforeAge);
        return byPeriod.isAfter(byAge) ? byPeriod : byAge;
    }

    LocalDate today() {
        return LocalDate.ofInstant(Instant.now(clock), ZoneId.systemDefault());
    }
}
