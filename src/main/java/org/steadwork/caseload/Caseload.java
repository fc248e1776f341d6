package org.steadwork.caseload;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.steadwork.body.BodyRegion;
import org.steadwork.outcome.Instruments;
import org.steadwork.web.Form;
import org.steadwork.workplace.WorkplaceContent;

/** Puts the pages of the caseload together from the sums of the chosen cases. */
@ApplicationScoped
class Caseload {

    @Inject
    CaseOutcomes outcomes;

    @Inject
    QualityRecords records;

    @Inject
    SelectionForm selections;

    @Inject
    Definitions definitions;

    @Inject
    Instruments instruments;

    @Inject
    WorkplaceContent workplaces;

    @Inject
    KeptFigures kept;

    @Inject
    Clock clock;

    /** Counts one page; {@code everything} for a file, which holds also what a page leaves out, and is counted each time. */
    @Transactional
    CaseloadView view(CaseloadTab tab, Form asked, boolean everything) {
        Form form = selections.withDefaults(asked);
        SelectionForm.Offers offers = selections.offers();
        Optional<Selection> selection = selections.read(form, offers);
        Optional<List<TimeFigures.Group>> compared = tab == CaseloadTab.TIME ? compared(form, offers) : Optional.empty();
        if (selection.isEmpty() || form.hasErrors()) {
            return new CaseloadView(tab, form, offers, new KeptFigures.Counted(-1, List.of(), clock.instant()), definitions);
        }
        LocalDate today = LocalDate.now(clock);
        List<String> groups = compared.isEmpty() ? List.of() : List.of(form.value("first").strip(), form.value("second").strip());
        KeptFigures.Counted counted = everything ? counted(tab, selection.get(), compared, today, true)
                : kept.of(new KeptFigures.Asked(tab, selection.get(), groups, today), () -> counted(tab, selection.get(), compared, today, false));
        return new CaseloadView(tab, form, offers, counted, definitions);
    }

    private KeptFigures.Counted counted(CaseloadTab tab, Selection selection, Optional<List<TimeFigures.Group>> compared, LocalDate today, boolean everything) {
        Instant now = clock.instant();
        List<CaseOutcome> rows = selection.read(outcomes);
        List<Section> sections = rows.isEmpty() ? List.of() : switch (tab) {
            case OUTCOMES -> new OutcomeFigures(rows, instruments, definitions).sections();
            case TIME -> new TimeFigures(rows, definitions, today).sections(compared);
            case WORK_PLACE -> new WorkplaceFigures(rows, definitions, workplaces, everything).sections();
            case QUALITY -> List.of(new QualityFigures(rows, records.of(selection, now.minus(definitions.unsignedHours(), ChronoUnit.HOURS)),
                    definitions, instruments, today).section());
        };
        return new KeptFigures.Counted(rows.size(), sections, now);
    }

    /** Reads the two groups to compare: both or none, and not the same twice. */
    private Optional<List<TimeFigures.Group>> compared(Form form, SelectionForm.Offers offers) {
        if (!form.has("first") && !form.has("second")) {
            return Optional.empty();
        }
        List<TimeFigures.Group> groups = new ArrayList<>();
        for (String field : List.of("first", "second")) {
            String value = form.value(field).strip();
            Optional<String> label = SelectionForm.label(offers.groups(), value);
            if (label.isEmpty()) {
                form.error(field, value.isEmpty() ? "Choose the " + field + " group too." : "Choose one of the groups offered.");
            } else {
                groups.add(new TimeFigures.Group(label.get(), member(value)));
            }
        }
        if (!form.hasErrors() && form.value("first").strip().equals(form.value("second").strip())) {
            form.error("second", "Choose two different groups.");
        }
        return form.hasErrors() ? Optional.empty() : Optional.of(groups);
    }

    private Predicate<CaseOutcome> member(String key) {
        String name = key.substring(key.indexOf('-') + 1);
        if (key.startsWith("region-")) {
            Set<BodyRegion> regions = selections.regions(name);
            return row -> row.region() != null && regions.contains(row.region());
        }
        if (key.startsWith("employer-")) {
            Long employer = Long.valueOf(name);
            return row -> employer.equals(row.employerId());
        }
        return row -> row.assessed() == name.equals("yes");
    }
}
