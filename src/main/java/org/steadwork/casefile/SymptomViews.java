package org.steadwork.casefile;

import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.steadwork.body.BodyChart;
import org.steadwork.body.Mark;
import org.steadwork.body.SymptomKind;
import org.steadwork.body.View;
import org.steadwork.body.Zone;
import org.steadwork.casefile.SymptomView.ChartKey;
import org.steadwork.casefile.SymptomView.Comparison;
import org.steadwork.casefile.SymptomView.KindBox;
import org.steadwork.casefile.SymptomView.PastReport;
import org.steadwork.casefile.SymptomView.RegionRow;
import org.steadwork.casefile.SymptomView.ScaleRow;
import org.steadwork.casefile.SymptomView.Swatch;
import org.steadwork.casefile.SymptomView.ZoneGroup;
import org.steadwork.drawing.BodyChartDrawing;
import org.steadwork.kernel.Answer;
import org.steadwork.web.Form;
import org.steadwork.web.Initial;
import org.steadwork.web.Option;

/** Makes what the page of symptoms shows out of a form and the stored reports; asks the database nothing. */
@Singleton
class SymptomViews {

    private static final List<String> CELLS = IntStream.rangeClosed(0, 10).mapToObj(String::valueOf).toList();
    /** Stand in the row that the script copies, and are replaced there. */
    private static final String BLANK_KEY = "zone-key";
    private static final String BLANK_LABEL = "zone-label";

    private final BodyChart chart;
    private final BodyChartDrawing drawing;
    private final Clock clock;
    private final ChartKey key;

    SymptomViews(BodyChart chart, BodyChartDrawing drawing, Clock clock) {
        this.chart = chart;
        this.clock = clock;
        this.drawing = drawing;
        List<Swatch> swatches = new ArrayList<>();
        for (SymptomKind kind : SymptomKind.values()) {
            swatches.add(new Swatch(drawing.swatch(kind), kind.label()));
        }
        swatches.add(new Swatch(drawing.swatch(null), "kind not said"));
        this.key = new ChartKey(drawing.ramp(), swatches);
    }

    /**
     * Makes a page.
     *
     * @param report the stored report that the form changes, or null for a new one
     * @param all    every report of the case, the latest first
     * @param added  zone whose row takes the focus, or null
     * @param theirs on a conflict, the differences from what is stored; else empty
     */
    SymptomView view(CaseFile file, Form form, SymptomReport report, List<SymptomReport> all, String added,
            List<SymptomChanges.Change> theirs) {
        SymptomReport before = before(report, all);
        Map<String, RegionReading> was = before == null ? Map.of()
                : before.readings().stream().collect(Collectors.toMap(RegionReading::zone, Function.identity()));
        List<RegionRow> rows = SymptomForm.zones(form, chart).stream().map(zone -> row(form, zone, was.get(zone.key()))).toList();
        RegionRow blank = row(Form.empty(), BLANK_KEY, BLANK_LABEL, null);
        String action = CaseTab.SYMPTOMS.href(file.id()) + "/" + (report == null ? "new" : report.id());
        return new SymptomView(action, form, drawing.interactive("body", marks(form)), key, rows, blank, added, zoneGroups(),
                new SymptomView.Answers(Option.of(CourseOverDay.class, CourseOverDay::label),
                        Option.of(Answer.class, answer -> Initial.large(answer.label()))),
                report, start(file, all), comparison(report, before), theirs, past(report, all));
    }

    /** Returns the report before this one, or before a new one. */
    private static SymptomReport before(SymptomReport report, List<SymptomReport> all) {
        return all.stream().filter(other -> report == null || other.reportedOn().isBefore(report.reportedOn())).findFirst()
                .orElse(null);
    }

    /** Returns the latest report, from which today's may be started; null when today has one or the case is closed. */
    private SymptomReport start(CaseFile file, List<SymptomReport> all) {
        return all.isEmpty() || !file.open() || all.get(0).reportedOn().equals(LocalDate.now(clock)) ? null : all.get(0);
    }

    private RegionRow row(Form form, Zone zone, RegionReading was) {
        return row(form, zone.key(), zone.label(), was);
    }

    private static RegionRow row(Form form, String key, String label, RegionReading was) {
        List<KindBox> kinds = Arrays.stream(SymptomKind.values()).map(kind -> new KindBox(SymptomForm.field(kind, key), kind.key(),
                kind.label(), form.ticked(SymptomForm.field(kind, key)))).toList();
        List<ScaleRow> scales = Arrays.stream(PainScale.values()).map(scale -> scale(form, key, scale, was)).toList();
        Integer worst = number(form, key, PainScale.WORST);
        boolean contradiction = worst != null && List.of(PainScale.NOW, PainScale.AVERAGE).stream()
                .map(scale -> number(form, key, scale)).anyMatch(score -> score != null && score > worst);
        return new RegionRow(key, label, kinds, scales, contradiction);
    }

    private static ScaleRow scale(Form form, String key, PainScale scale, RegionReading was) {
        String field = SymptomForm.field(scale, key);
        String typed = form.value(field).strip();
        Integer before = was == null ? null : scale.of(was);
        return new ScaleRow(field, scale.label(), scale.spoken(), CELLS, typed.isEmpty() ? SymptomForm.NOT_ASKED : typed,
                before == null ? null : "was " + before, scale == PainScale.NOW, scale.least(), scale.most(), form.error(field));
    }

    private static Integer number(Form form, String key, PainScale scale) {
        String typed = form.value(SymptomForm.field(scale, key)).strip();
        return CELLS.contains(typed) ? Integer.valueOf(typed) : null;
    }

    private List<Mark> marks(Form form) {
        return SymptomForm.zones(form, chart).stream().map(zone -> {
            Set<SymptomKind> kinds = EnumSet.noneOf(SymptomKind.class);
            for (SymptomKind kind : SymptomKind.values()) {
                if (form.ticked(SymptomForm.field(kind, zone.key()))) {
                    kinds.add(kind);
                }
            }
            return new Mark(zone.key(), number(form, zone.key(), PainScale.NOW), kinds);
        }).toList();
    }

    private List<ZoneGroup> zoneGroups() {
        return Arrays.stream(View.values()).map(view -> new ZoneGroup(view.label(),
                chart.zones(view).stream().map(zone -> new Option(zone.key(), zone.label())).toList())).toList();
    }

    private Comparison comparison(SymptomReport report, SymptomReport before) {
        if (report == null || before == null) {
            return null;
        }
        List<Mark> both = new ArrayList<>(before.marks());
        both.addAll(report.marks());
        Set<View> views = drawing.views(both);
        return new Comparison(before, drawing.small("before", before.marks(), views), drawing.small("this", report.marks(), views),
                drawing.sideNote(views), SymptomChanges.between(before.pattern(), before.readings(), report.pattern(), report.readings(), chart));
    }

    private List<PastReport> past(SymptomReport shown, List<SymptomReport> all) {
        return all.stream().map(report -> new PastReport(report, report.symptomFree() ? "No symptoms" : drawing.words(report.marks()),
                report == shown)).toList();
    }
}
