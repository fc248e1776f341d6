package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import org.steadwork.casefile.CaseFile;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.outcome.Goal;
import org.steadwork.outcome.Goals;
import org.steadwork.web.Dates;

/** The goals and how far they have come, and the measures that can be drawn. */
@ApplicationScoped
class GoalFacts implements LetterFacts {

    @Inject
    Goals goals;

    @Inject
    LetterDrawings drawings;

    @Override
    public List<LetterFact> of(CaseFile file) {
        List<LetterFact> facts = new ArrayList<>();
        for (Goal goal : goals.of(file.id())) {
            facts.add(new LetterFact(InformationCategory.FUNCTIONAL_CAPACITY, "goals", "- " + goal.words() + ": " + goal.state().label()
                    + (goal.reviewedOn() == null ? "" : " on " + Dates.inLetter(goal.reviewedOn())) + ".", "goals"));
        }
        drawings.measures(file).stream().limit(1)
                .forEach(measure -> facts.add(new LetterFact(InformationCategory.OUTCOME_SCORES, "trend", measure.name(), "outcomes")));
        return facts;
    }
}
