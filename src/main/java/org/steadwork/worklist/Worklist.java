package org.steadwork.worklist;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.steadwork.casefile.Attention;
import org.steadwork.web.Option;

/**
 * A page of what needs somebody, by urgency, the longest open first. The assistant's is hidden: its reasons are clinical.
 *
 * @param counts how many there are of each urgency on all pages
 * @param rules the rules that have entries, each with how many
 * @param waiting keys of the rules whose entries may be put off
 * @param upToDate false when the list is as it was last time, and may miss what happened since
 */
record Worklist(boolean shown, Filter filter, List<WorklistEntry> rows, Map<Attention.Urgency, Long> counts, List<Option> rules, List<Option> clinicians, Set<String> waiting, int pageSize,
        Snoozed snoozed, Cleared cleared, boolean upToDate) {

    /** Entries put off, the first {@code rows} of {@code count}. */
    record Snoozed(long count, List<Snooze> rows) {
    }

    /** Entries that left today, the first {@code rows} of {@code count}. */
    record Cleared(long count, List<WorklistEntry> rows) {
    }

    static Worklist hidden() {
        return new Worklist(false, null, List.of(), Map.of(), List.of(), List.of(), Set.of(), 1, new Snoozed(0, List.of()), new Cleared(0, List.of()), true);
    }

    public List<WorklistEntry> now() {
        return of(Attention.Urgency.NOW);
    }

    public List<WorklistEntry> today() {
        return of(Attention.Urgency.TODAY);
    }

    public List<WorklistEntry> soon() {
        return of(Attention.Urgency.SOON);
    }

    public long countNow() {
        return counts.getOrDefault(Attention.Urgency.NOW, 0L);
    }

    public long countToday() {
        return counts.getOrDefault(Attention.Urgency.TODAY, 0L);
    }

    public long countSoon() {
        return counts.getOrDefault(Attention.Urgency.SOON, 0L);
    }

    public long count() {
        return counts.values().stream().mapToLong(Long::longValue).sum();
    }

    public boolean empty() {
        return count() == 0;
    }

    public int pages() {
        return (int) Math.max(1, (count() + pageSize - 1) / pageSize);
    }

    public int first() {
        return (filter.page() - 1) * pageSize + 1;
    }

    public int last() {
        return first() + rows.size() - 1;
    }

    /** The address of the page before, or null. */
    public String earlier() {
        return filter.page() > 1 ? filter.href(filter.page() - 1) : null;
    }

    public String later() {
        return filter.page() < pages() ? filter.href(filter.page() + 1) : null;
    }

    public boolean canWait(WorklistEntry entry) {
        return waiting.contains(entry.rule());
    }

    /** True where there is something to choose from. */
    public boolean filterShown() {
        return !empty() || filter.narrowed();
    }

    public boolean all() {
        return filter.whose().all();
    }

    public String who() {
        return filter.whose().value();
    }

    public String rule() {
        return filter.rule();
    }

    public boolean narrowed() {
        return filter.narrowed();
    }

    public Long caseId() {
        return filter.caseId();
    }

    private List<WorklistEntry> of(Attention.Urgency urgency) {
        return rows.stream().filter(row -> row.urgency() == urgency).toList();
    }
}
