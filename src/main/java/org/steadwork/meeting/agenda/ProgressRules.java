package org.steadwork.meeting.agenda;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.steadwork.outcome.scoring.ChangeVerdict;

/** Whether the case moves, and whether it can be told. */
final class ProgressRules {

    private static final long DAYS_A_WEEK = 7;
    /** Judgements that leave open whether the change matters. */
    private static final Set<ChangeVerdict.Kind> OPEN = Set.of(ChangeVerdict.Kind.REAL_IMPORTANCE_UNKNOWN,
            ChangeVerdict.Kind.BEYOND_IMPORTANCE_ERROR_UNKNOWN, ChangeVerdict.Kind.NOT_JUDGED);

    private ProgressRules() {
    }

    /** No measure shows an important change although there was time, or there were visits, enough for one. */
    static List<Reason> stalled(Criterion criterion, CaseFacts facts) {
        long days = Days.between(facts.openedOn(), facts.today());
        boolean time = days >= criterion.number("weeks") * DAYS_A_WEEK;
        if (!time && facts.attended() < criterion.number("visits")
                || facts.measures().stream().anyMatch(measure -> measure.since().filter(ChangeVerdict.Kind.IMPORTANT::equals).isPresent())) {
            return List.of();
        }
        String when = Days.counted(days / DAYS_A_WEEK, "week") + " and " + Days.counted(facts.attended(), "visit");
        List<CaseFacts.Measure> compared = facts.measures().stream().filter(measure -> measure.since().isPresent()).toList();
        if (compared.isEmpty()) {
            return List.of(criterion.unknown("After " + when + " no measure has two scores to compare."));
        }
        Optional<CaseFacts.Measure> open = compared.stream().filter(measure -> OPEN.contains(measure.since().get())).findFirst();
        if (open.isPresent()) {
            return List.of(criterion.unknown("After " + when + " it cannot be told whether the change matters: " + open.get().label() + ", "
                    + open.get().since().get().words() + "."));
        }
        CaseFacts.Measure leading = compared.get(0);
        return List.of(criterion.holds("No meaningful change after " + when + ": " + leading.label() + " " + leading.scores().get(0).shown() + " to "
                + leading.latest().shown() + ".", figures(compared)));
    }

    /** A score stayed worse than the first, by more than error, at the last so many reviews. */
    static List<Reason> worse(Criterion criterion, CaseFacts facts) {
        int reviews = criterion.number("reviews");
        List<CaseFacts.Measure> worse = facts.measures().stream().filter(measure -> measure.scores().size() > reviews
                && last(measure, reviews).stream().allMatch(CaseFacts.Score::worse)).toList();
        List<CaseFacts.Measure> sure = worse.stream().filter(measure -> last(measure, reviews).stream().noneMatch(CaseFacts.Score::remembered)).toList();
        if (!sure.isEmpty()) {
            CaseFacts.Measure first = sure.get(0);
            return List.of(criterion.holds("Worse than at the start at the last " + Days.counted(reviews, "review") + ": " + first.label() + " "
                    + first.course() + ".", figures(sure)));
        }
        return worse.isEmpty() ? List.of() : List.of(criterion.unknown("Worse by an amount that is only remembered: " + worse.get(0).label() + " "
                + worse.get(0).course() + "."));
    }

    /** The measure that leads was not taken when it was due, or no measure was ever taken. */
    static List<Reason> outcomeUnknown(Criterion criterion, CaseFacts facts) {
        int late = criterion.number("days_late");
        if (facts.measures().isEmpty()) {
            return Days.between(facts.openedOn(), facts.today()) > late
                    ? List.of(criterion.holds("How it goes is unknown: no outcome measure was taken since " + Days.shown(facts.openedOn()) + "."))
                    : List.of();
        }
        CaseFacts.Measure leading = facts.measures().get(0);
        long over = leading.everyDays() == 0 ? 0 : Days.between(leading.latest().on(), facts.today()) - leading.everyDays();
        return over > late ? List.of(criterion.holds("How it goes is unknown: " + leading.label() + " was due on "
                + Days.shown(leading.latest().on().plusDays(leading.everyDays())) + " and is not entered.", figures(List.of(leading)))) : List.of();
    }

    private static List<CaseFacts.Score> last(CaseFacts.Measure measure, int number) {
        return measure.scores().subList(measure.scores().size() - number, measure.scores().size());
    }

    private static List<Figure> figures(List<CaseFacts.Measure> measures) {
        return measures.stream().map(measure -> new Figure(measure.label(), measure.course()
                + measure.since().map(kind -> ": " + kind.words()).orElse(""))).toList();
    }
}
