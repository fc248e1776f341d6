package org.steadwork.diary;

import java.time.LocalDate;
import org.steadwork.casefile.VisitKind;

/**
 * A booking that is wanted.
 *
 * @param caseId    null when the patient has no open case: a first visit
 * @param visitId   a visit planned already, for which the time is booked; else null and a visit is made
 * @param waitingId the entry of the waiting list that it serves, or null
 * @param where     the room wanted
 */
record Wish(long patientId, Long caseId, Long visitId, Long waitingId, VisitKind kind, int minutes, long clinicianId, RoomWish where, LocalDate day, int start) {

    /** A certain room, any that is free, or none. */
    record RoomWish(Long roomId, boolean any) {

        static RoomWish anyFree() {
            return new RoomWish(null, true);
        }

        static RoomWish none() {
            return new RoomWish(null, false);
        }
    }
}
