package org.steadwork.exercise;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.steadwork.body.BodyRegion;
import org.steadwork.casefile.SymptomReports;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.kernel.Answer;

/** Finds the conditions that matter in a case. */
@ApplicationScoped
class ConditionRows {

    @Inject
    ExerciseCatalogue catalogue;

    @Inject
    ConditionAnswers answers;

    @Inject
    SymptomReports reports;

    /** Those that matter to the exercises for the regions reported, and those answered before. */
    List<ConditionRow> ofCase(long caseId) {
        Set<BodyRegion> regions = reports.regionsReported(caseId);
        return rows(caseId, catalogue.forRegions(regions), true);
    }

    /** Those that matter to the exercises given now. */
    Known thatMatter(long caseId, Programme programme) {
        return new Known(rows(caseId, programme.items().stream().map(ProgrammeItem::exercise).toList(), false));
    }

    /** What is known of the conditions that matter. */
    record Known(List<ConditionRow> rows) {

        /** Those answered no, in words. */
        public String answeredNo() {
            return rows.stream().filter(r -> r.answer() == Answer.NO).map(r -> r.condition().label()).collect(Collectors.joining("; "));
        }
    }

    private List<ConditionRow> rows(long caseId, List<Exercise> exercises, boolean answeredToo) {
        Map<String, ConditionAnswer> given = answers.of(caseId).stream().collect(Collectors.toMap(ConditionAnswer::condition, Function.identity()));
        return catalogue.conditions().stream().map(condition -> new ConditionRow(condition, given.get(condition.key()), exercises.stream()
                .filter(e -> e.precautions().stream().anyMatch(p -> p.condition().equals(condition.key()))).map(Exercise::name).toList()))
                .filter(row -> !row.exercises().isEmpty() || answeredToo && row.given() != null).toList();
    }
}
