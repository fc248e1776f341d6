package org.steadwork.workplace;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.PlanChanges;
import org.steadwork.drawing.PlanMark;

/** What was put right at the work place, one mark a day. */
@ApplicationScoped
class WorkPlaceChanges implements PlanChanges {

    @Inject
    Findings findings;

    @Override
    public List<PlanMark> of(CaseFile caseFile) {
        Map<LocalDate, Long> done = findings.of(caseFile.id()).stream().map(Finding::doneOn).filter(Objects::nonNull)
                .collect(Collectors.groupingBy(day -> day, TreeMap::new, Collectors.counting()));
        return done.entrySet().stream().map(day -> new PlanMark(day.getKey(), PlanMark.Kind.WORK_PLACE,
                day.getValue() + (day.getValue() == 1 ? " finding" : " findings") + " put right")).toList();
    }
}
