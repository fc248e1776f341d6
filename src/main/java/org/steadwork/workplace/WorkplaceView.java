package org.steadwork.workplace;

import java.util.List;

/** The page about the work place, ready to be shown. */
record WorkplaceView(WorkplaceAssessment assessment, List<WorkplaceAssessment> looks, boolean latest, List<FindingRow> findings,
        List<FindingRow> fitting, List<Group> notLookedAt, int notLookedAtCount, List<String> told, String settling, String settlingRest, List<String> missing, List<StepRow> steps,
        String stepsNote, String byHand, String sureness, Room room, List<GainRow> gains, String shortest, String withWhatIsThere, String withChanges, List<MeasureRow> measures, String standing,
        String drawing, String drawingForPhone, List<WorkplacePhoto> photos, int registerDifferences) {

    /** Criteria of one group that nobody looked at yet. */
    record Group(String title, List<String> labels) {
    }

    /** One thing to set, in order. */
    record StepRow(int number, String set, String now, String proposed, String change, String does) {
    }

    /** Equipment to ask for, what it removes, what is then left, and how sure it is that it helps. */
    record GainRow(String equipment, String removes, String left, String settings, String sure) {
    }

    /** One measure of the person. */
    record MeasureRow(String label, String value, String giveOrTake, String how, boolean known, List<FindingRow.Fact> working) {
    }

    /** What elbow and thigh cannot both have. */
    record Room(String working, String room, String least, List<Choice> choices) {
    }

    /** One way to share it. */
    record Choice(String desk, String elbow, String clearance) {
    }
}
