package org.steadwork.meeting;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.steadwork.letter.Disclosures;
import org.steadwork.letter.disclosure.Decision.Verdict;
import org.steadwork.letter.disclosure.Gate;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.disclosure.Matrix;
import org.steadwork.letter.disclosure.Reader;
import org.steadwork.letter.disclosure.Recipient;
import org.steadwork.people.Correspondent;
import org.steadwork.web.Dates;

/** Says who hears a case and what may be said in front of them, by the consents on record and the disclosure matrix. */
@ApplicationScoped
class Rooms {

    @Inject
    Disclosures disclosures;

    /** Returns the room for each case, in one query for all of them. */
    Map<Long, Room> of(ReviewMeeting meeting, Collection<Long> caseIds, Set<Long> guestsLeft, LocalDate day) {
        Map<Long, Room> rooms = new HashMap<>();
        if (meeting.guests().isEmpty()) {
            caseIds.forEach(id -> rooms.put(id, Room.CLINICIANS));
            return rooms;
        }
        Map<Long, List<Disclosures.State>> states = disclosures.of(caseIds, day);
        caseIds.forEach(id -> rooms.put(id, guestsLeft.contains(id) ? Room.CLINICIANS
                : room(disclosures.matrix(), meeting.guests(), states.getOrDefault(id, List.of()))));
        return rooms;
    }

    Room of(ReviewMeeting meeting, long caseId, boolean guestsLeft, LocalDate day) {
        return of(meeting, List.of(caseId), guestsLeft ? Set.of(caseId) : Set.of(), day).get(caseId);
    }

    /** Says the state of every consent of a case, for the line on its page. */
    List<String> consents(long caseId, LocalDate day) {
        return disclosures.of(List.of(caseId), day).getOrDefault(caseId, List.of()).stream().map(state -> state.name() + ": " + state.gate().label()
                + (state.gate() == Gate.IN_FORCE ? " until " + Dates.shown(state.until()) : "")).toList();
    }

    static Room room(Matrix matrix, List<MeetingPerson> guests, List<Disclosures.State> states) {
        List<Room.Guest> in = new ArrayList<>();
        List<Reader> readers = new ArrayList<>();
        for (MeetingPerson guest : guests) {
            Optional<Disclosures.State> state = states.stream().filter(one -> isFor(one, guest)).findFirst();
            Gate gate = state.map(Disclosures.State::gate).orElse(Gate.NONE);
            in.add(new Room.Guest(guest.words(), gate == Gate.IN_FORCE, gate.label()));
            readers.add(new Reader(kind(guest), gate, state.map(Disclosures.State::ticked).orElse(Set.of())));
        }
        boolean heldBack = in.stream().anyMatch(guest -> !guest.inForce());
        Set<InformationCategory> open = EnumSet.noneOf(InformationCategory.class);
        for (InformationCategory category : InformationCategory.values()) {
            org.steadwork.letter.disclosure.Decision decision = matrix.decide(category, readers, Optional.empty());
            // what an insurer may have of the claimed condition only, no rule of ours can pick out
            boolean narrowed = readers.stream().anyMatch(reader -> reader.kind() == Recipient.INSURER
                    && !matrix.cell(category, Recipient.INSURER).limit().isEmpty());
            if (!heldBack && decision.verdict() == Verdict.ALLOW && !narrowed) {
                open.add(category);
            }
        }
        return new Room(in, heldBack, open);
    }

    private static boolean isFor(Disclosures.State state, MeetingPerson guest) {
        return guest.employer() != null && Objects.equals(guest.employer().id(), state.employerId())
                || guest.correspondent() != null && Objects.equals(guest.correspondent().id(), state.correspondentId());
    }

    /** A guest who stands for nobody on record has no consent, whatever kind of reader this is. */
    private static Recipient kind(MeetingPerson guest) {
        if (guest.correspondent() == null) {
            return Recipient.EMPLOYER;
        }
        return guest.correspondent().kind() == Correspondent.Kind.DOCTOR ? Recipient.DOCTOR
                : guest.correspondent().kind() == Correspondent.Kind.SPECIALIST ? Recipient.SPECIALIST : Recipient.INSURER;
    }
}
