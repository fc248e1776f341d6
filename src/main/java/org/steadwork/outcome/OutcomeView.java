package org.steadwork.outcome;

import java.util.Arrays;
import java.util.List;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/** What the page of the outcomes shows. */
record OutcomeView(long caseId, Form form, ScoreGrid grid, List<MeasureView> measures, List<Goal> goals, List<Instrument> others, List<String> standstill,
        boolean roomForActivity) {

    /** The measure that leads the page: the one of the region, else the first there is. */
    public MeasureView main() {
        return measures.isEmpty() ? null : measures.get(0);
    }

    public List<MeasureView> rest() {
        return measures.size() < 2 ? List.of() : measures.subList(1, measures.size());
    }

    /** What got worse stands before everything else. */
    public List<MeasureView> worse() {
        return measures.stream().filter(MeasureView::worse).toList();
    }

    public List<Option> goalStates() {
        return Arrays.stream(GoalState.values()).map(state -> new Option(state.name().toLowerCase(java.util.Locale.ROOT), state.label())).toList();
    }
}
