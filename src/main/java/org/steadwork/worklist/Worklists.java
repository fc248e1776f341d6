package org.steadwork.worklist;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.access.CaseAccess;

/** Gathers Today from every feature that can tell what needs attention. */
@ApplicationScoped
class Worklists {

    record CaseName(long id, String complaint, String fileNumber) {
    }

    @Inject
    @Any
    Instance<Attention> sources;

    @Inject
    CaseAccess access;

    @Inject
    EntityManager db;

    Worklist on(LocalDate today) {
        List<Attention.Entry> all = sources.stream().flatMap(source -> source.entries(today).stream())
                .sorted(Comparator.comparing(Worklists::weight).thenComparing(Attention.Entry::since).thenComparing(Attention.Entry::patient)).toList();
        Set<Long> open = access.openOf(all.stream().map(Attention.Entry::caseId).collect(Collectors.toSet()));
        all = all.stream().filter(entry -> open.contains(entry.caseId())).toList();
        Map<Long, CaseName> names = names(all.stream().map(Attention.Entry::caseId).distinct().toList());
        List<Worklist.Row> rows = all.stream().map(entry -> row(entry, names.get(entry.caseId()))).toList();
        return new Worklist(true, of(rows, Attention.Urgency.NOW), of(rows, Attention.Urgency.TODAY), of(rows, Attention.Urgency.SOON));
    }

    /** What the cases are about, in one query for all of them. */
    private Map<Long, CaseName> names(List<Long> caseIds) {
        return caseIds.isEmpty() ? Map.of() : db.createQuery("select c.id, c.complaint, c.patient.fileNumber from CaseFile c where c.id in ?1", CaseName.class)
                .setParameter(1, caseIds).getResultStream().collect(Collectors.toMap(CaseName::id, Function.identity()));
    }

    /** A red flag before what is late or a caution, that before what is merely to do. */
    private static int weight(Attention.Entry entry) {
        return switch (entry.mark()) {
            case "out" -> 0;
            case "near" -> 1;
            default -> 2;
        };
    }

    private static Worklist.Row row(Attention.Entry entry, CaseName name) {
        return new Worklist.Row(entry, name.complaint(), name.fileNumber());
    }

    private static List<Worklist.Row> of(List<Worklist.Row> all, Attention.Urgency urgency) {
        return all.stream().filter(row -> row.entry().urgency() == urgency).toList();
    }
}
