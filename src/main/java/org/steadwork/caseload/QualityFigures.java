package org.steadwork.caseload;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.steadwork.caseload.FigureTable.Column;
import org.steadwork.caseload.FigureTable.Row;
import org.steadwork.caseload.statistics.Proportion;
import org.steadwork.casefile.WorkStatusCode;
import org.steadwork.outcome.Instruments;
import org.steadwork.outcome.scoring.ChangeVerdict;

/** The quality indicators that the records allow, each with what is not known beside it; no rate on fewer than ten. */
final class QualityFigures {

    private final List<CaseOutcome> rows;
    private final List<CaseOutcome> closed;
    private final QualityRecords.Found records;
    private final Definitions definitions;
    private final ChangeJudge judge;
    private final LocalDate today;
    private final List<Row> table = new ArrayList<>();

    QualityFigures(List<CaseOutcome> rows, QualityRecords.Found records, Definitions definitions, Instruments instruments, LocalDate today) {
        this.rows = rows;
        this.closed = rows.stream().filter(row -> row.closedOn() != null).toList();
        this.records = records;
        this.definitions = definitions;
        this.judge = new ChangeJudge(instruments);
        this.today = today;
    }

    Section section() {
        screens();
        flags();
        times();
        changes();
        work();
        visits();
        letters();
        inPlace();
        recurrence();
        number("unsigned", records.unsigned());
        return new Section("quality", "Quality indicators", "Not known stands beside every rate.", List.of(definitions.notKept()), null, null,
                new FigureTable("quality", "Quality indicators", List.of(Column.words("Indicator"), Column.number("Met"), Column.number("Of"),
                        Column.number("Not known"), Column.number("Rate or median"), Column.number("95 % interval"), Column.words("Target")), table), List.of());
    }

    private void screens() {
        List<CaseOutcome> seen = rows.stream().filter(row -> row.firstVisitOn() != null).toList();
        share("screen_complete", (int) seen.stream().filter(row -> row.screen() == CaseOutcome.Screening.COMPLETE).count(), seen.size(), rows.size() - seen.size());
    }

    private void flags() {
        List<QualityRecords.UrgentFlag> now = records.flags().stream().filter(flag -> !flag.urgency().equals("URGENT_2_WEEKS")).toList();
        share("same_day_contact", (int) now.stream().filter(flag -> flag.raisedOn().equals(flag.calledOn())).count(), now.size(), 0);
        int met = 0;
        int known = 0;
        for (QualityRecords.UrgentFlag flag : records.flags()) {
            LocalDate due = flag.raisedOn().plusDays(definitions.loopDays());
            boolean inTime = flag.seenOn() != null && !flag.seenOn().isAfter(due);
            met += inTime ? 1 : 0;
            known += inTime || due.isBefore(today) ? 1 : 0;
        }
        share("loop_closed", met, known, records.flags().size() - known);
    }

    private void times() {
        List<CaseOutcome> known = rows.stream().filter(TimeFigures::waitKnown).toList();
        median("first_wait", known.stream().mapToInt(row -> WorkingDays.between(row.referredOn(), row.firstVisitOn())), rows.size() - known.size());
    }

    private void changes() {
        share("score_pair", (int) closed.stream().filter(row -> row.painPair() || row.measurePair()).count(), closed.size(), 0);
        int judged = 0;
        int important = 0;
        for (CaseOutcome row : closed) {
            ChangeVerdict.Kind kind = ChangeJudge.either(judge.measure(row), judge.pain(row));
            judged += kind != null && !ChangeJudge.open(kind) ? 1 : 0;
            important += kind != null && OutcomeFigures.important(kind) ? 1 : 0;
        }
        share("improvement", important, judged, closed.size() - judged);
    }

    private void work() {
        int known = 0;
        int met = 0;
        for (CaseOutcome row : rows) {
            if (row.workFirst() != null && row.workLast() != null) {
                known++;
                met += row.workLast() == WorkStatusCode.FULL || capacity(row.workLast()) > capacity(row.workFirst()) ? 1 : 0;
            }
        }
        share("work_improved", met, known, rows.size() - known);
        List<CaseOutcome> counted = closed.stream().filter(row -> row.daysOff() != null).toList();
        median("days_lost", counted.stream().mapToInt(CaseOutcome::daysOff), closed.size() - counted.size());
    }

