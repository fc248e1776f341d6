package org.steadwork.redflag;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.steadwork.kernel.Answer;

/** The screens of a case in words, for what leaves the clinic; what was not asked is among them and stays not asked. */
@ApplicationScoped
public class ScreenRecords {

    /** A screen with every answer it holds and every one it lacks. */
    public record Screen(long id, LocalDate on, String occasion, String verdict, boolean signed, String signedBy, Instant signedAt, List<Answered> answers) {
    }

    /**
     * One question of a screen.
     *
     * @param prompt the question as asked
     * @param note may be null
     * @param declined the patient would not say; the answer is then unknown
     */
    public record Answered(String key, String prompt, Answer answer, String note, boolean declined) {
    }

    @Inject
    EntityManager db;

    @Inject
    RedFlagContent content;

    /** Returns the screens of a case, the earliest first, in one query. */
    public List<Screen> of(long caseId) {
        return db.createQuery("select distinct s from RedFlagScreen s left join fetch s.answers left join fetch s.signedBy where s.caseFile.id = ?1 order by s.id",
                RedFlagScreen.class).setParameter(1, caseId).getResultList().stream().map(this::screen).toList();
    }

    private Screen screen(RedFlagScreen screen) {
        List<Answered> answers = new ArrayList<>();
        screen.answersByKey().forEach((key, answer) -> answers.add(new Answered(key, prompt(key), answer.answer(), answer.note(), answer.declined())));
        Set<String> missing = new LinkedHashSet<>(screen.openAnswers());
        missing.removeAll(screen.answersByKey().keySet());
        missing.forEach(key -> answers.add(new Answered(key, prompt(key), Answer.NOT_ASKED, null, false)));
        return new Screen(screen.id(), screen.screenedOn(), screen.occasion().label(), screen.verdict().label(), screen.signed(),
                screen.signedBy() == null ? null : screen.signedBy().fullName(), screen.signedAt(), answers);
    }

    /** The words of a question; a part of a composite one is led by the whole. */
    private String prompt(String key) {
        int slash = key.indexOf('/');
        String words = content.prompt(key);
        if (slash < 0 || !words.equals(key)) {
            return words;
        }
        return content.catalogue().question(key.substring(0, slash)).map(question -> question.prompt() + " " + question.ticks().stream()
                .filter(tick -> key.endsWith("/" + tick.key())).map(tick -> tick.words()).findFirst().orElse(key)).orElse(key);
    }
}
