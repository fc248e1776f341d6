package org.steadwork.caseload;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.steadwork.body.BodyRegion;
import org.steadwork.caseload.FigureTable.Column;
import org.steadwork.caseload.FigureTable.Row;
import org.steadwork.caseload.statistics.GroupChange;
import org.steadwork.caseload.statistics.Limits;
import org.steadwork.caseload.statistics.Proportion;
import org.steadwork.caseload.statistics.Responders;
import org.steadwork.drawing.SharePlot;
import org.steadwork.outcome.Instruments;
import org.steadwork.outcome.scoring.ChangeVerdict;
import org.steadwork.outcome.scoring.Direction;
import org.steadwork.outcome.scoring.Instrument;

/** How many got better, by which definition, and by how much as a group. */
final class OutcomeFigures {

    private final List<CaseOutcome> rows;
    private final List<Judged> judged;
    private final Instruments instruments;
    private final Definitions definitions;

    /** A case with the judgements on its worst pain and on its region's measure; null without a pair. */
    private record Judged(CaseOutcome row, ChangeVerdict.Kind pain, ChangeVerdict.Kind measure) {

        /** The judgement on the measure or, without one, on worst pain. */
        ChangeVerdict.Kind either() {
            return ChangeJudge.either(measure, pain);
        }
    }

    /** One way of counting who responded. {@code answer} is null for who cannot be judged. */
    private record Question(String title, Predicate<CaseOutcome> followed, Function<Judged, Boolean> answer, boolean wanted) {
    }

    private record Counted(int followed, Responders responders) {
    }

    OutcomeFigures(List<CaseOutcome> rows, Instruments instruments, Definitions definitions) {
        this.rows = rows;
        this.instruments = instruments;
        this.definitions = definitions;
        ChangeJudge judge = new ChangeJudge(instruments);
        this.judged = rows.stream().map(row -> new Judged(row, judge.pain(row), judge.measure(row))).toList();
    }

    List<Section> sections() {
        return List.of(responders(), byRegion(), change(), completion());
    }

    private List<Question> questions() {
        return List.of(
                new Question("Worst pain down by 30 %", CaseOutcome::painPair, one -> ChangeJudge.painResponder(one.row()), true),
                new Question("Worst pain: better beyond error", CaseOutcome::painPair, one -> answer(one.pain(), ChangeJudge::beyondError), true),
                new Question("Worst pain: important change", CaseOutcome::painPair, one -> answer(one.pain(), OutcomeFigures::important), true),
                new Question("Worst pain: worse beyond error", CaseOutcome::painPair, one -> answer(one.pain(), OutcomeFigures::worse), false),
                new Question("Region’s measure: better beyond error", CaseOutcome::measurePair, one -> answer(one.measure(), ChangeJudge::beyondError), true),
                new Question("Region’s measure: important change", CaseOutcome::measurePair, one -> answer(one.measure(), OutcomeFigures::important), true),
                new Question("Region’s measure: worse beyond error", CaseOutcome::measurePair, one -> answer(one.measure(), OutcomeFigures::worse), false));
    }

    private static Boolean answer(ChangeVerdict.Kind kind, Predicate<ChangeVerdict.Kind> asked) {
        return kind == null || ChangeJudge.open(kind) ? null : Boolean.valueOf(asked.test(kind));
    }

    static boolean important(ChangeVerdict.Kind kind) {
        return kind == ChangeVerdict.Kind.IMPORTANT;
    }

    private static boolean worse(ChangeVerdict.Kind kind) {
        return kind == ChangeVerdict.Kind.WORSE;
    }

    private static Counted count(List<Judged> some, Question question) {
        int followed = 0;
        int answered = 0;
        int responded = 0;
        for (Judged one : some) {
            if (question.followed().test(one.row())) {
                followed++;
                Boolean answer = question.answer().apply(one);
                answered += answer == null ? 0 : 1;
                responded += Boolean.TRUE.equals(answer) ? 1 : 0;
            }
        }
        return new Counted(followed, new Responders(some.size(), answered, responded));
    }

