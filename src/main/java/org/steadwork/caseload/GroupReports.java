package org.steadwork.caseload;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steadwork.people.Employer;

/** The group reports of the employers, drafts and signed ones. */
@ApplicationScoped
class GroupReports {

    @Inject
    EntityManager db;

    /** What the list shows of a report; the file stays where it is. {@code signedAt} null for a draft. */
    record Listed(String period, String reference, Instant signedAt, String signedBy, Integer pages) {
    }

    Optional<GroupReport> of(Employer employer, ReportPeriod period) {
        return db.createQuery("from GroupReport where employer = ?1 and period = ?2", GroupReport.class).setParameter(1, employer)
                .setParameter(2, period.key()).getResultStream().findFirst();
    }

    /** Returns the report once nobody else is signing or writing it; later callers wait for this transaction. */
    Optional<GroupReport> ofForChange(Employer employer, ReportPeriod period) {
        db.createNativeQuery("select id from group_report where employer_id = ?1 and period = ?2 for update").setParameter(1, employer.id())
                .setParameter(2, period.key()).getResultList();
        return of(employer, period);
    }

    Optional<SignedGroupReport> signed(GroupReport report) {
        return db.createQuery("from SignedGroupReport s join fetch s.signedBy where s.reportId = ?1", SignedGroupReport.class)
                .setParameter(1, report.id()).getResultStream().findFirst();
    }

    /** Returns the reports of an employer by period. */
    Map<String, Listed> listed(Employer employer) {
        Map<String, Listed> listed = new HashMap<>();
        db.createQuery("select new org.steadwork.caseload.GroupReports$Listed(r.period, s.reference, s.signedAt, a.displayName, s.pages) from GroupReport r"
                + " left join SignedGroupReport s on s.reportId = r.id left join s.signedBy a where r.employer = ?1", Listed.class)
                .setParameter(1, employer).getResultList().forEach(one -> listed.put(one.period(), one));
        return listed;
    }

    /** Returns site and department of an employer's patients by the number of the patient; either may be null. */
    Map<Long, String[]> places(long employerId) {
        Map<Long, String[]> places = new HashMap<>();
        db.createQuery("select p.id, s.name, p.department from Patient p left join p.site s where p.employer.id = ?1", Object[].class)
                .setParameter(1, employerId).getResultList().forEach(row -> places.put((Long) row[0], new String[] {(String) row[1], (String) row[2]}));
        return places;
    }

    /** Returns the family and given names of an employer's patients. */
    List<Object[]> names(long employerId) {
        return db.createQuery("select p.givenName, p.familyName from Patient p where p.employer.id = ?1", Object[].class).setParameter(1, employerId).getResultList();
    }

    void keep(Object record) {
        db.persist(record);
        db.flush();
    }

    void flush() {
        db.flush();
    }

    void forget() {
        db.clear();
    }
}
