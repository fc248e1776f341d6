package org.steadwork.workplace;

import java.util.List;

/**
 * Two assessments of one case side by side, ready to be shown; {@code from} is the earlier.
 *
 * @param lead what changed in one sentence
 */
record Comparison(WorkplaceAssessment from, WorkplaceAssessment to, List<WorkplaceAssessment> looks, String lead, List<DeviationRow> changed, List<DeviationRow> same,
        List<ValueRow> settings, List<ValueRow> measures, String fromDrawing, String toDrawing) {

    /** One criterion at both looks; {@code course} says in words how the verdict moved. */
    record DeviationRow(String label, String before, String beforeState, String beforeWord, String after, String afterState, String afterWord,
            String change, String course) {
    }

    /** One number at both looks. */
    record ValueRow(String label, String before, String after, String change) {
    }
}
