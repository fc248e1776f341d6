package org.steadwork.meeting;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.MapCard;
import org.steadwork.casefile.MapPart;
import org.steadwork.web.Dates;

/** Lays under "What we do about it" the decisions the treating clinician accepted and the actions that are open. */
@ApplicationScoped
class MeetingCards implements MapPart {

    private static final int LONGEST_TITLE = 90;

    @Inject
    CaseOutcomes outcomes;

    @Override
    public List<MapCard> cards(CaseFile caseFile) {
        String href = "/cases/" + caseFile.id() + "/meetings";
        List<MapCard> cards = new ArrayList<>();
        outcomes.decisions(caseFile.id()).stream().filter(one -> one.answer() != null && one.answer().accepted()).forEach(one -> cards.add(
                MapCard.action("meeting-decision-" + one.decision().id(), title(one.decision().words()), "Review meeting, "
                        + Dates.shown(one.decision().meeting().heldOn()) + ", accepted", href + "#decision-" + one.decision().id(), false, Set.of(), Set.of())));
        outcomes.actions(caseFile.id()).stream().filter(MeetingAction::open).forEach(action -> cards.add(MapCard.action("meeting-action-" + action.id(),
                title(action.words()), "By " + Dates.shown(action.dueOn()) + ", " + action.who().displayName(), href + "#action-" + action.id(), false,
                Set.of(), Set.of())));
        return cards;
    }

    private static String title(String words) {
        return words.length() <= LONGEST_TITLE ? words : words.substring(0, LONGEST_TITLE).strip() + "…";
    }
}