    private Section responders() {
        List<Row> table = new ArrayList<>();
        List<SharePlot.Row> plot = new ArrayList<>();
        for (Question question : questions()) {
            Counted counted = count(judged, question);
            table.add(row(question.title(), counted, question.wanted()));
            if (question.wanted()) {
                plot(question.title(), counted, plot);
            }
        }
        return new Section("responders", "Who got better", "Counted by several definitions: the definition decides the number.", List.of(),
                SharePlot.figure("plot-responders", "Share who got better, by definition", plot),
                "Dot: share of those with a follow-up. Line: 95 % interval. Both columns of the table belong to it: those followed up may have done better than those lost.",
                new FigureTable("responders", "Who got better", columns("Counted as"), table),
                defined("started", "followed", "pain", "measure", "thirty_percent", "beyond_error", "important", "worse", "lower_bound", "wilson"));
    }

    private static List<Column> columns(String first) {
        return List.of(Column.words(first), Column.number("Started"), Column.number("With follow-up"), Column.number("Not judged"), Column.number("Counted"),
                Column.number("Of those followed up"), Column.number("95 % interval"), Column.number("At least, of all who started"), Column.number("95 % interval"));
    }

    private Row row(String title, Counted counted, boolean wanted) {
        Responders responders = counted.responders();
        int fewest = definitions.fewestForARate();
        Proportion all = responders.lostAsFailures();
        return new Row(title, Cell.count(responders.started()), Cell.count(counted.followed()), Cell.count(counted.followed() - responders.followedUp()),
                Cell.count(responders.responders()),
                responders.amongFollowedUp().map(share -> Cell.share(share, fewest)).orElse(Cell.none("nobody")),
                responders.amongFollowedUp().map(share -> Cell.limits(share, definitions.confidence(), fewest)).orElse(Cell.none("–")),
                wanted ? Cell.share(all, fewest) : Cell.none("–"), wanted ? Cell.limits(all, definitions.confidence(), fewest) : Cell.none("–"));
    }

    private void plot(String title, Counted counted, List<SharePlot.Row> plot) {
        counted.responders().amongFollowedUp().filter(share -> share.of() >= definitions.fewestForARate()).ifPresent(share -> {
            Limits limits = share.wilson(definitions.confidence());
            plot.add(new SharePlot.Row(title, Cell.grouped(share.count()) + " of " + Cell.grouped(share.of()), share.value() * 100, limits.low() * 100, limits.high() * 100));
        });
    }

    /** Important change of the region's measure or, without one, of worst pain, by main region. */
    private Section byRegion() {
        Question either = new Question("", row -> row.painPair() || row.measurePair(), one -> answer(one.either(), OutcomeFigures::important), true);
        Map<String, List<Judged>> byRegion = new LinkedHashMap<>();
        for (BodyRegion region : BodyRegion.values()) {
            byRegion.put(region.label(), new ArrayList<>());
        }
        byRegion.put("Not reported", new ArrayList<>());
        judged.forEach(one -> byRegion.get(one.row().region() == null ? "Not reported" : one.row().region().label()).add(one));
        List<Row> table = new ArrayList<>();
        List<SharePlot.Row> plot = new ArrayList<>();
        byRegion.values().removeIf(List::isEmpty);
        byRegion.forEach((region, some) -> {
            Counted counted = count(some, either);
            table.add(row(region, counted, true));
            plot(region, counted, plot);
        });
        Counted all = count(judged, either);
        table.add(row("All regions", all, true));
        plot("All regions", all, plot);
        return new Section("by-region", "Important change, by region", "Of the region’s measure; without one, of worst pain.", List.of(),
                SharePlot.figure("plot-by-region", "Share with an important change, by region", plot),
                "Dot: share of those with a follow-up. Line: 95 % interval. Where intervals overlap, nothing says that one region does better than another.",
                new FigureTable("by_region", "Important change, by region", columns("Region"), table),
                defined("region", "followed", "important", "lower_bound", "wilson"));
    }

