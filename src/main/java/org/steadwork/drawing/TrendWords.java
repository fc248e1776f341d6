package org.steadwork.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A trend in words: labels and text alternative. */
final class TrendWords {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter FULL = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

    private final Trend trend;

    TrendWords(Trend trend) {
        this.trend = trend;
    }

    /**
     * A score with the decimals of the measure; one of a whole-numbered measure that is not whole shows one, for it was computed.
     * Rounded half up, with a true minus.
     */
    String score(double value) {
        return trend.decimals() == 0 ? number(value, 1)
                : BigDecimal.valueOf(value).setScale(trend.decimals(), RoundingMode.HALF_UP).toPlainString().replace('-', '−');
    }

    /** A width or a tick with as many decimals as it needs, at most two. */
    static String plain(double value) {
        return number(value, 2);
    }

    private static String number(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
        return (rounded.scale() < 0 ? rounded.setScale(0) : rounded).toPlainString().replace('-', '−');
    }

    String withUnit(String number) {
        return trend.unit().isBlank() ? number : number + " " + trend.unit();
    }

    String tick(LocalDate date) {
        return date.format(trend.severalYears() ? MONTH : DAY);
    }

    String errorLine() {
        return withUnit(score(trend.baseline()) + " ± " + plain(trend.error())) + ": no real change";
    }

    String importantFrom() {
        return "Important from " + withUnit(score(trend.importantFrom()));
    }

    String importanceLine() {
        return plain(trend.importance()) + " or more from " + withUnit(score(trend.baseline()));
    }

    /** A change of the plan as it stands in the key. */
    String mark(PlanMark mark) {
        return mark.date().format(FULL) + " · " + mark.kind().label + ": " + mark.text();
    }

    String alternative() {
        List<String> sentences = new ArrayList<>();
        sentences.add(trend.lowerIsBetter() ? "Lower is better" : "Higher is better");
        List<String> values = new ArrayList<>();
        for (Trend.Visit visit : trend.visits()) {
            values.add(visit.date().format(FULL) + ": " + (visit.score() == null ? "no score" : withUnit(score(visit.score()))));
        }
        sentences.add(String.join("; ", values));
        if (trend.baseline() != null && trend.error() != null) {
            sentences.add("Within measurement error: " + errorLine());
        }
        if (trend.importantFrom() != null) {
            sentences.add(importantFrom() + ", " + importanceLine());
        } else if (trend.baseline() != null && trend.importance() != null) {
            sentences.add("An important change, " + importanceLine() + ", lies beyond the instrument and cannot show");
        }
        if (!trend.scored().isEmpty() && trend.scored().size() < TrendChart.LEAST_FOR_A_LINE) {
            sentences.add("Fewer than three scores: no line is drawn");
        }
        if (!trend.marks().isEmpty()) {
            List<String> marks = new ArrayList<>();
            for (int i = 0; i < trend.marks().size(); i++) {
                PlanMark mark = trend.marks().get(i);
                marks.add(PlanMark.letter(i) + ", " + mark.date().format(FULL) + ", " + mark.kind().label.toLowerCase(Locale.ROOT) + ": " + mark.text());
            }
            sentences.add("Changes of plan: " + String.join("; ", marks));
        }
        return String.join(". ", sentences) + ".";
    }
}
