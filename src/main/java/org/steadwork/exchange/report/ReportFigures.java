package org.steadwork.exchange.report;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.steadwork.caseload.statistics.CountTable;
import org.steadwork.caseload.statistics.SmallNumbers;
import org.steadwork.caseload.statistics.WithheldTable;

/** Counts of cases opened and closed by month; what is small is withheld, and with it as much as keeps it from being worked out. */
@ApplicationScoped
class ReportFigures {

    private static final SmallNumbers RULE = new SmallNumbers(SmallNumbers.USUAL_FEWEST, SmallNumbers.Columns.PLACES);

    @Inject
    EntityManager db;

    Map<String, Object> document() {
        TreeMap<YearMonth, int[]> months = new TreeMap<>();
        db.createQuery("select c.openedOn, c.closedOn from CaseFile c", Object[].class).getResultStream().forEach(row -> {
            months.computeIfAbsent(YearMonth.from((LocalDate) row[0]), month -> new int[2])[0]++;
            if (row[1] != null) {
                months.computeIfAbsent(YearMonth.from((LocalDate) row[1]), month -> new int[2])[1]++;
            }
        });
        Map<String, Object> document = new LinkedHashMap<>();
        document.put("fewest_shown", SmallNumbers.USUAL_FEWEST);
        document.put("months", rows(months));
        return document;
    }

    private static List<Map<String, Object>> rows(TreeMap<YearMonth, int[]> months) {
        List<Map<String, Object>> rows = new ArrayList<>();
        if (months.isEmpty()) {
            return rows;
        }
        WithheldTable table = WithheldTable.of(CountTable.of(months.values().toArray(new int[0][])), RULE);
        int at = 0;
        for (YearMonth month : months.keySet()) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("month", month.toString());
            row.put("opened", number(table.shown(at, 0)));
            row.put("closed", number(table.shown(at, 1)));
            rows.add(row);
            at++;
        }
        return rows;
    }

    private static Integer number(OptionalInt shown) {
        return shown.isPresent() ? shown.getAsInt() : null;
    }
}
