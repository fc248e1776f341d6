package org.steadwork.caseload;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.steadwork.body.BodyRegion;
import org.steadwork.caseload.FigureTable.Column;
import org.steadwork.caseload.FigureTable.Row;
import org.steadwork.caseload.statistics.FalseDiscovery;
import org.steadwork.caseload.statistics.FourfoldTable;
import org.steadwork.caseload.statistics.GroupChange;
import org.steadwork.caseload.statistics.Limits;
import org.steadwork.caseload.statistics.Proportion;
import org.steadwork.workplace.WorkplaceContent;
import org.steadwork.workplace.fit.Criterion;

/** What was found at the work places, what became of it, and which complaints stand beside it. */
final class WorkplaceFigures {

    private static final int FEWEST_TOGETHER = 5;
    private static final int PAIRS_ON_THE_PAGE = 20;

    private final List<CaseOutcome> rows;
    private final Definitions definitions;
    private final Map<String, Criterion> criteria = new LinkedHashMap<>();
    /** What a text of findings says, read once: many cases share one. */
    private final Map<String, Map<String, Character>> read = new HashMap<>();

    /** How often a finding was made, asked for without being done, and done; and beside which regions. */
    private static final class Tally {
        private int found;
        private int asked;
        private int done;
        private final int[] withRegion = new int[BodyRegion.values().length];
    }

    private record Pair(Criterion criterion, BodyRegion region, FourfoldTable table, double p) {
    }

    private final boolean everyPair;

    /** @param everyPair true for a file, which holds every pair; a page shows the first few, and works out their ratios only */
    WorkplaceFigures(List<CaseOutcome> rows, Definitions definitions, WorkplaceContent content, boolean everyPair) {
        this.rows = rows;
        this.everyPair = everyPair;
        this.definitions = definitions;
        content.criteria().forEach(criterion -> criteria.put(criterion.id(), criterion));
    }

    List<Section> sections() {
        Map<String, Tally> tallies = tallies();
        return List.of(putRight(tallies), linked(), associations(tallies));
    }

    /** Reads the findings of a case: the criterion, and + for done, ! for asked for, blank for neither. */
    static Map<String, Character> findings(String text) {
        Map<String, Character> findings = new LinkedHashMap<>();
        for (String word : text == null || text.isEmpty() ? new String[0] : text.split(" ")) {
            char end = word.charAt(word.length() - 1);
            boolean marked = end == '+' || end == '!';
            findings.put(marked ? word.substring(0, word.length() - 1) : word, marked ? end : ' ');
        }
        return findings;
    }

    private Map<String, Tally> tallies() {
        Map<String, Tally> tallies = new HashMap<>();
        BodyRegion[] regions = BodyRegion.values();
        for (CaseOutcome row : rows) {
            read.computeIfAbsent(row.findings() == null ? "" : row.findings(), WorkplaceFigures::findings).forEach((criterion, state) -> {
                Tally tally = tallies.computeIfAbsent(criterion, key -> new Tally());
                tally.found++;
                tally.done += state == '+' ? 1 : 0;
                tally.asked += state == '!' ? 1 : 0;
                for (BodyRegion region : regions) {
                    tally.withRegion[region.ordinal()] += row.reported(region) ? 1 : 0;
                }
            });
        }
        return tallies;
    }

    private int assessed() {
        return (int) rows.stream().filter(CaseOutcome::assessed).count();
    }

    private Section putRight(Map<String, Tally> tallies) {
        List<Row> table = new ArrayList<>();
        criteria.values().forEach(criterion -> {
            Tally tally = tallies.get(criterion.id());
            if (tally != null) {
                Proportion share = new Proportion(tally.done, tally.found);
                table.add(new Row(criterion.label(), Cell.count(tally.found), Cell.count(tally.done), Cell.count(tally.asked),
                        Cell.count(tally.found - tally.done - tally.asked), Cell.share(share, definitions.fewestForARate()),
                        Cell.limits(share, definitions.confidence(), definitions.fewestForARate())));
            }
        });
        table.sort(Comparator.comparingInt((Row row) -> -Integer.parseInt(row.cells().get(0).plain())));
        int assessed = assessed();
        return new Section("put-right", "Found and put right", Cell.grouped(assessed) + " of " + Cell.grouped(rows.size()) + " work places looked at.",
                table.isEmpty() ? List.of("Nothing was found at the work places of these cases.") : List.of(), null, null,
                table.isEmpty() ? null : new FigureTable("put_right", "Findings at the work place", List.of(Column.words("Finding"), Column.number("Cases"),
                        Column.number("Put right"), Column.number("Asked for, not done"), Column.number("Not asked for"), Column.number("Share put right"),
                        Column.number("95 % interval")), table), defined("put_right", "wilson"));
    }

