package org.steadwork.casefile;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.steadwork.body.BodyChart;
import org.steadwork.body.BodyRegion;
import org.steadwork.web.ReadOnce;

/** The symptom reports of the cases; every method here is one query and brings the zones along. */
@ApplicationScoped
public class SymptomReports implements PanacheRepository<SymptomReport> {

    private static final String WHOLE = "select distinct r from SymptomReport r left join fetch r.regions left join fetch r.visit"
            + " where r.caseFile.id = ?1";

    @Inject
    BodyChart chart;

    /** All reports of a case, the latest first. */
    @ReadOnce
    public List<SymptomReport> of(long caseId) {
        return list(WHOLE + " order by r.reportedOn desc", caseId);
    }

    /** All reports of the open cases of a scope, the latest first. */
    public List<SymptomReport> ofOpenCases(CaseScope scope) {
        return scope.bind(getEntityManager().createQuery("select distinct r from SymptomReport r left join fetch r.regions left join fetch r.visit join fetch r.caseFile c"
                + " where " + scope.open("c", "r.caseFile") + " order by r.reportedOn desc", SymptomReport.class)).getResultList();
    }

    /** The latest report of a case. */
    public Optional<SymptomReport> latest(long caseId) {
        return list(WHOLE + " and r.reportedOn = (select max(o.reportedOn) from SymptomReport o where o.caseFile.id = ?1)", caseId)
                .stream().findFirst();
    }

    /** The first report of a case, against which change is told. */
    public Optional<SymptomReport> baseline(long caseId) {
        return list(WHOLE + " and r.reportedOn = (select min(o.reportedOn) from SymptomReport o where o.caseFile.id = ?1)", caseId)
                .stream().findFirst();
    }

    /** The regions named in any report of a case: what once hurt may still have to be asked about. */
    public Set<BodyRegion> regionsReported(long caseId) {
        return chart.regionsOf(getEntityManager()
                .createQuery("select distinct s.zone from RegionSymptom s where s.report.caseFile.id = ?1", String.class)
                .setParameter(1, caseId).getResultList());
    }

    /** The regions named in a report of a case up to a day. */
    public Set<BodyRegion> regionsReported(long caseId, LocalDate until) {
        return chart.regionsOf(getEntityManager()
                .createQuery("select distinct s.zone from RegionSymptom s where s.report.caseFile.id = ?1 and s.report.reportedOn <= ?2", String.class)
                .setParameter(1, caseId).setParameter(2, until).getResultList());
    }

    /** All reports of a case, the latest first, once nobody else is changing one; later callers wait for this transaction. */
    List<SymptomReport> ofForChange(long caseId) {
        // the case is locked, not a report, so that two first reports of a day cannot pass each other
        getEntityManager().createNativeQuery("select id from case_file where id = ?1 for update").setParameter(1, caseId)
                .getSingleResult();
        return of(caseId);
    }
}
