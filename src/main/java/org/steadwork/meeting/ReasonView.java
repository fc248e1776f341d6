package org.steadwork.meeting;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.meeting.agenda.Figure;
import org.steadwork.meeting.agenda.Reason;
import org.steadwork.meeting.agenda.Rule;

/** A reason as pages show it: the sentence, and when opened its figures, how it is judged, its numbers and its source. */
record ReasonView(Reason reason, long caseId) {

    private static final Map<Rule, String> PLACES = new EnumMap<>(Map.ofEntries(Map.entry(Rule.STALLED, "/outcomes"), Map.entry(Rule.WORSE, "/outcomes"),
            Map.entry(Rule.OUTCOME_UNKNOWN, "/outcomes"), Map.entry(Rule.RED_FLAG, "/red-flags"), Map.entry(Rule.NEUROLOGICAL, "/red-flags"),
            Map.entry(Rule.PSYCHOSOCIAL, "/obstacles"), Map.entry(Rule.OFF_WORK, "/work-plan"), Map.entry(Rule.EMPLOYER, "/work-place"),
            Map.entry(Rule.MISSED, "/visits"), Map.entry(Rule.VISITS_OVER, "/visits"), Map.entry(Rule.ADHERENCE, "/programme"),
            Map.entry(Rule.CONFLICT, "/meetings"), Map.entry(Rule.ASKED, "/meetings")));
    private static final Map<Rule, InformationCategory> KINDS = new EnumMap<>(Map.ofEntries(Map.entry(Rule.STALLED, InformationCategory.OUTCOME_SCORES),
            Map.entry(Rule.WORSE, InformationCategory.OUTCOME_SCORES), Map.entry(Rule.OUTCOME_UNKNOWN, InformationCategory.OUTCOME_SCORES),
            Map.entry(Rule.RED_FLAG, InformationCategory.RED_FLAG_RESULT), Map.entry(Rule.NEUROLOGICAL, InformationCategory.RED_FLAG_RESULT),
            Map.entry(Rule.PSYCHOSOCIAL, InformationCategory.PSYCHOSOCIAL_NOTES), Map.entry(Rule.OFF_WORK, InformationCategory.FUNCTIONAL_CAPACITY),
            Map.entry(Rule.EMPLOYER, InformationCategory.WORK_MODIFICATIONS), Map.entry(Rule.MISSED, InformationCategory.ATTENDANCE),
            Map.entry(Rule.VISITS_OVER, InformationCategory.ATTENDANCE), Map.entry(Rule.ADHERENCE, InformationCategory.EXERCISE_PROGRAMME),
            // what somebody typed may be about anything, so it goes only where the most private kind goes
            Map.entry(Rule.CONFLICT, InformationCategory.PSYCHOSOCIAL_NOTES), Map.entry(Rule.ASKED, InformationCategory.PSYCHOSOCIAL_NOTES)));

    static List<ReasonView> of(List<Reason> reasons, long caseId) {
        return reasons.stream().map(reason -> new ReasonView(reason, caseId)).toList();
    }

    InformationCategory category() {
        return KINDS.get(reason.criterion().rule());
    }

    public boolean holds() {
        return reason.holds();
    }

    public String criterion() {
        return reason.criterion().words();
    }

    public String words() {
        return reason.words();
    }

    public List<Figure> figures() {
        return reason.figures();
    }

    public String explained() {
        return reason.criterion().explained();
    }

    public String numbers() {
        return reason.criterion().numbers().entrySet().stream().sorted(Map.Entry.comparingByKey())
                .map(number -> number.getKey().replace('_', ' ') + " " + number.getValue()).collect(Collectors.joining(", "));
    }

    public String source() {
        return reason.criterion().source() + " [" + CriteriaContent.sure(reason.criterion().tag()) + "]";
    }

    /** Where the figures can be looked at. */
    public String href() {
        return "/cases/" + caseId + PLACES.get(reason.criterion().rule());
    }
}
