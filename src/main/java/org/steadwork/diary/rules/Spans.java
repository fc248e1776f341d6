package org.steadwork.diary.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Sets of spans of one day. */
public final class Spans {

    private Spans() {
    }

    /** Joins spans that touch or overlap; the result is in order. */
    public static List<Span> joined(Collection<Span> spans) {
        List<Span> joined = new ArrayList<>();
        for (Span span : spans.stream().sorted().toList()) {
            Span last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null && span.from() <= last.to()) {
                joined.set(joined.size() - 1, new Span(last.from(), Math.max(last.to(), span.to())));
            } else {
                joined.add(span);
            }
        }
        return List.copyOf(joined);
    }

    /** Returns what is left of {@code whole} without {@code taken}, in order. */
    public static List<Span> without(Collection<Span> whole, Collection<Span> taken) {
        List<Span> left = joined(whole);
        for (Span hole : joined(taken)) {
            List<Span> next = new ArrayList<>();
            for (Span span : left) {
                if (!span.overlaps(hole)) {
                    next.add(span);
                    continue;
                }
                if (span.from() < hole.from()) {
                    next.add(new Span(span.from(), hole.from()));
                }
                if (hole.to() < span.to()) {
                    next.add(new Span(hole.to(), span.to()));
                }
            }
            left = next;
        }
        return List.copyOf(left);
    }

    /** Returns what two sets have in common, in order. */
    public static List<Span> common(Collection<Span> one, Collection<Span> other) {
        return without(one, without(List.of(Span.wholeDay()), other));
    }

    /** True when one of the joined spans holds the wanted one whole. */
    public static boolean hold(Collection<Span> spans, Span wanted) {
        return joined(spans).stream().anyMatch(span -> span.holds(wanted));
    }

    /** Cuts a span at the full multiples of {@code piece} minutes, as free time is offered: 10:10 to 11:15 by 30 gives 10:10, 10:30, 11:00. */
    public static List<Span> pieces(Span span, int piece) {
        List<Span> pieces = new ArrayList<>();
        for (int from = span.from(); from < span.to(); ) {
            int to = Math.min(span.to(), (from / piece + 1) * piece);
            pieces.add(new Span(from, to));
            from = to;
        }
        return pieces;
    }
}
