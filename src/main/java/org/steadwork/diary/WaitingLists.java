package org.steadwork.diary;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.steadwork.diary.rules.Span;
import org.steadwork.diary.rules.Spans;

/** Who waits, and who of them fits a free gap. */
@ApplicationScoped
class WaitingLists {

    private static final String WHOLE = "from WaitingEntry w join fetch w.patient left join fetch w.caseFile c left join fetch w.clinician"
            + " left join fetch w.appointment ";

    @Inject
    EntityManager db;

    @Inject
    DiaryContent content;

    /** An entry that fits; {@code preferred} when the time lies in a part of the day it asked for. */
    record Fit(WaitingEntry entry, int minutes, boolean preferred) {
    }

    /** All who wait, in the order in which they are served. */
    List<WaitingEntry> open() {
        return db.createQuery(WHOLE + "where w.endedAt is null and (c is null or c.closedOn is null)", WaitingEntry.class).getResultStream()
                .sorted(Comparator.comparing(WaitingEntry::priority).thenComparing(WaitingEntry::sinceOn).thenComparing(WaitingEntry::id)).toList();
    }

    Optional<WaitingEntry> whole(long id) {
        return db.createQuery(WHOLE + "where w.id = ?1", WaitingEntry.class).setParameter(1, id).getResultStream().findFirst();
    }

    /** Who fits a start with a clinician, in order: priority, then whether the time suits, then who has waited longest. */
    List<Fit> fitting(Openings openings, long clinicianId, LocalDate day, int start, List<WaitingEntry> waiting) {
        return waiting.stream().filter(entry -> entry.wants(day, clinicianId)).filter(entry -> fits(openings, entry, clinicianId, day, start))
                .map(entry -> new Fit(entry, content.length(entry.kind()).minutes(), suits(entry, start)))
                .sorted(Comparator.<Fit, WaitingEntry.Priority>comparing(fit -> fit.entry().priority()).thenComparing(fit -> !fit.preferred())
                        .thenComparing(fit -> fit.entry().sinceOn()).thenComparing(fit -> fit.entry().id())).toList();
    }

    private boolean fits(Openings openings, WaitingEntry entry, long clinicianId, LocalDate day, int start) {
        DiaryContent.Length length = content.length(entry.kind());
        return start + length.minutes() <= Span.DAY && Spans.hold(openings.fitting(clinicianId, entry.patient().id(), length.room(), day),
                new Span(start, start + length.minutes()));
    }

    private boolean suits(WaitingEntry entry, int start) {
        return entry.times().isEmpty() || entry.times().stream().map(content::partOfDay).flatMap(Optional::stream)
                .anyMatch(part -> part.span().from() <= start && start < part.span().to());
    }

    /** The parts of the day an entry asks for, in words. */
    String times(WaitingEntry entry) {
        return entry.times().isEmpty() ? "any time" : entry.times().stream().map(content::partOfDay).flatMap(Optional::stream)
                .map(part -> part.label().toLowerCase()).reduce((a, b) -> a + ", " + b).orElse("any time");
    }
}
