package org.steadwork.drawing;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;

/**
 * Work status over time as one band: its height is how much of the usual work is done, its edge tells what is not known.
 * Every spell has its word, beside the band or in the table under it; nothing is told by colour alone.
 *
 * @param spells in order of time, not overlapping, at least one
 * @param from first day of the axis, or the first spell if that is earlier
 * @param until last day of the axis, on or after every spell's first day
 */
public record WorkTimeline(List<Spell> spells, LocalDate from, LocalDate until) {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d\u00a0MMM", Locale.ENGLISH);
    private static final int LEFT = 4;
    private static final int RIGHT = 4;
    private static final double TOP = 26;
    private static final double HEIGHT = 56;
    private static final double BASE = TOP + HEIGHT;
    private static final double LETTER = 7;

    /** What work is during a spell; {@code share} of the band's height it fills. */
    public enum Kind {
        FULL(1), CHANGED(1), FEWER_HOURS(0.55), OFF(0.12), AWAY(0.12), UNKNOWN(1);

        private final double share;

        Kind(double share) {
            this.share = share;
        }
    }

    /**
     * One spell from its first day to its last, both included.
     *
     * @param details may be blank
     * @param share of the usual hours, in (0, 1], where hours are fewer and both are known; null otherwise
     */
    public record Spell(LocalDate from, LocalDate until, Kind kind, String label, String details, Double share) {
        public Spell {
            if (share != null && !(share > 0 && share <= 1)) {
                throw new IllegalArgumentException("A share of the usual hours lies above 0 and up to 1, but was " + share);
            }
        }

        double height() {
            return kind == Kind.FEWER_HOURS && share != null ? Math.max(Kind.OFF.share * 2, share) : kind.share;
        }

        String full() {
            return details.isBlank() ? label : label + ", " + details;
        }
    }

    public WorkTimeline {
        spells = List.copyOf(spells);
        if (spells.isEmpty()) {
            throw new IllegalArgumentException("A timeline has at least one spell");
        }
        from = spells.get(0).from().isBefore(from) ? spells.get(0).from() : from;
        if (until.isBefore(from)) {
            throw new IllegalArgumentException("A timeline ends on or after its start, " + from + ", but the end was " + until);
        }
    }

    /** The timeline in three sizes, one after the other; the page's style sheet shows the one that fits. */
    public static String figure(WorkTimeline line) {
        return line.draw("wide", 880) + line.draw("mid", 600) + line.draw("narrow", 328);
    }

    /** The timeline in words. */
    public String alternative() {
        return String.join("; ", spells.stream().map(spell -> spell.full() + " from "
                + DAY.format(spell.from()) + " to " + DAY.format(spell.until())).toList()) + ".";
    }

    private String draw(String size, int width) {
        StringBuilder out = new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"" + size + "\" viewBox=\"0 0 " + width + " 106\" width=\""
                + width + "\" height=\"106\" role=\"img\" focusable=\"false\" aria-labelledby=\"wt-" + size + " wd-" + size + "\"><title id=\"wt-" + size
                + "\">Work status over time</title><desc id=\"wd-" + size + "\">" + SvgText.escape(alternative()) + "</desc>");
        line(out, LEFT, TOP, width - RIGHT, TOP, "stroke=\"#b8b0a4\" stroke-dasharray=\"2 3\"");
        for (Spell spell : spells) {
            spell(out, spell, width);
        }
        line(out, LEFT, BASE, width - RIGHT, BASE, "stroke=\"#1d2733\"");
        text(out, LEFT, BASE + 18, "start", DAY.format(from), false);
        text(out, width - RIGHT, BASE + 18, "end", DAY.format(until), false);
        dates(out, width);
        return out.append("</svg>\n").toString();
    }

    private void spell(StringBuilder out, Spell spell, int width) {
        double x = x(spell.from(), width);
        double wide = Math.max(2, x(spell.until().plusDays(1), width) - x);
        double high = HEIGHT * spell.height();
        out.append("<rect x=\"").append(round(x)).append("\" y=\"").append(round(BASE - high)).append("\" width=\"").append(round(wide))
                .append("\" height=\"").append(round(high)).append("\" ").append(paint(spell.kind())).append("/>");
        String words = wide >= spell.full().length() * LETTER + 6 ? spell.full() : spell.label();
        if (wide >= words.length() * LETTER + 6) {
            text(out, x + 3, TOP - 9, "start", words, true);
        }
    }

    // first days in between, as far as they have room
    private void dates(StringBuilder out, int width) {
        double free = LEFT + 52;
        for (Spell spell : spells.subList(1, spells.size())) {
            double x = x(spell.from(), width);
            if (x > free && x < width - RIGHT - 100) {
                text(out, x, BASE + 18, "start", DAY.format(spell.from()), false);
                free = x + 52;
            }
        }
    }

    private static String paint(Kind kind) {
        return switch (kind) {
            case FULL -> "fill=\"#6b2d5c\"";
            case CHANGED -> "fill=\"#d9c6d3\" stroke=\"#6b2d5c\" stroke-width=\"1.5\"";
            case FEWER_HOURS -> "fill=\"#6b2d5c\"";
            case OFF -> "fill=\"#1d2733\"";
            case AWAY -> "fill=\"#faf7f2\" stroke=\"#1d2733\"";
            case UNKNOWN -> "fill=\"none\" stroke=\"#56606b\" stroke-dasharray=\"4 3\"";
        };
    }

    private double x(LocalDate day, int width) {
        double days = ChronoUnit.DAYS.between(from, until) + 1;
        return LEFT + Math.min(days, ChronoUnit.DAYS.between(from, day)) / days * (width - LEFT - RIGHT);
    }

    private static void line(StringBuilder out, double x1, double y1, double x2, double y2, String look) {
        out.append("<line x1=\"").append(round(x1)).append("\" y1=\"").append(round(y1)).append("\" x2=\"").append(round(x2)).append("\" y2=\"")
                .append(round(y2)).append("\" ").append(look).append("/>");
    }

    private static void text(StringBuilder out, double x, double y, String anchor, String words, boolean bold) {
        out.append("<text x=\"").append(round(x)).append("\" y=\"").append(round(y)).append("\" font-size=\"13\" text-anchor=\"").append(anchor).append("\"")
                .append(bold ? " class=\"t-b\" font-weight=\"700\" fill=\"#1d2733\"" : " fill=\"#56606b\"").append(">").append(SvgText.escape(words))
                .append("</text>");
    }

    private static String round(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
