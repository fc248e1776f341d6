package org.steadwork.exchange.report;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import org.steadwork.body.BodyChart;
import org.steadwork.body.BodyRegion;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;

/** Reads the rows of a page in four queries, whatever its size. */
@ApplicationScoped
class ReportRows {

    @Inject
    EntityManager db;

    @Inject
    BodyChart chart;

    long count() {
        return db.createQuery("select count(*) from CaseFile", Long.class).getSingleResult();
    }

    /** @param page from 1; {@code size} rows a page, in the order in which the cases were opened here */
    List<ReportRow> page(int page, int size, Pseudonyms pseudonyms) {
        List<CaseFile> files = db.createQuery("from CaseFile c join fetch c.patient order by c.id", CaseFile.class).setFirstResult((page - 1) * size).setMaxResults(size)
                .getResultList();
        if (files.isEmpty()) {
            return List.of();
        }
        List<Long> ids = files.stream().map(CaseFile::id).toList();
        Map<Long, TreeSet<String>> regions = new HashMap<>();
        rows("select distinct s.report.caseFile.id, s.zone from RegionSymptom s where s.report.caseFile.id in ?1", ids).forEach(row -> chart.regionsOf(List.of((String) row[1]))
                .stream().map(BodyRegion::key).forEach(key -> regions.computeIfAbsent((Long) row[0], id -> new TreeSet<>()).add(key)));
        Map<Long, Long> visits = new HashMap<>();
        rows("select v.caseFile.id, count(*) from Visit v where v.attendance = " + Attendance.class.getName() + ".ATTENDED and v.caseFile.id in ?1 group by v.caseFile.id", ids)
                .forEach(row -> visits.put((Long) row[0], (Long) row[1]));
        Map<Long, List<ReportRow.ReportScore>> scores = new HashMap<>();
        rows("select s.caseFile.id, s.instrument, s.instrumentVersion, s.scoredOn, s.value, s.unit, s.estimated from Score s where s.caseFile.id in ?1 order by s.scoredOn, s.id",
                ids).forEach(row -> scores.computeIfAbsent((Long) row[0], id -> new ArrayList<>()).add(new ReportRow.ReportScore((String) row[1], (String) row[2],
                        (LocalDate) row[3], (Double) row[4], (String) row[5], (Boolean) row[6])));
        return files.stream().map(file -> new ReportRow(pseudonyms.of("case", file.id()), pseudonyms.of("patient", file.patient().id()),
                ReportRow.ageBand(file.patient().ageOn(file.openedOn())), file.patient().sex().name().toLowerCase(Locale.ROOT),
                List.copyOf(regions.getOrDefault(file.id(), new TreeSet<>())), file.openedOn(), file.closedOn(),
                file.closeReason() == null ? null : file.closeReason().name().toLowerCase(Locale.ROOT), visits.getOrDefault(file.id(), 0L).intValue(),
                scores.getOrDefault(file.id(), List.of()))).toList();
    }

    private List<Object[]> rows(String query, List<Long> ids) {
        return db.createQuery(query, Object[].class).setParameter(1, ids).getResultList();
    }
}
