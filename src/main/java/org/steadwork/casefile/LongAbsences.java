package org.steadwork.casefile;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.steadwork.web.Dates;

/** Open cases off work for their complaint longer than the set weeks, while no plan of return is running. */
@ApplicationScoped
class LongAbsences implements Attention {

    private static final String RULE = "absence_long";
    private static final int DAYS_A_WEEK = 7;

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
        List<WorkStatus> spells = scope.bind(db.createQuery("select w from WorkStatus w join fetch w.caseFile c join fetch c.patient where " + scope.open("c", "w.caseFile")
                + " and w.from <= :today and exists (select 1 from WorkStatus o where o.caseFile = c and o.code = :off and o.from <= :today"
                + " and (o.until is null or o.until >= :today) and not exists (select 1 from WorkStatus l where l.caseFile = c and l.from > o.from and l.from <= :today))"
                + " and not exists (select 1 from WorkPlan p where p.caseFile = c and p.endedOn is null) order by w.from", WorkStatus.class))
                .setParameter("today", today).setParameter("off", WorkStatusCode.OFF).getResultList();
        Map<Long, List<WorkStatus>> cases = new LinkedHashMap<>();
        spells.forEach(spell -> cases.computeIfAbsent(spell.caseFile().id(), id -> new ArrayList<>()).add(spell));
        return cases.values().stream().map(of -> entry(new WorkHistory(of), today)).flatMap(Optional::stream).toList();
    }

    private Optional<Entry> entry(WorkHistory history, LocalDate today) {
        AttentionRule rule = rules.rule(RULE);
        LocalDate from = history.offSince(today).orElse(today);
        LocalDate since = from.plusWeeks(rule.setting("weeks"));
        if (since.isAfter(today)) {
            return Optional.empty();
        }
        CaseFile file = history.spells().get(0).caseFile();
        long weeks = ChronoUnit.DAYS.between(from, today) / DAYS_A_WEEK;
        return Optional.of(rule.entry(file, from.toString(), since, WorkPlanView.path(file.id()), Map.of("from", Dates.shown(from), "weeks_off", weeks + " weeks"))
                .at((int) (weeks / rule.setting("weeks"))));
    }
}
