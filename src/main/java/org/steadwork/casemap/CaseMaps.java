package org.steadwork.casemap;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.util.Comparator;
import java.util.List;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseScope;
import org.steadwork.casefile.Links;
import org.steadwork.casefile.MapCard;
import org.steadwork.casefile.MapMeasure;
import org.steadwork.casefile.MapPart;

import java.time.Clock;
import java.time.LocalDate;

/** Gathers the map of a case from every feature that lays something on it. */
@ApplicationScoped
class CaseMaps {

    @Inject
    @Any
    Instance<MapPart> parts;

    @Inject
    @Any
    Instance<Attention> attention;

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
        return new MapBuilder(cards(file), links.of(file.id()), strengths).build(nextStep(file), measures);
    }

    /** What Today would say of this case first; every bean is asked about this case alone. */
    private Attention.Entry nextStep(CaseFile file) {
        LocalDate today = LocalDate.now(clock);
        CaseScope scope = CaseScope.one(file.id());
        return attention.stream().flatMap(source -> source.entries(today, scope).stream())
                .min(Comparator.comparing(Attention.Entry::urgency).thenComparing(Attention.Entry::since)).orElse(null);
    }
}
