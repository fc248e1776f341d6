package org.steadwork.caseload;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.steadwork.caseload.FigureTable.Column;
import org.steadwork.caseload.FigureTable.Row;
import org.steadwork.caseload.statistics.CurveLimits;
import org.steadwork.caseload.statistics.CurveStep;
import org.steadwork.caseload.statistics.Followed;
import org.steadwork.caseload.statistics.KaplanMeier;
import org.steadwork.caseload.statistics.Limits;
import org.steadwork.caseload.statistics.LogRank;
import org.steadwork.caseload.statistics.Proportion;
import org.steadwork.casefile.CloseReason;
import org.steadwork.drawing.CurvePlot;

/** How long it takes: back to full duties, to discharge, to the first visit; and with how many visits. */
final class TimeFigures {

    private static final int MOST_VISITS_APART = 12;

    private final List<CaseOutcome> rows;
    private final Definitions definitions;
    private final LocalDate today;

    /** Two groups that were chosen to be compared; the sections of one are null until both are. */
    record Group(String name, Predicate<CaseOutcome> member) {
    }

    TimeFigures(List<CaseOutcome> rows, Definitions definitions, LocalDate today) {
        this.rows = rows;
        this.definitions = definitions;
        this.today = today;
    }

    List<Section> sections(Optional<List<Group>> compared) {
        List<Section> sections = new ArrayList<>();
        sections.add(curve("return", "Time to full duties", "From the first day off work.", "back at full duties", returns(rows),
                "People who were never off work for this problem are not in it. Leaving work altogether is not recorded and would hide here as not yet back."));
        sections.add(curve("discharge", "Time to discharge", "From the first visit.", "discharged", discharges(rows), null));
        sections.add(compare(compared));
        sections.add(visits());
        sections.add(reasons());
        sections.add(waiting());
        return sections;
    }

    /** Returns how long each person who was off was followed, in days. */
    List<Followed> returns(List<CaseOutcome> some) {
        List<Followed> cohort = new ArrayList<>();
        for (CaseOutcome row : some) {
            if (row.offOn() != null) {
                cohort.add(returned(row));
            }
        }
        return cohort;
    }

    private Followed returned(CaseOutcome row) {
        if (row.fullOn() != null) {
            boolean lasted = row.fullUntil() != null || !today.isBefore(row.fullOn().plusDays(definitions.sustainedDays()));
            return new Followed(days(row.offOn(), row.fullOn()), lasted);
        }
        return new Followed(days(row.offOn(), row.lastContactOn()), false);
    }

    /** Returns how long each case was followed to its discharge, in days. */
    List<Followed> discharges(List<CaseOutcome> some) {
        List<Followed> cohort = new ArrayList<>();
        for (CaseOutcome row : some) {
            cohort.add(row.closedOn() == null ? new Followed(days(row.openedOn(), today), false)
                    : new Followed(days(row.openedOn(), row.closedOn()), definitions.discharge(row.closeReason())));
        }
        return cohort;
    }

    private static double days(LocalDate from, LocalDate to) {
        return Math.max(0, ChronoUnit.DAYS.between(from, to));
    }

    private Section curve(String key, String title, String note, String event, List<Followed> cohort, String caution) {
        KaplanMeier curve = KaplanMeier.of(cohort);
        List<CurveStep> steps = curve.stepsToShow(definitions.fewestForARate(), definitions.fewestAtRisk());
        List<String> words = new ArrayList<>();
        words.add(Cell.grouped(curve.started()) + (curve.started() == 1 ? " case" : " cases") + ", " + Cell.grouped(curve.events()) + " " + event + ", "
                + Cell.grouped(curve.started() - curve.events()) + " followed only so far.");
        if (steps.isEmpty()) {
            words.add(curve.started() < definitions.fewestForARate() ? "No curve with fewer than " + definitions.fewestForARate() + " people."
                    : "No curve: nobody has been " + event + " yet while enough were followed.");
            return new Section(key, title, note, words, null, null, null, defined(key, "curve"));
        }
        words.add(median(curve, event));
        if (caution != null) {
            words.add(caution);
        }
        return new Section(key, title, note, words, CurvePlot.figure("plot-" + key, "Share " + event + " by day", List.of(drawn(event, curve, steps))),
                "Share " + event + ", in per cent. Thin lines: 95 % limits. Those followed only so far are counted until then and no further.",
                table(key, title, event, curve, steps), defined(key, "curve"));
    }

    private String median(KaplanMeier curve, String event) {
        OptionalDouble median = curve.median();
        if (median.isEmpty()) {
            return "Half is not reached.";
        }
        OptionalDouble low = curve.medianLow(CurveLimits.LOG_LOG, definitions.confidence());
        OptionalDouble high = curve.medianHigh(CurveLimits.LOG_LOG, definitions.confidence());
        return "Half were " + event + " by day " + Cell.number(median.getAsDouble(), 0).shown() + " (95 % limits " + day(low) + " to " + day(high) + ").";
    }

