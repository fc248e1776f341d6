package org.steadwork.workplace;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.AttentionRule;
import org.steadwork.casefile.AttentionRules;
import org.steadwork.casefile.CaseScope;
import org.steadwork.casefile.CaseTab;
import org.steadwork.web.Dates;

/** Changes at a work place that somebody agreed to and that are not done after the set days; one entry a case. */
@ApplicationScoped
class FindingsNotDone implements Attention {

    private static final String RULE = "finding_not_done";
    private static final int MOST_NAMED = 3;

    @Inject
    EntityManager db;

    @Inject
    WorkplaceContent content;

    @Inject
    AttentionRules rules;

    @Override
    public Set<String> rules() {
        return Set.of(RULE);
    }

    @Override
    public List<Entry> entries(LocalDate today, CaseScope scope) {
        AttentionRule rule = rules.rule(RULE);
        Map<Long, List<Finding>> cases = new LinkedHashMap<>();
        scope.bind(db.createQuery("from Finding f join fetch f.caseFile c join fetch c.patient where " + scope.open("c", "f.caseFile")
                + " and f.agreedOn <= :latest and f.doneOn is null and f.checkedOn is null order by f.agreedOn, f.id", Finding.class))
                .setParameter("latest", today.minusDays(rule.setting("days"))).getResultList()
                .forEach(finding -> cases.computeIfAbsent(finding.caseFile().id(), id -> new ArrayList<>()).add(finding));
        return cases.values().stream().map(findings -> entry(rule, findings)).toList();
    }

    private Entry entry(AttentionRule rule, List<Finding> findings) {
        Finding first = findings.get(0);
        String named = findings.stream().limit(MOST_NAMED).map(this::name).distinct().collect(Collectors.joining(", "));
        return rule.entry(first.caseFile(), "", first.agreedOn().plusDays(rule.setting("days")), CaseTab.WORK_PLACE.href(first.caseFile().id()),
                Map.of("changes", findings.size() == 1 ? named : findings.size() + " changes: " + named + (findings.size() > MOST_NAMED ? ", \u2026" : ""),
                        "agreed", Dates.shown(first.agreedOn()), "with", first.agreedWith())).at(findings.size());
    }

    private String name(Finding finding) {
        return content.criterion(finding.criterionId()).map(criterion -> criterion.label()).orElse(finding.criterionId());
    }
}
