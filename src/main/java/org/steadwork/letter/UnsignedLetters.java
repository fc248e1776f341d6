package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.AttentionRule;
import org.steadwork.casefile.AttentionRules;
import org.steadwork.casefile.CaseScope;

/** Letters that were begun and are not signed: those not held up for anything are for today, the others soon. */
@ApplicationScoped
class UnsignedLetters implements Attention {

    private static final String AT_ONCE = "letter_unsigned_at_once";
    private static final String OTHER = "letter_unsigned";

    @Inject
    EntityManager db;

    @Inject
    LetterContent content;

    @Inject
    AttentionRules rules;

    @Override
    public Set<String> rules() {
        return Set.of(AT_ONCE, OTHER);
    }

    @Override
    public List<Entry> entries(LocalDate today, CaseScope scope) {
        return scope.bind(db.createQuery("from Letter l join fetch l.caseFile c join fetch c.patient where " + scope.open("c", "l.caseFile")
                + " and not exists (select 1 from SignedLetter s where s.letterId = l.id)", Letter.class)).getResultList().stream()
                .map(letter -> entry(letter, today)).flatMap(Optional::stream).toList();
    }

    private Optional<Entry> entry(Letter letter, LocalDate today) {
        AttentionRule rule = rules.rule(content.atOnce(letter.kind()) ? AT_ONCE : OTHER);
        LocalDate drafted = letter.draftedAt().atZone(ZoneId.systemDefault()).toLocalDate();
        return drafted.plusDays(rule.setting("days")).isAfter(today) ? Optional.empty()
                : Optional.of(rule.entry(letter.caseFile(), String.valueOf(letter.id()), drafted, LetterView.path(letter), Map.of("letter", content.title(letter.kind()))));
    }
}