    private static String day(OptionalDouble day) {
        return day.isPresent() ? Cell.number(day.getAsDouble(), 0).shown() : "not reached";
    }

    private CurvePlot.Curve drawn(String name, KaplanMeier curve, List<CurveStep> steps) {
        List<CurvePlot.Point> points = new ArrayList<>();
        for (CurveStep step : steps) {
            Optional<Limits> limits = step.limits(CurveLimits.LOG_LOG, definitions.confidence());
            points.add(new CurvePlot.Point(step.time(), 100 * (1 - step.survival()), limits.map(l -> 100 * (1 - l.high())).orElse(Double.NaN),
                    limits.map(l -> 100 * (1 - l.low())).orElse(Double.NaN)));
        }
        return new CurvePlot.Curve(name, points, steps.get(steps.size() - 1).time(), day -> curve.atRisk(day));
    }

    /** On the page the days of the plot's axis, in the file every step. */
    private FigureTable table(String key, String title, String event, KaplanMeier curve, List<CurveStep> steps) {
        List<Row> page = new ArrayList<>();
        double last = steps.get(steps.size() - 1).time();
        for (int day : CurvePlot.ticks(last)) {
            if (day <= last) {
                Optional<CurveStep> step = steps.stream().filter(one -> one.time() <= day).reduce((a, b) -> b);
                page.add(new Row(String.valueOf(day), Cell.count(curve.atRisk(day)), step.map(this::share).orElse(Cell.words("0 %")),
                        step.map(this::limits).orElse(Cell.none("–"))));
            }
        }
        List<Row> all = steps.stream().map(step -> new Row(Cell.number(step.time(), 0).plain().replaceAll("\\.0+$", ""), Cell.count(step.atRisk()), share(step), limits(step))).toList();
        return new FigureTable(key, title, List.of(Column.words("By day"), Column.number("Still followed"), Column.number("Share " + event),
                Column.number("95 % limits")), page, all);
    }

    private Cell share(CurveStep step) {
        double share = 1 - step.survival();
        return new Cell(Cell.percent(share) + " %", Cell.number(share, 0).plain(), false);
    }

    private Cell limits(CurveStep step) {
        return step.limits(CurveLimits.LOG_LOG, definitions.confidence()).map(limits -> new Cell(Cell.percent(1 - limits.high()) + " to "
                + Cell.percent(1 - limits.low()) + " %", Cell.number(1 - limits.high(), 0).plain() + " to " + Cell.number(1 - limits.low(), 0).plain(), false))
                .orElse(Cell.none("none"));
    }

    private Section compare(Optional<List<Group>> compared) {
        String note = "A description: nobody was assigned by lot.";
        if (compared.isEmpty()) {
            return new Section("compare", "Two groups side by side", note, List.of(), null, null, null, defined("log_rank", "return"), true);
        }
        List<KaplanMeier> curves = new ArrayList<>();
        List<List<Followed>> cohorts = new ArrayList<>();
        List<Row> table = new ArrayList<>();
        for (Group group : compared.get()) {
            List<Followed> cohort = returns(rows.stream().filter(group.member()).toList());
            cohorts.add(cohort);
            curves.add(KaplanMeier.of(cohort));
        }
        LogRank test = LogRank.of(cohorts.get(0), cohorts.get(1));
        boolean enough = curves.stream().allMatch(curve -> curve.started() >= definitions.fewestForARate());
        double[] expected = {test.expectedFirst(), test.expectedSecond()};
        for (int i = 0; i < 2; i++) {
            KaplanMeier curve = curves.get(i);
            table.add(new Row(compared.get().get(i).name(), Cell.count(curve.started()), Cell.count(curve.events()),
                    enough ? Cell.number(expected[i], 1) : Cell.none("–"), enough ? Cell.number(curve.median(), 0, "not reached") : Cell.none("–")));
        }
        List<String> words = new ArrayList<>();
        String figure = null;
        if (enough) {
            words.add("Log-rank chi-square " + Cell.number(test.chiSquare(), 2).shown() + " with one degree of freedom, p " + pValue(test.p())
                    + ". A description of these two groups, not a test of what one of them was given.");
            List<CurvePlot.Curve> drawn = new ArrayList<>();
            for (int i = 0; i < 2; i++) {
                List<CurveStep> steps = curves.get(i).stepsToShow(definitions.fewestForARate(), definitions.fewestAtRisk());
                if (!steps.isEmpty()) {
                    drawn.add(drawn(compared.get().get(i).name(), curves.get(i), steps));
                }
            }
            figure = drawn.size() == 2 ? CurvePlot.figure("plot-compare", "Share back at full duties by day, two groups", drawn) : null;
        } else {
            words.add("Not compared: a group has fewer than " + definitions.fewestForARate() + " people who were off work.");
        }
        Section plain = new Section("compare", "Two groups side by side", note, words, figure, "Share back at full duties, in per cent, by day since the first day off.",
                new FigureTable("compare", "Time to full duties in two groups", List.of(Column.words("Group"), Column.number("Were off work"),
                        Column.number("Back"), Column.number("Expected if alike"), Column.number("Half by day")), table), defined("log_rank", "return"));
        return new Section(plain.id(), plain.title(), plain.note(), plain.words(), plain.figure(), plain.figureWords(), plain.table(), plain.definitions(), true);
    }

