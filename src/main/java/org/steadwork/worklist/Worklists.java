package org.steadwork.worklist;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.TypedQuery;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.steadwork.account.Accounts;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.AttentionRule;
import org.steadwork.casefile.AttentionRules;
import org.steadwork.casefile.access.CaseAccess;
import org.steadwork.web.Option;

/** Reads Today from the stored list, page by page, once it has been brought up to date; a fixed number of queries. */
@ApplicationScoped
class Worklists {

    private static final int FOLDED = 100;
    private static final String STANDING = "e.clearedOn is null and (e.putOffUntil is null or e.putOffUntil <= :today)";
    private static final String PEOPLE = " join fetch e.caseFile c join fetch c.patient join fetch c.clinician";

    @Inject
    CaseAccess access;

    @Inject
    CurrentAccount current;

    @Inject
    EntityManager db;

    @Inject
    PageRefresh refresh;

    @Inject
    AttentionRules rules;

    @Inject
    Accounts accounts;

    @ConfigProperty(name = "steadwork.today.entries-a-page")
    int pageSize;

    /** Returns what stands first in a case, put off or not, as the list was last brought up to date. */
    Optional<WorklistEntry> first(long caseId) {
        return db.createQuery("from WorklistEntry e where e.caseId = :case and e.clearedOn is null order by e.urgency, e.since, e.id", WorklistEntry.class)
                .setParameter("case", caseId).setMaxResults(1).getResultStream().findFirst();
    }

    Worklist on(LocalDate today, Filter asked) {
        return read(today, asked, refresh.upToDate(today));
    }

    private Worklist read(LocalDate today, Filter asked, boolean upToDate) {
        Map<Attention.Urgency, Long> counts = new EnumMap<>(Attention.Urgency.class);
        Map<String, Long> ofRules = new LinkedHashMap<>();
        Filter everyRule = asked.everyRule();
        bound(everyRule, db.createQuery("select e.rule, e.urgency, count(e) from WorklistEntry e" + joined(everyRule) + " where " + STANDING + seen(everyRule)
                + " group by e.rule, e.urgency", Object[].class)).setParameter("today", today).getResultList().forEach(row -> {
            ofRules.merge((String) row[0], (Long) row[2], Long::sum);
            if (asked.rule().isEmpty() || asked.rule().equals(row[0])) {
                counts.merge((Attention.Urgency) row[1], (Long) row[2], Long::sum);
            }
        });
        long count = counts.values().stream().mapToLong(Long::longValue).sum();
        int page = (int) Math.min(asked.page(), Math.max(1, (count + pageSize - 1) / pageSize));
        Filter filter = new Filter(asked.whose(), asked.rule(), asked.caseId(), page);
        // the numbers first, in the order of the index, so that only the rows of the page are fetched with their people
        List<Long> ids = bound(filter, db.createQuery("select e.id from WorklistEntry e" + joined(filter) + " where " + STANDING + seen(filter)
                + " order by e.clearedOn, e.place, e.since, e.id", Long.class)).setParameter("today", today).setFirstResult((page - 1) * pageSize).setMaxResults(pageSize)
                .getResultList();
        List<WorklistEntry> rows = ids.isEmpty() ? List.of() : db.createQuery("select e from WorklistEntry e" + PEOPLE + " where e.id in :ids order by e.place, e.since, e.id",
                WorklistEntry.class).setParameter("ids", ids).getResultList();
        return new Worklist(true, filter, rows, counts, options(ofRules, asked.rule()), clinicians(), waiting(), pageSize, snoozed(today, filter), cleared(today, filter), upToDate);
    }

    private Worklist.Snoozed snoozed(LocalDate today, Filter filter) {
        String from = " from Snooze s join%1$s s.entry e join%1$s e.caseFile c%2$s where s.endedAt is null and s.backOn > :today and e.clearedOn is null" + seen(filter);
        long count = bound(filter, db.createQuery("select count(s)" + from.formatted("", ""), Long.class)).setParameter("today", today).getSingleResult();
        List<Snooze> rows = count == 0 ? List.of() : bound(filter, db.createQuery("select s" + from.formatted(" fetch", " join fetch c.patient join fetch s.snoozedBy")
                + " order by s.backOn, s.id", Snooze.class)).setParameter("today", today).setMaxResults(FOLDED).getResultList();
        return new Worklist.Snoozed(count, rows);
    }

    private Worklist.Cleared cleared(LocalDate today, Filter filter) {
        long count = bound(filter, db.createQuery("select count(e) from WorklistEntry e" + joined(filter) + " where e.clearedOn = :today" + seen(filter), Long.class))
                .setParameter("today", today).getSingleResult();
        List<WorklistEntry> rows = count == 0 ? List.of() : bound(filter, db.createQuery("select e from WorklistEntry e" + PEOPLE + " where e.clearedOn = :today"
                + seen(filter) + " order by e.clearedAt desc, e.id", WorklistEntry.class)).setParameter("today", today).setMaxResults(FOLDED).getResultList();
        return new Worklist.Cleared(count, rows);
    }

    private List<Option> options(Map<String, Long> counts, String chosen) {
        return rules.all().stream().filter(rule -> counts.containsKey(rule.key()) || rule.key().equals(chosen))
                .map(rule -> new Option(rule.key(), rule.name() + ", " + counts.getOrDefault(rule.key(), 0L))).toList();
    }

    /** What is asked for, of what whoever asks may see: the cases open to them, and what is for the lead only if they are one. */
    private String seen(Filter filter) {
        return filter.where() + sight();
    }

    private String joined(Filter filter) {
        return access.opensEvery() ? filter.join() : " join e.caseFile c";
    }

    private <T> TypedQuery<T> bound(Filter filter, TypedQuery<T> query) {
        return sight(filter.bind(query));
    }

    private String sight() {
        return (forTheLead().isEmpty() ? "" : " and e.rule not in :leads") + access.where("c");
    }

    private <T> TypedQuery<T> sight(TypedQuery<T> query) {
        return access.bind(forTheLead().isEmpty() ? query : query.setParameter("leads", forTheLead()));
    }

    private Set<String> forTheLead() {
        return current.lead() ? Set.of() : rules.all().stream().filter(AttentionRule::leadOnly).map(AttentionRule::key).collect(Collectors.toSet());
    }

    private List<Option> clinicians() {
        return accounts.clinicians().stream().map(account -> new Option(String.valueOf(account.id()), account.displayName())).toList();
    }

    private Set<String> waiting() {
        return rules.all().stream().filter(AttentionRule::snoozable).map(AttentionRule::key).collect(Collectors.toSet());
    }

    /** Returns an entry with its case, patient and clinician, standing or not. */
    Optional<WorklistEntry> find(long id) {
        return sight(db.createQuery("select e from WorklistEntry e" + PEOPLE + " where e.id = :id" + sight(), WorklistEntry.class)).setParameter("id", id).getResultStream()
                .findFirst();
    }

    /** Returns what ever put an entry off, the latest first. */
    List<Snooze> snoozes(WorklistEntry entry) {
        return db.createQuery("from Snooze s join fetch s.snoozedBy where s.entry = :entry order by s.id desc", Snooze.class).setParameter("entry", entry).getResultList();
    }

    /** Returns the rule of an entry, unless the content no longer has it. */
    Optional<AttentionRule> rule(WorklistEntry entry) {
        return rules.find(entry.rule());
    }
}
