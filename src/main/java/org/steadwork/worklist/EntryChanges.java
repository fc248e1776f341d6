package org.steadwork.worklist;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.steadwork.account.AuditEvent;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseScope;

/** Brings the stored entries of some cases in line with what the rules say of them, and ends what was put off when it must. */
@ApplicationScoped
class EntryChanges {

    /** How many cases one query names at most. */
    private static final int PART = 500;
    private static final int MOST_ACTS = 3;
    private static final int LONGEST_ACT = 400;

    private record Key(long caseId, String rule, String subject) {

        static Key of(Attention.Entry told) {
            return new Key(told.caseId(), told.rule().key(), told.subject());
        }

        static Key of(WorklistEntry entry) {
            return new Key(entry.caseId(), entry.rule(), entry.subject());
        }
    }

    @Inject
    EntityManager db;

    /** @param seenEvent the last line of the audit trail that the list knew of: what cleared an entry was done after it */
    void apply(Asking.Told told, CaseScope scope, LocalDate today, Instant now, long seenEvent) {
        Map<Key, WorklistEntry> standing = new HashMap<>();
        scope.bind(db.createQuery("from WorklistEntry e where e.clearedOn is null and " + scope.any("e.caseFile"), WorklistEntry.class)).getResultList()
                .forEach(entry -> standing.put(Key.of(entry), entry));
        Map<Key, Attention.Entry> coming = new HashMap<>();
        for (Attention.Entry entry : told.entries()) {
            WorklistEntry known = standing.remove(Key.of(entry));
            if (known != null) {
                known.says(entry);
            } else if (coming.put(Key.of(entry), entry) != null) {
                throw new IllegalStateException("The rule " + entry.rule().key() + " tells two things of a case under the subject '" + entry.subject() + "'");
            }
        }
        come(coming, now);
        leave(standing.values().stream().filter(entry -> !told.silent().contains(entry.rule())).toList(), today, now, seenEvent);
        Set<Long> flagged = new HashSet<>();
        coming.values().stream().filter(entry -> entry.rule().flag()).forEach(entry -> flagged.add(entry.caseId()));
        wake(scope, today, now, flagged);
        db.flush();
    }

    private void come(Map<Key, Attention.Entry> coming, Instant now) {
        Map<Key, WorklistEntry> left = new HashMap<>();
        parts(coming.keySet().stream().map(Key::caseId).distinct().toList()).forEach(ids -> db.createQuery("from WorklistEntry e where e.clearedOn is not null"
                + " and e.caseFile.id in :ids", WorklistEntry.class).setParameter("ids", ids).getResultList().forEach(entry -> left.put(Key.of(entry), entry)));
        coming.forEach((key, entry) -> {
            WorklistEntry back = left.get(key);
            if (back == null) {
                db.persist(new WorklistEntry(db.getReference(CaseFile.class, key.caseId()), entry, now));
            } else {
                back.comesBack(entry, now);
            }
        });
    }

    private void leave(Collection<WorklistEntry> leaving, LocalDate today, Instant now, long seenEvent) {
        Map<Long, List<AuditEvent>> acts = new HashMap<>();
        parts(leaving.stream().map(entry -> entry.caseId()).distinct().toList()).forEach(ids -> db.createQuery("from AuditEvent a where a.id > :seen"
                        + " and a.caseFileId in :ids and a.action not like 'viewed%' order by a.id", AuditEvent.class).setParameter("seen", seenEvent).setParameter("ids", ids)
                .getResultList().forEach(act -> acts.computeIfAbsent(act.caseFileId(), id -> new ArrayList<>()).add(act)));
        leaving.forEach(entry -> entry.leaves(today, now, words(acts.getOrDefault(entry.caseId(), List.of()))));
    }

    /** Says what was done in the case since, the latest last; null when nothing was. */
    private static String words(List<AuditEvent> acts) {
        if (acts.isEmpty()) {
            return null;
        }
        List<AuditEvent> latest = acts.subList(Math.max(0, acts.size() - MOST_ACTS), acts.size());
        Set<String> said = new LinkedHashSet<>();
        latest.forEach(act -> said.add(act.action() + " (" + act.actor() + ")"));
        String words = String.join(", ", said);
        return words.length() > LONGEST_ACT ? words.substring(0, LONGEST_ACT) : words;
    }

    private void wake(CaseScope scope, LocalDate today, Instant now, Set<Long> flagged) {
        for (Snooze snooze : db.createQuery("from Snooze s join fetch s.entry where s.endedAt is null", Snooze.class).getResultList()) {
            WorklistEntry entry = snooze.entry();
            if (!scope.holds(entry.caseId()) && snooze.backOn().isAfter(today)) {
                continue;
            }
            String why = !entry.stands() ? "It left the list" : !snooze.backOn().isAfter(today) ? "Its day came"
                    : snooze.becameWorse() ? "It became worse than when it was put off"
                    : flagged.contains(entry.caseId()) ? "A new flag or warning sign came up in the case" : null;
            if (why != null) {
                snooze.end(now, null, why);
            }
        }
    }

    private static List<List<Long>> parts(List<Long> ids) {
        List<List<Long>> parts = new ArrayList<>();
        for (int i = 0; i < ids.size(); i += PART) {
            parts.add(ids.subList(i, Math.min(ids.size(), i + PART)));
        }
        return parts;
    }
}
