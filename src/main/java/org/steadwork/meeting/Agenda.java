package org.steadwork.meeting;

import java.time.LocalTime;
import java.util.List;
import org.steadwork.casefile.CaseFile;

/**
 * The agenda of a meeting as it stands now.
 *
 * @param fills   true for the next meeting, whose agenda fills itself by the criteria
 * @param rows    the cases in their order
 * @param removed cases taken off, with the reason
 * @param unjudged open cases that are not on it and of which something cannot be judged
 * @param open    number of open cases looked at
 */
record Agenda(ReviewMeeting meeting, boolean fills, List<Row> rows, List<AgendaCase> removed, List<Unjudged> unjudged, int open) {

    /**
     * One case of the agenda.
     *
     * @param name    what the case is called in the meeting
     * @param item    null while nobody touched it here
     * @param reasons that hold now; {@code unknown} what cannot be judged
     * @param carried open actions of earlier meetings
     * @param again   decisions of earlier meetings to be looked at again
     */
    record Row(CaseFile file, String name, AgendaCase item, int place, int minutes, List<ReasonView> reasons, List<ReasonView> unknown,
            List<MeetingAction> carried, List<Decision> again, Room room) {

        public String question() {
            return item == null ? null : item.question();
        }

        public boolean discussed() {
            return item != null && item.notes() != null;
        }

        /** Says why it is here when no criterion holds. */
        public boolean byHandOnly() {
            return reasons.isEmpty() && carried.isEmpty() && again.isEmpty();
        }

        /** The reasons in a few words, for the list beside a case. */
        public String inShort() {
            int count = reasons.size() + (carried.isEmpty() ? 0 : 1) + (again.isEmpty() ? 0 : 1);
            if (count == 0) {
                return "put on by hand";
            }
            String first = !reasons.isEmpty() ? reasons.get(0).criterion() : !carried.isEmpty() ? "Open actions" : "To look at again";
            return count == 1 ? first : first + ", and " + (count - 1) + " more";
        }
    }

    /** An open case that is not on the agenda, with what cannot be judged of it. */
    record Unjudged(CaseFile file, String name, List<ReasonView> unknown) {
    }

    public int minutes() {
        return rows.stream().mapToInt(Row::minutes).sum();
    }

    /** When it ends if every case takes its minutes. */
    public LocalTime ends() {
        return meeting.startsAt().plusMinutes(minutes());
    }

    /** A number that changes whenever order, minutes or what is taken off changes. */
    public int version() {
        int sum = removed.stream().mapToInt(item -> Math.toIntExact(item.id() % 1_000_003) * 31 + item.version() + 1).sum();
        return Math.floorMod(sum + rows.stream().filter(row -> row.item() != null)
                .mapToInt(row -> Math.toIntExact(row.item().id() % 1_000_003) * 31 + row.item().place() * 7 + row.item().minutes()).sum(), 999_999_937);
    }

    /** Place of a case from 1, or 0 when it is not on the agenda. */
    public int position(long caseId) {
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).file().id() == caseId) {
                return i + 1;
            }
        }
        return 0;
    }
}
