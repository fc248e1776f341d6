package org.steadwork.caseload;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import org.hibernate.Session;
import org.steadwork.body.BodyChart;
import org.steadwork.outcome.Instruments;

/**
 * The cases summed up. A row is summed up anew in the transaction that changes its case ({@link OutcomeKeeping}), under a lock on the
 * row, so that of two changes at once the later one sees the earlier; rows that are missing or made by another rule at the next start.
 */
@ApplicationScoped
class CaseOutcomes {

    private static final int CASES_AT_ONCE = 500;

    @Inject
    EntityManager db;

    @Inject
    BodyChart chart;

    @Inject
    Instruments instruments;

    @Inject
    Definitions definitions;

    private SummaryRule rule;

    SummaryRule rule() {
        if (rule == null) {
            rule = new SummaryRule(chart, instruments.all(), definitions.sustainedDays());
        }
        return rule;
    }

    /** Sums up cases anew over the connection of a running transaction; in the order of their numbers, so that two never wait for each other. */
    void refresh(Connection connection, Collection<Long> caseIds) throws SQLException {
        TreeSet<Long> ordered = new TreeSet<>(caseIds);
        OutcomeRows.begin(connection, ordered);
        for (long id : ordered) {
            OutcomeRows.lock(connection, id);
            OutcomeRows.write(connection, summedUp(connection, id, id), rule().number());
        }
    }

    private List<CaseOutcome> summedUp(Connection connection, long from, long to) throws SQLException {
        return FactReading.of(connection, from, to).stream().map(facts -> CaseSummary.of(facts, rule())).toList();
    }

    /** Returns what a row would be if it were summed up now, without storing it. */
    @Transactional
    List<CaseOutcome> recomputed(long from, long to) {
        return db.unwrap(Session.class).doReturningWork(connection -> summedUp(connection, from, to));
    }

    /** Returns the rows as they are stored. */
    @Transactional
    List<CaseOutcome> stored(long from, long to) {
        return read("select " + OutcomeRows.COLUMNS + " from case_outcome where case_file_id between ? and ? order by case_file_id", List.of(from, to));
    }

    List<CaseOutcome> read(String sql, List<?> values) {
        return db.unwrap(Session.class).doReturningWork(connection -> OutcomeRows.read(connection, sql, values));
    }

    /** True when every case has its row by the present rule; told from counts, without reading the rows. */
    @Transactional
    boolean complete() {
        return db.unwrap(Session.class).doReturningWork(connection -> {
            try (PreparedStatement statement = connection.prepareStatement("select (select count(*) from case_file) - (select count(*) from case_outcome),"
                    + " (select count(*) from case_outcome where rule < ?), (select count(*) from case_outcome where rule > ?)")) {
                statement.setInt(1, rule().number());
                statement.setInt(2, rule().number());
                try (ResultSet row = statement.executeQuery()) {
                    row.next();
                    return row.getLong(1) == 0 && row.getLong(2) == 0 && row.getLong(3) == 0;
                }
            }
        });
    }

    /** Returns the numbers of at most {@link #CASES_AT_ONCE} cases beyond one that have no row, or one by another rule; all of them when asked. */
    @Transactional
    List<Long> outdated(long beyond, boolean all) {
        return db.unwrap(Session.class).doReturningWork(connection -> {
            String which = all ? "" : " and not exists (select 1 from case_outcome o where o.case_file_id = c.id and o.rule = " + rule().number() + ")";
            List<Long> ids = new ArrayList<>();
            try (PreparedStatement statement = connection.prepareStatement("select c.id from case_file c where c.id > ?" + which
                    + " order by c.id limit " + CASES_AT_ONCE)) {
                statement.setLong(1, beyond);
                try (ResultSet row = statement.executeQuery()) {
                    while (row.next()) {
                        ids.add(row.getLong(1));
                    }
                }
            }
            return ids;
        });
    }

    /** Sums up the cases numbered as given, which follow one another, in one transaction. */
    @Transactional
    void sumUp(List<Long> caseIds) {
        db.unwrap(Session.class).doWork(connection -> {
            OutcomeRows.begin(connection, caseIds);
            for (long id : caseIds) {
                OutcomeRows.lock(connection, id);
            }
            long first = caseIds.get(0);
            long last = caseIds.get(caseIds.size() - 1);
            TreeSet<Long> wanted = new TreeSet<>(caseIds);
            OutcomeRows.write(connection, summedUp(connection, first, last).stream().filter(row -> wanted.contains(row.caseId())).toList(), rule().number());
        });
    }
}