    private Section linked() {
        List<CaseOutcome> with = rows.stream().filter(row -> row.linkedFirst() != null).toList();
        List<CaseOutcome> without = rows.stream().filter(row -> row.unlinkedFirst() != null).toList();
        List<Row> table = List.of(
                zoneRow("Linked to a finding", with.stream().mapToDouble(CaseOutcome::linkedFirst).toArray(), with.stream().mapToDouble(CaseOutcome::linkedLast).toArray()),
                zoneRow("Not linked", without.stream().mapToDouble(CaseOutcome::unlinkedFirst).toArray(), without.stream().mapToDouble(CaseOutcome::unlinkedLast).toArray()));
        return new Section("linked", "Pain where a link was confirmed, and where not", "Clinicians link where they expect change.",
                List.of("A difference between the two rows is no proof that the finding had anything to do with the pain."), null, null,
                new FigureTable("linked", "Worst pain in linked and unlinked zones", List.of(Column.words("Zones"), Column.number("Cases with both reports"),
                        Column.number("Mean first"), Column.number("Mean last"), Column.number("Mean improvement"), Column.number("Spread of improvements")), table),
                defined("linked"));
    }

    private Row zoneRow(String title, double[] first, double[] last) {
        if (first.length < definitions.fewestForARate()) {
            return new Row(title, Cell.count(first.length), Cell.none("fewer than " + definitions.fewestForARate()), Cell.none("–"), Cell.none("–"), Cell.none("–"));
        }
        GroupChange change = GroupChange.of(first, last, true);
        double mean = Arrays.stream(first).average().orElseThrow();
        return new Row(title, Cell.count(first.length), Cell.number(mean, 1), Cell.number(mean - change.meanImprovement(), 1), Cell.number(change.meanImprovement(), 1),
                Cell.number(change.sdChange(), 1));
    }

    /** Every finding with every region, of the work places that were looked at. */
    private Section associations(Map<String, Tally> tallies) {
        int[] regionTotals = new int[BodyRegion.values().length];
        int assessed = 0;
        for (CaseOutcome row : rows) {
            // a finding without an assessment cannot be, but a count must never come out negative
            if (row.assessed() || row.findings() != null && !row.findings().isEmpty()) {
                assessed++;
                for (BodyRegion region : BodyRegion.values()) {
                    regionTotals[region.ordinal()] += row.reported(region) ? 1 : 0;
                }
            }
        }
        List<Pair> pairs = new ArrayList<>();
        for (Criterion criterion : criteria.values()) {
            Tally tally = tallies.get(criterion.id());
            for (BodyRegion region : BodyRegion.values()) {
                int all = regionTotals[region.ordinal()];
                if (tally != null && tally.found >= definitions.fewestForARate() && all >= definitions.fewestForARate()) {
                    int both = tally.withRegion[region.ordinal()];
                    FourfoldTable table = new FourfoldTable(both, tally.found - both, all - both, assessed - tally.found - all + both);
                    pairs.add(new Pair(criterion, region, table, table.p()));
                }
            }
        }
        if (pairs.isEmpty()) {
            return new Section("associations", "Seen together", "Exploratory: a question for a review, not a result.",
                    List.of("No finding and no region occur in " + definitions.fewestForARate() + " cases or more, so no pair is looked at."), null, null, null,
                    defined("association"));
        }
        double[] adjusted = FalseDiscovery.adjusted(pairs.stream().mapToDouble(Pair::p).toArray());
        List<Integer> order = Stream.iterate(0, i -> i + 1).limit(pairs.size()).sorted(Comparator.comparingDouble((Integer i) -> pairs.get(i).p())
                .thenComparing(i -> i)).toList();
        List<Row> shown = order.stream().limit(everyPair ? pairs.size() : PAIRS_ON_THE_PAGE).map(i -> row(pairs.get(i), adjusted[i])).toList();
        return new Section("associations", "Seen together", "Exploratory: a question for a review, not a result.",
                List.of(Cell.grouped(pairs.size()) + (pairs.size() == 1 ? " pair" : " pairs") + " of a finding and a region, in " + Cell.grouped(assessed)
                        + " cases whose work place was looked at" + (pairs.size() > PAIRS_ON_THE_PAGE ? "; the " + PAIRS_ON_THE_PAGE + " least likely to be chance stand here, all in the file." : ".")
                        + " Seen together is not because."), null, null,
                new FigureTable("associations", "Exploratory: findings and regions seen together", List.of(Column.words("Finding, and region"), Column.number("Together"),
                        Column.number("Finding alone"), Column.number("Region alone"), Column.number("Neither"), Column.number("Odds ratio"), Column.number("95 % limits"),
                        Column.number("p, adjusted"), Column.words("Reading")), shown), defined("association"));
    }

    private Row row(Pair pair, double adjusted) {
        FourfoldTable table = pair.table();
        boolean few = table.both() < FEWEST_TOGETHER;
        Cell ratio = few ? Cell.none("fewer than " + FEWEST_TOGETHER) : Cell.number(table.oddsRatio(), 2);
        Limits limits = few ? null : table.oddsRatioLimits(definitions.confidence());
        return new Row(pair.criterion().label() + ", and " + pair.region().label().toLowerCase(Locale.ROOT), Cell.count(table.both()),
                Cell.count(table.findingOnly()), Cell.count(table.complaintOnly()), Cell.count(table.neither()), ratio,
                limits == null ? Cell.none("–") : Cell.range(limits.low(), limits.high(), 2), new Cell(TimeFigures.pValue(adjusted), String.valueOf(adjusted), false),
                Cell.words(adjusted < 0.05 && !few ? "stands out" : "may be chance"));
    }

    private List<Definitions.Definition> defined(String... keys) {
        return Stream.of(keys).map(definitions::of).toList();
    }
}
