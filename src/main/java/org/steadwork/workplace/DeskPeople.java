package org.steadwork.workplace;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.steadwork.workplace.fit.FitSolver;
import org.steadwork.workplace.fit.Part;
import org.steadwork.workplace.fit.Person;
import org.steadwork.workplace.fit.SharedDesk;
import org.steadwork.workplace.fit.Travel;
import org.steadwork.workplace.fit.Workstation;

/** Finds the people assessed at a desk and works out what they can share. */
@ApplicationScoped
class DeskPeople {

    /** More than this many are not worked out together: nobody shares one desk with more. */
    static final int MOST = 12;

    @Inject
    Assessments assessments;

    @Inject
    Register register;

    @Inject
    RegisterContent sizes;

    @Inject
    WorkplaceContent content;

    /** Takes five queries, however many people sit there. */
    SharedDeskView of(Furniture desk, SharedDeskAsked asked) {
        Map<Long, WorkplaceAssessment> latest = new LinkedHashMap<>();
        assessments.at(desk.id()).forEach(look -> latest.putIfAbsent(look.caseFile().patient().id(), look));
        List<Long> moved = assessments.movedFrom(desk.id());
        List<RecordedWorkplace> looks = assessments.recorded(List.copyOf(latest.values()));
        SharedStation station = new SharedStation(register.sizes(desk), sizes.of(FurnitureKind.DESK), looks, content);
        List<DeskSharer> sharers = new ArrayList<>();
        for (RecordedWorkplace look : looks) {
            Long id = look.assessment().id();
            boolean elsewhere = moved.contains(id);
            List<String> missing = FitSolver.missing(look.person(), station.station()).measures().stream().map(measure -> content.text(measure).label()).toList();
            boolean counts = asked.counts(id, !elsewhere) && sharers.stream().filter(DeskSharer::counted).count() < MOST;
            sharers.add(new DeskSharer(look, asked.mark(id, sharers.size()), elsewhere, counts, missing));
        }
        return new SharedDeskView(desk, station, sharers, station.heights().map(heights -> shared(sharers, station.station(), heights)).orElse(null),
                better(sharers, station));
    }

    /** Returns what those counted in can share; null when there is nobody. */
    private SharedDesk shared(List<DeskSharer> sharers, Workstation station, Travel heights) {
        List<Person> people = sharers.stream().filter(DeskSharer::counted).map(sharer -> sharer.recorded().person()).toList();
        return people.isEmpty() ? null : SharedDesk.of(people, station, content.targets(), heights);
    }

    /** Returns the height that another desk would have to have to serve several people best; null unless this one is fixed. */
    private SharedDesk.Sharing better(List<DeskSharer> sharers, SharedStation station) {
        if (station.heights().filter(Travel::isFixed).isEmpty() || sharers.stream().filter(DeskSharer::counted).count() < 2) {
            return null;
        }
        Travel obtainable = content.targets().obtainable().desk();
        return shared(sharers, station.station().with(Part.DESK, obtainable), obtainable).fixed();
    }
}
