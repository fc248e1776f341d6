package org.steadwork.outcome;

import java.util.List;
import org.steadwork.casefile.WorkTimelineView;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.web.Form;

/**
 * What the page of the outcomes shows.
 *
 * @param measures on which change is judged, the leading one first
 * @param standstill why each measure that stands still does, a sentence each
 * @param rating the patient's own rating beside the leading measure, or null
 * @param due what its schedule asks for on the day of entry
 */
record OutcomeView(long caseId, Form form, ScoreGrid grid, List<MeasureView> measures, List<Goal> goals, List<Instrument> others,
        List<String> standstill, boolean roomForActivity, Rating rating, List<DueMeasures.Due> due, WorkTimelineView work) {

    /** The measure that leads the page: the one of the region, else the first there is. */
    public MeasureView main() {
        return measures.isEmpty() ? null : measures.get(0);
    }

    public List<MeasureView> rest() {
        return measures.size() < 2 ? List.of() : measures.subList(1, measures.size());
    }

    /** The single ratings that are due, with their fields. */
    public List<ScoreGrid.Row> dueRatings() {
        return grid.rows().stream().filter(row -> row.due() && row.field() != null).toList();
    }

    /** What got worse stands before everything else. */
    public List<MeasureView> worse() {
        return measures.stream().filter(MeasureView::worse).toList();
    }

    /** Says how the goals stand, blank when none is set. */
    public String goalsInAll() {
        long met = goals.stream().filter(goal -> goal.state() == GoalState.MET).count();
        long standing = goals.stream().filter(goal -> goal.state() != GoalState.GIVEN_UP).count();
        long gone = goals.size() - standing;
        return goals.isEmpty() ? "" : met + " of " + standing + " met" + (gone == 0 ? "" : ", " + gone + " given up");
    }
}
