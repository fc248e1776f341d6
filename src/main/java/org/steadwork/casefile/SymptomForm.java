package org.steadwork.casefile;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.steadwork.body.BodyChart;
import org.steadwork.body.SymptomKind;
import org.steadwork.body.Zone;
import org.steadwork.kernel.Answer;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;

/** A symptom report as typed: read once, checked field by field. Fields of a zone end in its key: {@code now-low_back}. */
record SymptomForm(LocalDate reportedOn, boolean symptomFree, SymptomPattern pattern, List<RegionReading> readings) {

    static final String NOT_ASKED = "not_asked";

    private static final int LONGEST_SINCE = 80;
    private static final int LONGEST_LINE = 400;

    static SymptomForm read(Form form, CaseFile file, BodyChart chart, LocalDate today) {
        LocalDate reportedOn = reportedOn(form, file, today);
        SymptomPattern pattern = new SymptomPattern(answer(form, "course", "Course over the day", CourseOverDay.class,
                CourseOverDay.NOT_ASKED), answer(form, "nightWaking", "Wakes at night", Answer.class, Answer.NOT_ASKED),
                answer(form, "coughOrSneeze", "Cough or sneeze", Answer.class, Answer.NOT_ASKED),
                form.text("aggravating", LONGEST_LINE), form.text("easing", LONGEST_LINE), form.text("ownWords", 4000));
        List<RegionReading> readings = new ArrayList<>();
        for (Zone zone : zones(form, chart)) {
            readings.add(reading(form, zone, file.patient().birthDate(), reportedOn == null ? today : reportedOn));
        }
        boolean symptomFree = form.ticked("symptomFree");
        if (symptomFree && !readings.isEmpty()) {
            form.error("symptomFree", "“No symptoms today” cannot stand beside a marked zone. Untick it, or remove the zones.");
        } else if (!symptomFree && readings.isEmpty()) {
            form.error("add", "Mark at least one zone, or tick “No symptoms today”.");
        }
        return new SymptomForm(reportedOn, symptomFree, pattern, readings);
    }

    /** Returns the zones named in the form, in the order of the chart; one that is not on the chart is an error. */
    static List<Zone> zones(Form form, BodyChart chart) {
        Set<String> keys = new LinkedHashSet<>(form.values("zone"));
        if (keys.stream().anyMatch(key -> chart.find(key).isEmpty())) {
            form.error("add", "One of the zones is not on the body chart. Choose zones from the drawing or the list.");
        }
        return chart.zones().stream().filter(zone -> keys.contains(zone.key())).toList();
    }

    static Form show(SymptomReport report) {
        Form form = show(report.reportedOn(), report.pattern(), report.readings()).with("version", report.version());
        return form.with("symptomFree", report.symptomFree() ? "yes" : null);
    }

    /** Shows the start of a new report: zones, kinds and what stays true are taken over, scores and answers are asked anew. */
    static Form start(SymptomReport previous, LocalDate today) {
        SymptomPattern before = previous.pattern();
        SymptomPattern anew = new SymptomPattern(CourseOverDay.NOT_ASKED, Answer.NOT_ASKED, Answer.NOT_ASKED, before.aggravating(),
                before.easing(), null);
        return show(today, anew, previous.readings().stream().map(RegionReading::askedAnew).toList());
    }

    static Form blank(LocalDate today) {
        return show(today, SymptomPattern.notAsked(), List.of());
    }

    private static Form show(LocalDate reportedOn, SymptomPattern pattern, List<RegionReading> readings) {
        Form form = Form.empty().with("reportedOn", Dates.shown(reportedOn)).with("course", key(pattern.course()))
                .with("nightWaking", key(pattern.nightWaking())).with("coughOrSneeze", key(pattern.coughOrSneeze()))
                .with("aggravating", pattern.aggravating()).with("easing", pattern.easing()).with("ownWords", pattern.ownWords())
                .withAll("zone", readings.stream().map(RegionReading::zone).toList());
        for (RegionReading reading : readings) {
            for (PainScale scale : PainScale.values()) {
                Integer score = scale.of(reading);
                form.with(field(scale, reading.zone()), score == null ? NOT_ASKED : score);
            }
            for (SymptomKind kind : SymptomKind.values()) {
                form.with(field(kind, reading.zone()), reading.kinds().contains(kind) ? kind.key() : null);
            }
            form.with("since-" + reading.zone(), reading.since()).with("pattern-" + reading.zone(), reading.pattern());
        }
        return form;
    }

