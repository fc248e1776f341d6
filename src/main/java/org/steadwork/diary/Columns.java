package org.steadwork.diary;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.steadwork.diary.rules.ClinicTime;
import org.steadwork.diary.rules.Span;
import org.steadwork.diary.rules.Spans;

/** Lays a day of a clinician or a room out as blocks without gaps, from the earliest to the latest time shown. */
final class Columns {

    private static final int HALF_HOUR = 30;

    private final Openings openings;
    private final Span shown;
    private final int piece;
    private final LocalDate today;
    private final int now;
    private final ZoneId zone;

    /**
     * @param piece length in which free time is offered
     * @param now   minutes of today that have passed
     */
    Columns(Openings openings, List<LocalDate> days, int piece, LocalDate today, int now, ZoneId zone) {
        this.openings = openings;
        this.piece = piece;
        this.today = today;
        this.now = now;
        this.zone = zone;
        List<Span> all = new ArrayList<>();
        for (LocalDate day : days) {
            openings.clinicians().forEach(one -> all.addAll(openings.usual(one.id(), day)));
            openings.live(day).forEach(one -> all.add(one.span()));
        }
        int from = all.stream().mapToInt(Span::from).min().orElse(0);
        int to = all.stream().mapToInt(Span::to).max().orElse(0);
        shown = from >= to ? null : new Span(from / HALF_HOUR * HALF_HOUR, Math.min(Span.DAY, (to + HALF_HOUR - 1) / HALF_HOUR * HALF_HOUR));
    }

    List<Block> ofClinician(long id, LocalDate day, String bookHref) {
        List<Appointment> booked = openings.live(day).stream().filter(one -> one.clinician().id() == id).toList();
        List<Span> usual = openings.usual(id, day);
        List<Block> away = new ArrayList<>();
        for (Leave leave : openings.away(id, day)) {
            Spans.without(Spans.common(usual, List.of(leave.span())), spans(booked)).forEach(span -> away.add(Block.plain("away", span, leave.words())));
        }
        return blocks(day, booked, openings.free(id, day), away, false, bookHref);
    }

    List<Block> ofRoom(long id, LocalDate day, String bookHref) {
        List<Appointment> booked = openings.live(day).stream().filter(one -> one.room() != null && one.room().id() == id).toList();
        return blocks(day, booked, openings.freeRoom(id, day), List.of(), true, bookHref);
    }

    /** Appointments that take no room: several may lie at one time, so they are a list. */
    List<Block> elsewhere(LocalDate day) {
        return openings.live(day).stream().filter(one -> one.room() == null).map(one -> Block.booked(one, true, day.equals(today), zone, false)).toList();
    }

    private List<Block> blocks(LocalDate day, List<Appointment> booked, List<Span> free, List<Block> away, boolean byRoom, String bookHref) {
        if (shown == null) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>(away);
        booked.forEach(one -> blocks.add(Block.booked(one, byRoom, day.equals(today), zone, true)));
        Function<Span, Block> offer = span -> passed(day, span) ? Block.plain("past", span, "free, passed") : Block.free(span, bookHref + "&start="
                + ClinicTime.shown(span.from()));
        free.forEach(span -> Spans.pieces(span, piece).forEach(part -> blocks.add(offer.apply(part))));
        List<Span> covered = Spans.joined(blocks.stream().map(Block::span).toList());
        Spans.without(List.of(shown), covered).forEach(span -> blocks.add(Block.plain("shut", span, "No visits")));
        blocks.sort(Comparator.comparing(Block::span));
        return blocks;
    }

    private boolean passed(LocalDate day, Span span) {
        return day.isBefore(today) || day.equals(today) && span.to() <= now;
    }

    private static List<Span> spans(List<Appointment> booked) {
        return booked.stream().map(Appointment::span).toList();
    }
}