    static String pValue(double p) {
        return Double.isNaN(p) ? "not defined" : p < 0.001 ? "< 0.001" : Cell.number(p, 3).shown();
    }

    private Section visits() {
        List<CaseOutcome> closed = closed();
        Quantiles visits = Quantiles.of(closed.stream().mapToInt(CaseOutcome::attended));
        List<String> words = new ArrayList<>();
        if (visits.count() >= definitions.fewestForARate()) {
            words.add("Median " + Cell.median(visits.median().orElseThrow()).shown() + ", middle half " + Cell.median(visits.at(0.25).orElseThrow()).shown() + " to "
                    + Cell.median(visits.at(0.75).orElseThrow()).shown() + ", range " + visits.least() + " to " + visits.most() + ", of " + Cell.grouped(visits.count())
                    + " closed cases; " + Cell.grouped(rows.size() - closed.size()) + " still open.");
        } else {
            words.add(visits.count() + (visits.count() == 1 ? " closed case" : " closed cases") + ": fewer than " + definitions.fewestForARate()
                    + ", so no median is shown.");
        }
        int[] counts = new int[MOST_VISITS_APART + 1];
        closed.forEach(row -> counts[Math.min(row.attended(), MOST_VISITS_APART)]++);
        List<Row> table = new ArrayList<>();
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > 0) {
                table.add(new Row(i == MOST_VISITS_APART ? i + " or more" : String.valueOf(i), Cell.count(counts[i]), share(counts[i], closed.size())));
            }
        }
        return new Section("visits", "Visits a case", "Of closed cases.", words, null, null,
                new FigureTable("visits", "Visits a case", List.of(Column.words("Visits attended"), Column.number("Closed cases"), Column.number("Share")), table),
                defined("visits"));
    }

    private Section reasons() {
        List<CaseOutcome> closed = closed();
        List<Row> table = Arrays.stream(CloseReason.values()).map(reason -> {
            int count = (int) closed.stream().filter(row -> row.closeReason() == reason).count();
            return new Row(reason.label(), Cell.count(count), share(count, closed.size()));
        }).toList();
        return new Section("reasons", "How cases ended", Cell.grouped(closed.size()) + " closed, " + Cell.grouped(rows.size() - closed.size()) + " open.", List.of(),
                null, null, new FigureTable("reasons", "Reasons for closing", List.of(Column.words("Reason"), Column.number("Cases"), Column.number("Share of closed")),
                        table), defined("reasons", "discharge"));
    }

    private Section waiting() {
        int[] known = rows.stream().filter(TimeFigures::waitKnown).mapToInt(row -> WorkingDays.between(row.referredOn(), row.firstVisitOn())).toArray();
        Quantiles waits = Quantiles.of(Arrays.stream(known));
        int[] from = {0, 1, 3, 6, 11};
        String[] names = {"Same day", "1 to 2", "3 to 5", "6 to 10", "11 or more"};
        List<Row> table = new ArrayList<>();
        for (int i = 0; i < from.length; i++) {
            int low = from[i];
            int high = i + 1 < from.length ? from[i + 1] : Integer.MAX_VALUE;
            int count = (int) Arrays.stream(known).filter(days -> days >= low && days < high).count();
            table.add(new Row(names[i], Cell.count(count), share(count, known.length)));
        }
        table.add(new Row("Not known", Cell.count(rows.size() - known.length), Cell.none("–")));
        String words = waits.count() < definitions.fewestForARate() ? "Known for " + waits.count() + (waits.count() == 1 ? " case" : " cases")
                + ", so no median is shown. The day of the referral is entered where the case is described."
                : "Median " + Cell.median(waits.median().orElseThrow()).shown() + " working days, middle half " + Cell.median(waits.at(0.25).orElseThrow()).shown() + " to "
                        + Cell.median(waits.at(0.75).orElseThrow()).shown() + "; known for " + Cell.grouped(waits.count()) + " of " + Cell.grouped(rows.size()) + " cases.";
        return new Section("waiting", "Wait for the first visit", "From the referral.", List.of(words), null, null,
                new FigureTable("waiting", "Wait for the first visit", List.of(Column.words("Working days"), Column.number("Cases"), Column.number("Share of known")), table),
                defined("waiting"));
    }

    static boolean waitKnown(CaseOutcome row) {
        return row.referredOn() != null && row.firstVisitOn() != null && !row.firstVisitOn().isBefore(row.referredOn());
    }

    private Cell share(int count, int of) {
        return of == 0 ? Cell.none("–") : Cell.share(new Proportion(count, of), definitions.fewestForARate());
    }

    private List<CaseOutcome> closed() {
        return rows.stream().filter(row -> row.closedOn() != null).toList();
    }

    private List<Definitions.Definition> defined(String... keys) {
        return Stream.of(keys).map(definitions::of).toList();
    }
}
