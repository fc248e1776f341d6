package org.steadwork.exercise;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.AttentionRule;
import org.steadwork.casefile.AttentionRules;
import org.steadwork.casefile.CaseScope;
import org.steadwork.casefile.CaseTab;
import org.steadwork.exercise.dayplan.Adherence;

/**
 * Open cases whose exercises given now were done less than the set share of what was planned, over the reports of the last weeks. What
 * was not reported is not known and counts neither way; a case without a report has no entry.
 */
@ApplicationScoped
class AdherenceLow implements Attention {

    private static final String RULE = "adherence_low";

    @Inject
    EntityManager db;

    @Inject
    AttentionRules rules;

    @Override
    public Set<String> rules() {
        return Set.of(RULE);
    }

    @Override
    public List<Entry> entries(LocalDate today, CaseScope scope) {
        Map<Long, List<AdherenceEntry>> cases = new LinkedHashMap<>();
        scope.bind(db.createQuery("from AdherenceEntry e join fetch e.prescription p join fetch p.caseFile c join fetch c.patient where " + scope.open("c", "p.caseFile")
                + " and p.endedOn is null and e.done is not null and e.planned > 0 and e.weekTo > :after and e.weekTo <= :today order by e.weekTo, e.id", AdherenceEntry.class))
                .setParameter("after", today.minusWeeks(rules.rule(RULE).setting("weeks"))).setParameter("today", today).getResultList()
                .forEach(entry -> cases.computeIfAbsent(entry.prescription().caseFile().id(), id -> new ArrayList<>()).add(entry));
        return cases.values().stream().map(this::entry).flatMap(Optional::stream).toList();
    }

    private Optional<Entry> entry(List<AdherenceEntry> reported) {
        AttentionRule rule = rules.rule(RULE);
        int done = reported.stream().mapToInt(entry -> entry.adherence().done()).sum();
        int planned = reported.stream().mapToInt(entry -> entry.adherence().planned()).sum();
        if (100L * done >= (long) rule.setting("percent") * planned) {
            return Optional.empty();
        }
        AdherenceEntry latest = reported.get(reported.size() - 1);
        int percent = new Adherence(done, planned).perCent().orElseThrow();
        return Optional.of(rule.entry(latest.prescription().caseFile(), "", latest.weekTo(), CaseTab.PROGRAMME.href(latest.prescription().caseFile().id()),
                Map.of("done", String.valueOf(done), "planned", String.valueOf(planned), "share", percent + "\u00a0%")).at(100 - percent));
    }
}
