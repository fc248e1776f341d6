package org.steadwork.caseload;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.ToIntFunction;
import org.steadwork.account.Account;
import org.steadwork.caseload.statistics.SmallNumbers;
import org.steadwork.caseload.statistics.WithheldTable;
import org.steadwork.letter.Letterhead;
import org.steadwork.people.Employer;
import org.steadwork.web.Dates;
import org.steadwork.workplace.WorkplaceContent;

/** Counts an employer's people of one half-year and says in words what may leave the clinic. */
@ApplicationScoped
class GroupReportCounting {

    private static final int FOUR_WEEKS = 28;
    private static final int TWELVE_WEEKS = 84;
    private static final List<String> STATES = List.of("Put right", "Asked for, not yet in place", "Found, not asked for", "None found, or not looked at");
    private static final List<String> EXPLAINED = List.of(
            "Counted are the people whose first visit lay in this half-year, each once and in this report alone: nobody is moved to an earlier or a later one, so that no "
                    + "two reports can be subtracted from each other.",
            "Numbers from 1 to 9 are withheld (–), and with them as many others as it takes that none can be worked out from the totals. Places with fewer than ten people "
                    + "are counted together. Kinds of equipment that concern fewer than ten people are not listed, and a table that cannot be protected is left out.",
            "Once signed, this report is kept as it is. A further copy is this very file; the numbers of this half-year are not counted again, also when a record is added or "
                    + "corrected later.",
            "The regions are where people reported most pain. Whether the work place has a part in it is not said here: seen together is not because.");

    @Inject
    CaseOutcomes outcomes;

    @Inject
    GroupReports reports;

    @Inject
    Definitions definitions;

    @Inject
    WorkplaceContent workplaces;

    @Inject
    Letterhead letterhead;

    @Inject
    Clock clock;

    /** Returns the facts of everyone counted: a person with two cases in the half-year is counted once, with the first. */
    List<ReportPerson> people(Employer employer, ReportPeriod period) {
        Map<Long, String[]> places = reports.places(employer.id());
        Map<String, String> kinds = new HashMap<>();
        workplaces.criteria().forEach(criterion -> kinds.put(criterion.id(), criterion.group()));
        Map<Long, CaseOutcome> first = new TreeMap<>();
        Selection.ofEmployer(employer.id(), period.first(), period.last()).read(outcomes).stream()
                .sorted(Comparator.comparing(CaseOutcome::openedOn).thenComparing(CaseOutcome::caseId))
                .forEach(row -> first.putIfAbsent(row.patientId(), row));
        LocalDate today = LocalDate.now(clock);
        return first.values().stream().map(row -> {
            String[] place = places.getOrDefault(row.patientId(), new String[2]);
            return new ReportPerson(blankless(place[0]), blankless(place[1]), row.region(), byKind(row, kinds), back(row, today));
        }).toList();
    }

    private static String blankless(String name) {
        return name == null || name.isBlank() ? null : name.strip();
    }

    /** The state of a kind is that of its worst finding: found before asked for before put right. */
    private static Map<String, Character> byKind(CaseOutcome row, Map<String, String> kinds) {
        Map<String, Character> states = new HashMap<>();
        WorkplaceFigures.findings(row.findings()).forEach((criterion, state) -> {
            String kind = kinds.get(criterion);
            if (kind != null) {
                states.merge(kind, state, (one, other) -> one == ' ' || other == ' ' ? Character.valueOf(' ') : one == '!' || other == '!' ? Character.valueOf('!') : one);
            }
        });
        return states;
    }

    private ReportPerson.Return back(CaseOutcome row, LocalDate today) {
        if (row.offOn() == null) {
            return ReportPerson.Return.NOT_OFF;
        }
        boolean lasted = row.fullOn() != null && (row.fullUntil() != null || !today.isBefore(row.fullOn().plusDays(definitions.sustainedDays())));
        long days = lasted ? ChronoUnit.DAYS.between(row.offOn(), row.fullOn()) : Long.MAX_VALUE;
        return days <= FOUR_WEEKS ? ReportPerson.Return.WITHIN_FOUR_WEEKS : days <= TWELVE_WEEKS ? ReportPerson.Return.WITHIN_TWELVE_WEEKS : ReportPerson.Return.LATER;
    }