    private Section change() {
        List<Row> table = new ArrayList<>();
        table.add(changeRow("Worst pain (0 to 10)", rows.size(), rows.stream().filter(CaseOutcome::painPair).toList(), row -> (double) row.painFirst(),
                row -> (double) row.painLast(), true));
        Map<String, List<CaseOutcome>> measured = rows.stream().filter(row -> row.measureFirst() != null)
                .collect(Collectors.groupingBy(CaseOutcome::measure, LinkedHashMap::new, Collectors.toList()));
        for (Instrument instrument : instruments.all()) {
            List<CaseOutcome> some = measured.getOrDefault(instrument.key(), List.of());
            if (!some.isEmpty()) {
                table.add(changeRow(instrument.label() + (instrument.unit().isEmpty() ? "" : ", " + instrument.unit()), some.size(),
                        some.stream().filter(CaseOutcome::measurePair).toList(), CaseOutcome::measureFirst, CaseOutcome::measureLast,
                        instrument.direction() == Direction.LOWER_BETTER));
            }
        }
        return new Section("change", "How large the change was", "Of groups, never of one patient.",
                List.of("Without a comparison group none of these is the effect of treatment."), null, null,
                new FigureTable("change", "Change of groups", List.of(Column.words("Measure"), Column.number("With a first score"), Column.number("Pairs"),
                        Column.number("Mean improvement"), Column.number("Spread of first scores"), Column.number("Spread of improvements"),
                        Column.number("Effect size"), Column.number("Standardised response mean")), table), defined("effect_size", "followed"));
    }

    private Row changeRow(String title, int started, List<CaseOutcome> pairs, Function<CaseOutcome, Double> first, Function<CaseOutcome, Double> last,
            boolean lowerIsBetter) {
        Cell few = Cell.none("fewer than " + definitions.fewestForARate());
        if (pairs.size() < definitions.fewestForARate()) {
            return new Row(title, Cell.count(started), Cell.count(pairs.size()), few, Cell.none("–"), Cell.none("–"), Cell.none("–"), Cell.none("–"));
        }
        GroupChange change = GroupChange.of(pairs.stream().mapToDouble(first::apply).toArray(), pairs.stream().mapToDouble(last::apply).toArray(), lowerIsBetter);
        return new Row(title, Cell.count(started), Cell.count(pairs.size()), Cell.number(change.meanImprovement(), 1), Cell.number(change.sdBaseline(), 1),
                Cell.number(change.sdChange(), 1), Cell.number(change.effectSize(), 2), Cell.number(change.standardisedResponseMean(), 2));
    }

    private Section completion() {
        List<CaseOutcome> closed = rows.stream().filter(row -> row.closedOn() != null).toList();
        List<Row> table = List.of(
                have("First rating of worst pain", rows, row -> row.painFirst() != null),
                have("Two ratings of worst pain", rows, CaseOutcome::painPair),
                have("First score of the region’s measure", rows, row -> row.measureFirst() != null),
                have("Two scores of the region’s measure", rows, CaseOutcome::measurePair),
                have("Work status known at least once", rows, row -> row.workFirst() != null),
                have("Day of referral known", rows, row -> row.referredOn() != null),
                have("Work place looked at", rows, CaseOutcome::assessed),
                have("Two scores, of closed cases", closed, row -> row.painPair() || row.measurePair()));
        return new Section("completion", "What is there to count", "A figure is worth what stands behind it.", List.of(), null, null,
                new FigureTable("completion", "Completion of measures", List.of(Column.words("Recorded"), Column.number("Cases with it"), Column.number("Without"),
                        Column.number("Cases"), Column.number("Share"), Column.number("95 % interval")), table), defined("completion", "wilson"));
    }

    private Row have(String title, List<CaseOutcome> some, Predicate<CaseOutcome> recorded) {
        int with = (int) some.stream().filter(recorded).count();
        if (some.isEmpty()) {
            return new Row(title, Cell.count(0), Cell.count(0), Cell.count(0), Cell.none("nobody"), Cell.none("–"));
        }
        Proportion share = new Proportion(with, some.size());
        return new Row(title, Cell.count(with), Cell.count(some.size() - with), Cell.count(some.size()), Cell.share(share, definitions.fewestForARate()),
                Cell.limits(share, definitions.confidence(), definitions.fewestForARate()));
    }

    private List<Definitions.Definition> defined(String... keys) {
        return Stream.of(keys).map(definitions::of).toList();
    }
}