    private static int capacity(WorkStatusCode code) {
        return switch (code) {
            case FULL -> 3;
            case MODIFIED -> 2;
            case REDUCED -> 1;
            default -> 0;
        };
    }

    private void visits() {
        median("visits_episode", closed.stream().mapToInt(CaseOutcome::attended), 0);
        int missed = rows.stream().mapToInt(CaseOutcome::missed).sum();
        share("missed", missed, missed + rows.stream().mapToInt(CaseOutcome::attended).sum(), 0);
    }

    private void letters() {
        List<QualityRecords.SentLetter> reports = records.letters().stream().filter(QualityRecords.SentLetter::report).toList();
        List<QualityRecords.SentLetter> timed = reports.stream().filter(letter -> letter.assessedOn() != null).toList();
        median("report_time", timed.stream().mapToInt(letter -> WorkingDays.between(letter.assessedOn(), letter.sentOn())), reports.size() - timed.size());
        share("seen_first", (int) records.letters().stream().filter(letter -> letter.shownOn() != null && !letter.shownOn().isAfter(letter.sentOn())).count(),
                records.letters().size(), 0);
        number("overrides", records.overrides());
    }

    private void inPlace() {
        int known = 0;
        int met = 0;
        for (QualityRecords.Agreed agreed : records.agreed()) {
            LocalDate due = agreed.agreedOn().plusDays(definitions.inPlaceDays());
            boolean done = agreed.doneOn() != null && !agreed.doneOn().isAfter(due);
            met += done ? 1 : 0;
            known += done || due.isBefore(today) ? 1 : 0;
        }
        share("in_place", met, known, records.agreed().size() - known);
    }

    private void recurrence() {
        Map<Long, List<CaseOutcome>> byPatient = new HashMap<>();
        rows.forEach(row -> byPatient.computeIfAbsent(row.patientId(), patient -> new ArrayList<>(1)).add(row));
        int known = 0;
        int again = 0;
        for (CaseOutcome row : closed.stream().filter(row -> row.region() != null).toList()) {
            boolean back = byPatient.get(row.patientId()).stream().anyMatch(later -> later.region() == row.region() && later.openedOn().isAfter(row.closedOn())
                    && ChronoUnit.DAYS.between(row.closedOn(), later.openedOn()) <= definitions.recurrenceDays());
            again += back ? 1 : 0;
            known += back || !row.closedOn().plusDays(definitions.recurrenceDays()).isAfter(today) ? 1 : 0;
        }
        share("recurrence", again, known, closed.size() - known);
    }

    private void share(String key, int met, int of, int unknown) {
        Definitions.Indicator indicator = definitions.indicator(key);
        int fewest = definitions.fewestForARate();
        Proportion share = of == 0 ? null : new Proportion(met, of);
        table.add(new Row(indicator.title(), Cell.count(met), Cell.count(of), Cell.count(unknown), share == null ? Cell.none("none") : Cell.share(share, fewest),
                share == null ? Cell.none("–") : Cell.limits(share, definitions.confidence(), fewest), Cell.words(indicator.target())));
    }

    private void median(String key, IntStream values, int unknown) {
        Definitions.Indicator indicator = definitions.indicator(key);
        Quantiles quantiles = Quantiles.of(values);
        boolean enough = quantiles.count() >= definitions.fewestForARate();
        table.add(new Row(indicator.title(), Cell.none("–"), Cell.count(quantiles.count()), Cell.count(unknown), enough ? Cell.median(quantiles.median().orElseThrow())
                : Cell.none("fewer than " + definitions.fewestForARate()), enough ? new Cell("range " + quantiles.least() + " to " + quantiles.most(),
                        quantiles.least() + " to " + quantiles.most(), false) : Cell.none("–"), Cell.words(indicator.target())));
    }

    private void number(String key, int count) {
        Definitions.Indicator indicator = definitions.indicator(key);
        table.add(new Row(indicator.title(), Cell.count(count), Cell.none("–"), Cell.none("–"), Cell.none("–"), Cell.none("–"), Cell.words(indicator.target())));
    }
}