    static String field(PainScale scale, String zone) {
        return scale.key() + "-" + zone;
    }

    static String field(SymptomKind kind, String zone) {
        return kind.key() + "-" + zone;
    }

    private static LocalDate reportedOn(Form form, CaseFile file, LocalDate today) {
        LocalDate day = form.requiredDate("reportedOn", "Date of the report");
        if (day == null) {
            return null;
        }
        String entered = " You entered " + Dates.shown(day) + ".";
        if (day.isAfter(today)) {
            form.error("reportedOn", "A report cannot lie in the future; today is " + Dates.shown(today) + "." + entered);
        } else if (day.isBefore(file.patient().birthDate())) {
            form.error("reportedOn", "A report cannot lie before the patient was born, " + Dates.shown(file.patient().birthDate())
                    + "." + entered);
        } else if (day.isBefore(file.openedOn())) {
            form.error("reportedOn", "A report cannot lie before the case was opened, " + Dates.shown(file.openedOn()) + "." + entered);
        } else if (file.closedOn() != null && day.isAfter(file.closedOn())) {
            form.error("reportedOn", "A report cannot lie after the case was closed, " + Dates.shown(file.closedOn()) + "." + entered);
        }
        return day;
    }

    private static RegionReading reading(Form form, Zone zone, LocalDate birth, LocalDate reportedOn) {
        Map<PainScale, Integer> scores = new EnumMap<>(PainScale.class);
        for (PainScale scale : PainScale.values()) {
            scores.put(scale, score(form, zone, scale));
        }
        Set<SymptomKind> kinds = EnumSet.noneOf(SymptomKind.class);
        for (SymptomKind kind : SymptomKind.values()) {
            if (form.ticked(field(kind, zone.key()))) {
                kinds.add(kind);
            }
        }
        return new RegionReading(zone.key(), scores.get(PainScale.NOW), scores.get(PainScale.WORST), scores.get(PainScale.AVERAGE),
                scores.get(PainScale.AT_WORK), scores.get(PainScale.LIMITS_WORK), kinds, since(form, zone, birth, reportedOn),
                form.text("pattern-" + zone.key(), LONGEST_LINE));
    }

    private static Integer score(Form form, Zone zone, PainScale scale) {
        String field = field(scale, zone.key());
        String typed = form.value(field).strip();
        if (typed.isEmpty() || typed.equals(NOT_ASKED)) {
            return null;
        }
        if (!typed.matches("10|[0-9]")) {
            form.error(field, zone.label() + ", " + scale.spoken() + ": choose 0 to 10, or “Not asked”.");
            return null;
        }
        return Integer.valueOf(typed);
    }

    /** Reads a date or words; a date must lie between birth and the report, words are kept as they are. */
    private static String since(Form form, Zone zone, LocalDate birth, LocalDate reportedOn) {
        String field = "since-" + zone.key();
        String typed = form.text(field, LONGEST_SINCE);
        if (typed == null) {
            return null;
        }
        try {
            LocalDate day = Dates.parse(typed);
            if (day.isAfter(reportedOn) || day.isBefore(birth)) {
                form.error(field, zone.label() + ": “since” lies between birth and the report, " + Dates.shown(reportedOn)
                        + ". You entered " + Dates.shown(day) + ".");
            }
            return Dates.shown(day);
        } catch (DateTimeException e) {
            if (typed.matches("[\\d./-]+")) {
                form.error(field, zone.label() + ": “since” must be a date, for example 4 Mar 2030, or words, for example about"
                        + " three years. You entered “" + typed + "”.");
            }
            return typed;
        }
    }

    private static <E extends Enum<E>> E answer(Form form, String field, String label, Class<E> type, E notAsked) {
        E answer = form.choice(field, label, type);
        return answer == null ? notAsked : answer;
    }

    private static String key(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