    /** Puts the report together; {@code signed} is empty for a draft. */
    PrintedGroupReport printed(Employer employer, ReportPeriod period, GroupReport report, Account author, String signed) {
        Optional<GroupCounts> counts = GroupCounts.of(people(employer, period), SmallNumbers.USUAL_FEWEST);
        List<PrintedGroupReport.Table> tables = new ArrayList<>();
        List<PrintedGroupReport.Place> places = new ArrayList<>();
        if (counts.isPresent()) {
            counts.get().places().forEach((name, people) -> places.add(new PrintedGroupReport.Place(name, String.valueOf(people.size()))));
            counts.get().count(regions()).ifPresent(table -> tables.add(table(table, "", false)));
            for (Map.Entry<String, String> kind : definitions.kinds().entrySet()) {
                GroupCounts.Fact fact = kind(kind.getKey(), kind.getValue());
                if (counts.get().withFact(fact) >= SmallNumbers.USUAL_FEWEST) {
                    counts.get().count(fact).ifPresent(table -> tables.add(table(table, "", true)));
                }
            }
            counts.get().count(returns()).ifPresent(table -> tables.add(table(table, "Full duties that lasted four weeks. Where work status was not recorded it is not known.", false)));
        }
        List<String> to = new ArrayList<>(List.of(employer.name()));
        if (employer.address() != null) {
            to.addAll(employer.address().lines().map(String::strip).filter(line -> !line.isEmpty() && !line.equalsIgnoreCase(employer.name())).toList());
        }
        String reference = report == null ? "GR-" + employer.id() + "-" + period.key().toUpperCase(Locale.ROOT) : report.reference();
        List<String> signature = new ArrayList<>(List.of(author.fullName()));
        if (author.profession() != null) {
            signature.add(author.profession());
        }
        return new PrintedGroupReport(letterhead.lines(), to, Dates.inLetter(LocalDate.ofInstant(Instant.now(clock), clock.getZone())) + ". Our reference " + reference + ".",
                "Work places and people seen, " + period.title(), counts.map(GroupCounts::people).orElse(0), places, tables, report == null ? null : report.comment(),
                EXPLAINED, signature, letterhead.foot(), signed);
    }

    private GroupCounts.Fact regions() {
        List<Definitions.RegionGroup> groups = definitions.groups();
        List<String> titles = new ArrayList<>(groups.stream().map(Definitions.RegionGroup::title).toList());
        titles.add("Other, or not reported");
        ToIntFunction<ReportPerson> answer = person -> {
            for (int i = 0; i < groups.size(); i++) {
                if (person.region() != null && groups.get(i).regions().contains(person.region())) {
                    return i;
                }
            }
            return groups.size();
        };
        return new GroupCounts.Fact("regions", "Where it hurts most", titles, answer);
    }

    private static GroupCounts.Fact kind(String key, String title) {
        return new GroupCounts.Fact(key, "Equipment and changes: " + title.toLowerCase(Locale.ROOT), STATES, person -> {
            Character state = person.findings().get(key);
            return state == null ? 3 : state == '+' ? 0 : state == '!' ? 1 : 2;
        });
    }

    private static GroupCounts.Fact returns() {
        ReportPerson.Return[] answers = ReportPerson.Return.values();
        // "none or not known" stands last, as in every table
        List<ReportPerson.Return> order = List.of(answers[1], answers[2], answers[3], answers[0]);
        return new GroupCounts.Fact("return", "Back to full duties after absence", order.stream().map(ReportPerson.Return::label).toList(),
                person -> order.indexOf(person.back()));
    }

    private static PrintedGroupReport.Table table(GroupCounts.Protected counted, String note, boolean putRight) {
        WithheldTable table = counted.table();
        int answers = counted.fact().answers().size();
        List<String> columns = new ArrayList<>(List.of("Place"));
        columns.addAll(counted.fact().answers());
        columns.add("People");
        if (putRight) {
            columns.add("Share put right");
        }
        List<PrintedGroupReport.Row> rows = new ArrayList<>();
        int last = counted.places().size();
        for (int row = counted.places().size() == 1 ? last - 1 : 0; row <= (counted.places().size() == 1 ? last - 1 : last); row++) {
            List<String> cells = new ArrayList<>();
            for (int column = 0; column <= answers; column++) {
                OptionalInt shown = table.shown(row, column);
                cells.add(shown.isPresent() ? String.valueOf(shown.getAsInt()) : PrintedGroupReport.WITHHELD);
            }
            if (putRight) {
                cells.add(sharePutRight(table, row));
            }
            rows.add(new PrintedGroupReport.Row(row == last ? GroupCounts.ALL_PLACES : counted.places().get(row), cells));
        }
        return new PrintedGroupReport.Table(counted.fact().title(), note, columns, rows);
    }

    /** Worked out from numbers that stand beside it, and only where all of them do. */
    private static String sharePutRight(WithheldTable table, int row) {
        int found = 0;
        for (int column = 0; column < 3; column++) {
            if (table.shown(row, column).isEmpty()) {
                return PrintedGroupReport.WITHHELD;
            }
            found += table.shown(row, column).getAsInt();
        }
        return found < SmallNumbers.USUAL_FEWEST ? PrintedGroupReport.WITHHELD : Math.round(100.0 * table.shown(row, 0).getAsInt() / found) + " %";
    }
}
