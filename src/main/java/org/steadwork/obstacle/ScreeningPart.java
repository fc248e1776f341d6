package org.steadwork.obstacle;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CasePart;
import org.steadwork.web.Dates;

/** The result of the intake screen beside every page where the plan is made, in neutral words. */
@ApplicationScoped
class ScreeningPart implements CasePart {

    @Inject
    Screening screening;

    @Override
    public List<Fact> facts(CaseFile file) {
        return screening.of(file.id()).map(result -> new Fact(60, "Support", result.words(), "screen " + result.score() + ", " + Dates.shown(result.on()),
                null)).map(List::of).orElse(List.of());
    }
}
