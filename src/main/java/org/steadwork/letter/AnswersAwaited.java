package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.AttentionRule;
import org.steadwork.casefile.AttentionRules;
import org.steadwork.casefile.CaseScope;
import org.steadwork.web.Dates;

/**
 * Sent letters whose answer was hoped for by a day that is over, and referrals that nobody took up within the usual days; an answer, or
 * the end of waiting, takes them off. A closed case still waits for an answer that was hoped for by a day.
 */
@ApplicationScoped
class AnswersAwaited implements Attention {

    private static final String AWAITED = "answer_awaited";
    private static final String REFERRAL = "referral_unanswered";
    private static final String URGENT = "referral_urgent_unanswered";
    private static final Map<String, String> REFERRALS = Map.of("routine_referral", REFERRAL, "urgent_referral", URGENT);

    @Inject
    EntityManager db;

    @Inject
    LetterContent content;

    @Inject
    AttentionRules rules;

    @Override
    public Set<String> rules() {
        return Set.of(AWAITED, REFERRAL, URGENT);
    }

    @Override
    public List<Entry> entries(LocalDate today, CaseScope scope) {
        return scope.bind(db.createQuery("from LetterEvent e join fetch e.letter l join fetch l.caseFile c join fetch c.patient left join fetch l.correspondent"
                        + " left join fetch l.employer where " + scope.any("l.caseFile") + " and e.kind = :sent and (e.replyBy < :today or e.replyBy is null and l.kind in :referrals and c.closedOn is null)"
                        + " and not exists (select 1 from LetterEvent a where a.letter = l and a.id > e.id and a.kind in :settled)"
                        + " and not exists (select 1 from LetterWithdrawal w where w.letterId = l.id)", LetterEvent.class))
                .setParameter("sent", LetterEvent.Kind.SENT).setParameter("today", today).setParameter("referrals", REFERRALS.keySet())
                .setParameter("settled", List.of(LetterEvent.Kind.SENT, LetterEvent.Kind.ANSWERED, LetterEvent.Kind.NO_ANSWER)).getResultList().stream()
                .map(sent -> sent.replyBy() == null ? referral(sent, today) : Optional.of(awaited(sent))).flatMap(Optional::stream).toList();
    }

    private Entry awaited(LetterEvent sent) {
        return entry(rules.rule(AWAITED), sent, sent.replyBy(), Map.of("by", Dates.shown(sent.replyBy())));
    }

    private Optional<Entry> referral(LetterEvent sent, LocalDate today) {
        AttentionRule rule = rules.rule(REFERRALS.get(sent.letter().kind()));
        LocalDate since = sent.happenedOn().plusDays(rule.setting("days"));
        return since.isAfter(today) ? Optional.empty() : Optional.of(entry(rule, sent, since, Map.of("sent", Dates.shown(sent.happenedOn()))));
    }

    private Entry entry(AttentionRule rule, LetterEvent sent, LocalDate since, Map<String, String> when) {
        Letter letter = sent.letter();
        Map<String, String> facts = new HashMap<>(when);
        facts.put("letter", content.title(letter.kind()));
        facts.put("reader", letter.reader().name());
        return rule.entry(letter.caseFile(), String.valueOf(letter.id()), since, LetterView.path(letter), facts);
    }
}
