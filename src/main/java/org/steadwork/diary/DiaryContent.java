package org.steadwork.diary;

import io.quarkus.runtime.Startup;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.DayOfWeek;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.config.Config;
import org.steadwork.casefile.VisitKind;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.diary.rules.ClinicTime;
import org.steadwork.diary.rules.Span;
import org.steadwork.web.Option;

/** How long visits take, what is offered and when days begin, from the content and the clinic's own settings; checked once at the start. */
@Startup
@ApplicationScoped
class DiaryContent {

    /** Every start and length is a multiple of so many minutes; the database keeps one row for each such cell. */
    static final int GRID = 5;
    private static final int SHORTEST = 5;
    private static final int LONGEST = 480;

    /** How long a kind of visit takes, and whether it needs a room of the clinic. */
    record Length(int minutes, boolean room) {
    }

    /** A part of the day that a patient may prefer. */
    record PartOfDay(String key, String label, Span span) {
    }

    private final Map<VisitKind, Length> lengths;
    private final Map<DayOfWeek, List<Span>> usualWeek;
    private final List<PartOfDay> partsOfDay;
    private final int offered;
    private final int reviewDaysAround;
    private final int lateCancelHours;
    private final int reminderHours;

    @Inject
    DiaryContent(Config settings) {
        this(Content.yaml("diary/diary.yaml"), settings);
    }

    DiaryContent(Entry entry, Config settings) {
        entry.text("source");
        if (entry.integer("grid_minutes") != GRID) {
            throw entry.problem("'grid_minutes' must be " + GRID);
        }
        offered = onGrid(entry, "offered_minutes", entry.integer("offered_minutes"));
        lengths = lengths(entry, settings);
        usualWeek = week(entry);
        partsOfDay = entry.entries("times_of_day").stream().map(DiaryContent::part).toList();
        reviewDaysAround = one(entry, "review_days_around").integer("days");
        lateCancelHours = one(entry, "late_cancel").integer("hours");
        reminderHours = settings.getOptionalValue("steadwork.diary.reminder-hours", Integer.class).orElse(48);
    }

    private static Map<VisitKind, Length> lengths(Entry entry, Config settings) {
        Map<VisitKind, Length> lengths = new EnumMap<>(VisitKind.class);
        for (Entry written : entry.entries("lengths")) {
            written.text("source");
            VisitKind kind = written.constant("kind", VisitKind.class);
            String own = "steadwork.diary.minutes." + kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
            int minutes = settings.getOptionalValue(own, Integer.class).orElse(written.integer("minutes"));
            lengths.put(kind, new Length(onGrid(written, own, minutes), written.flag("room")));
        }
        for (VisitKind kind : VisitKind.values()) {
            if (!lengths.containsKey(kind)) {
                throw entry.problem("'lengths' says nothing of " + kind.name().toLowerCase(Locale.ROOT));
            }
        }
        return lengths;
    }

    private static int onGrid(Entry entry, String key, int minutes) {
        if (minutes < SHORTEST || minutes > LONGEST || minutes % GRID != 0) {
            throw entry.problem("'" + key + "' must be a multiple of " + GRID + " from " + SHORTEST + " to " + LONGEST + ", but is " + minutes);
        }
        return minutes;
    }

    private static Map<DayOfWeek, List<Span>> week(Entry entry) {
        Map<DayOfWeek, List<Span>> week = new EnumMap<>(DayOfWeek.class);
        for (Entry days : entry.entries("usual_hours")) {
            days.text("source");
            for (String day : days.texts("days")) {
                try {
                    week.put(DayOfWeek.valueOf(day.toUpperCase(Locale.ROOT)), WeekColumn.read(days.text("hours")));
                } catch (IllegalArgumentException e) {
                    throw days.problem("not the hours of a weekday: " + day + " " + days.text("hours"));
                }
            }
        }
        return week;
    }

    private static PartOfDay part(Entry entry) {
        entry.text("source");
        int from = ClinicTime.read(entry.text("from")).orElseThrow(() -> entry.problem("'from' must be a time"));
        int to = ClinicTime.read(entry.text("to")).orElseThrow(() -> entry.problem("'to' must be a time"));
        return new PartOfDay(entry.text("key"), entry.text("label"), new Span(from, to));
    }

    private static Entry one(Entry entry, String key) {
        Entry one = entry.entry(key).orElseThrow(() -> entry.problem("'" + key + "' is missing"));
        one.text("source");
        return one;
    }

    Length length(VisitKind kind) {
        return lengths.get(kind);
    }

    /** The lengths in a sentence, for the hint of a form. */
    String lengthsInWords() {
        return lengths.entrySet().stream().map(one -> one.getKey().label().toLowerCase(Locale.ROOT) + " " + one.getValue().minutes())
                .reduce((a, b) -> a + ", " + b).orElse("");
    }

    Map<DayOfWeek, List<Span>> usualWeek() {
        return usualWeek;
    }

    List<PartOfDay> partsOfDay() {
        return partsOfDay;
    }

    Optional<PartOfDay> partOfDay(String key) {
        return partsOfDay.stream().filter(part -> part.key().equals(key)).findFirst();
    }

    List<Option> partOptions() {
        return partsOfDay.stream().map(part -> new Option(part.key(), part.label())).toList();
    }

    int offered() {
        return offered;
    }

    int reviewDaysAround() {
        return reviewDaysAround;
    }

    int lateCancelHours() {
        return lateCancelHours;
    }

    int reminderHours() {
        return reminderHours;
    }

    static int longest() {
        return LONGEST;
    }
}
