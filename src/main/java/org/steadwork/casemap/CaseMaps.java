package org.steadwork.casemap;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.Links;
import org.steadwork.casefile.MapCard;
import org.steadwork.casefile.MapMeasure;
import org.steadwork.casefile.MapPart;
import org.steadwork.casefile.NextSteps;

/** Gathers the map of a case from every feature that lays something on it. */
@ApplicationScoped
class CaseMaps {

    @Inject
    @Any
    Instance<MapPart> parts;

    @Inject
    NextSteps nextSteps;

    @Inject
    Links links;

    @Inject
    Strengths strengths;

    @Inject
    Clock clock;

    List<MapCard> cards(CaseFile file) {
        return parts.stream().flatMap(part -> part.cards(file).stream()).toList();
    }

    MapView of(CaseFile file) {
        List<MapMeasure> measures = parts.stream().flatMap(part -> part.measures(file).stream()).toList();
        return new MapBuilder(cards(file), links.of(file.id()), strengths).build(nextSteps.of(file.id(), LocalDate.now(clock)).orElse(null), measures);
    }
}
