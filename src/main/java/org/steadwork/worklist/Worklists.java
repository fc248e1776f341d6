package org.steadwork.worklist;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.steadwork.casefile.Attention;

/** Gathers Today from every feature that can tell what needs attention. */
@ApplicationScoped
class Worklists {

    @Inject
    @Any
    Instance<Attention> sources;

    Worklist on(LocalDate today) {
        List<Attention.Entry> all = sources.stream().flatMap(source -> source.entries(today).stream())
                .sorted(Comparator.comparing(Attention.Entry::since).thenComparing(Attention.Entry::patient)).toList();
        return new Worklist(true, of(all, Attention.Urgency.NOW), of(all, Attention.Urgency.TODAY), of(all, Attention.Urgency.SOON));
    }

    private static List<Attention.Entry> of(List<Attention.Entry> all, Attention.Urgency urgency) {
        return all.stream().filter(entry -> entry.urgency() == urgency).toList();
    }
}
