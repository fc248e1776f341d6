package org.steadwork.meeting.agenda;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.BiFunction;

/** How a criterion is judged; the content gives its words and numbers. Each gives the reasons that hold, or one that says what is not known. */
public enum Rule {
    STALLED(ProgressRules::stalled, "weeks", "visits"),
    WORSE(ProgressRules::worse, "reviews"),
    NEUROLOGICAL(SafetyRules::neurological, "days"),
    RED_FLAG(SafetyRules::redFlag, "days_after_closing"),
    PSYCHOSOCIAL(PersonRules::psychosocial, "person_or_work", "days_off"),
    OFF_WORK(WorkRules::offWork, "days_off", "steps_back"),
    MISSED(KeepingRules::missed, "in_a_row"),
    ADHERENCE(KeepingRules::adherence, "percent", "weeks"),
    CONFLICT(AskRules::conflict),
    EMPLOYER(WorkRules::employer, "days"),
    VISITS_OVER(KeepingRules::visitsOver, "usual_visits"),
    ASKED(AskRules::asked),
    OUTCOME_UNKNOWN(ProgressRules::outcomeUnknown, "days_late");

    private final BiFunction<Criterion, CaseFacts, List<Reason>> judging;
    private final Set<String> numbers;

    Rule(BiFunction<Criterion, CaseFacts, List<Reason>> judging, String... numbers) {
        this.judging = judging;
        this.numbers = Set.of(numbers);
    }

    /** Returns the name the content uses. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Returns the names of the numbers it needs. */
    public Set<String> numbers() {
        return numbers;
    }

    List<Reason> judge(Criterion criterion, CaseFacts facts) {
        return judging.apply(criterion, facts);
    }
}
