package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.AttentionRule;
import org.steadwork.casefile.AttentionRules;
import org.steadwork.casefile.CaseScope;
import org.steadwork.web.Dates;

/** Consents to disclose that end within the set days and that no later consent for the same reader has followed. */
@ApplicationScoped
class ConsentsEnding implements Attention {

    private static final String RULE = "consent_ending";

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
        AttentionRule rule = rules.rule(RULE);
        int days = rule.setting("days");
        return scope.bind(db.createQuery("from Consent s join fetch s.caseFile c join fetch c.patient where " + scope.open("c", "s.caseFile")
                + " and s.withdrawnOn is null and s.holdsUntil between :today and :latest"
                + " and not exists (select 1 from Consent n where n.caseFile = c and n.recipientKind = s.recipientKind"
                + " and (n.employer = s.employer or n.correspondent = s.correspondent)"
                + " and (n.givenOn > s.givenOn or n.givenOn = s.givenOn and n.id > s.id))", Consent.class))
                .setParameter("today", today).setParameter("latest", today.plusDays(days)).getResultList().stream()
                .map(consent -> rule.entry(consent.caseFile(), String.valueOf(consent.id()), consent.holdsUntil().minusDays(days),
                        "/cases/" + consent.caseFile().id() + "/consents/new",
                        Map.of("reader", consent.recipientName(), "until", Dates.shown(consent.holdsUntil())))).toList();
    }
}
