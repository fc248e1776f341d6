package org.steadwork.meeting;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.steadwork.casefile.CaseFile;
import org.steadwork.meeting.agenda.CaseFacts;
import org.steadwork.meeting.agenda.Criteria;
import org.steadwork.meeting.agenda.Reason;

/** Fills the agenda of the next meeting with the open cases that meet a criterion or come back, in a fixed number of queries. */
@ApplicationScoped
class Agendas {

    @Inject
    Meetings meetings;

    @Inject
    FactsOfCases facts;

    @Inject
    CriteriaContent content;

    @Inject
    CaseOutcomes outcomes;

    @Inject
    Rooms rooms;

    @Inject
    CaseName names;

    @Inject
    Clock clock;

    /** Minutes a case is given unless somebody says otherwise; practice gives five to seven. */
    @ConfigProperty(name = "steadwork.meeting.minutes-a-case", defaultValue = "6")
    int minutesACase;

    int minutesACase() {
        return minutesACase;
    }

    Agenda of(ReviewMeeting meeting) {
        LocalDate today = LocalDate.now(clock);
        boolean fills = meetings.next().filter(meeting.id()::equals).isPresent();
        Map<CaseFile, CaseFacts> known = facts.ofOpenCases(today);
        Map<Long, List<Reason>> reasons = judge(content.criteria(), known);
        Map<Long, List<MeetingAction>> carried = outcomes.openActions().stream().filter(action -> !action.meeting().id().equals(meeting.id()))
                .collect(Collectors.groupingBy(action -> action.caseFile().id()));
        Map<Long, List<Decision>> again = outcomes.lookAgain(meeting.id(), meetings.heldBefore(meeting), meeting.heldOn()).stream()
                .collect(Collectors.groupingBy(decision -> decision.caseFile().id()));
        List<AgendaCase> stored = meetings.cases(meeting.id());
        List<CaseFile> files = new ArrayList<>(stored.stream().filter(item -> !item.removed()).map(AgendaCase::caseFile).toList());
        if (fills) {
            Set<Long> touched = stored.stream().map(item -> item.caseFile().id()).collect(Collectors.toSet());
            known.keySet().stream().filter(file -> !touched.contains(file.id())).filter(file -> carried.containsKey(file.id()) || again.containsKey(file.id())
                    || !holding(reasons, file.id()).isEmpty()).sorted(first(reasons)).forEach(files::add);
        }
        Map<Long, AgendaCase> items = stored.stream().collect(Collectors.toMap(item -> item.caseFile().id(), item -> item));
        Map<Long, Room> in = rooms.of(meeting, files.stream().map(CaseFile::id).toList(), stored.stream().filter(AgendaCase::guestsLeft)
                .map(item -> item.caseFile().id()).collect(Collectors.toSet()), today);
        List<Agenda.Row> rows = new ArrayList<>();
        for (CaseFile file : files) {
            AgendaCase item = items.get(file.id());
            Room room = in.get(file.id());
            rows.add(new Agenda.Row(file, names.of(file.patient(), room.clinicians()), item, rows.size() + 1, item == null ? minutesACase : item.minutes(),
                    views(reasons, file.id(), true), views(reasons, file.id(), false), carried.getOrDefault(file.id(), List.of()),
                    again.getOrDefault(file.id(), List.of()), room));
        }
        Set<Long> on = files.stream().map(CaseFile::id).collect(Collectors.toSet());
        List<Agenda.Unjudged> unjudged = known.keySet().stream().filter(file -> !on.contains(file.id()) && holding(reasons, file.id()).isEmpty()
                && !views(reasons, file.id(), false).isEmpty()).map(file -> new Agenda.Unjudged(file, names.of(file.patient(), meeting.guests().isEmpty()),
                views(reasons, file.id(), false))).toList();
        return new Agenda(meeting, fills, rows, stored.stream().filter(AgendaCase::removed).toList(), unjudged, known.size());
    }

    static Map<Long, List<Reason>> judge(Criteria criteria, Map<CaseFile, CaseFacts> known) {
        Map<Long, List<Reason>> reasons = new HashMap<>();
        known.forEach((file, own) -> reasons.put(file.id(), criteria.judge(own)));
        return reasons;
    }

    private static List<Reason> holding(Map<Long, List<Reason>> reasons, long caseId) {
        return reasons.getOrDefault(caseId, List.of()).stream().filter(Reason::holds).toList();
    }

    private static List<ReasonView> views(Map<Long, List<Reason>> reasons, long caseId, boolean holds) {
        return ReasonView.of(reasons.getOrDefault(caseId, List.of()).stream().filter(reason -> reason.holds() == holds).toList(), caseId);
    }

    /** The case with the reason that stands first in the content comes first, then the one with more reasons. */
    private Comparator<CaseFile> first(Map<Long, List<Reason>> reasons) {
        return Comparator.<CaseFile>comparingInt(file -> holding(reasons, file.id()).stream().mapToInt(reason -> content.criteria().all().indexOf(reason.criterion()))
                .min().orElse(Integer.MAX_VALUE)).thenComparingInt(file -> -holding(reasons, file.id()).size()).thenComparing(CaseFile::id);
    }
}
