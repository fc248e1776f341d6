package org.steadwork.diary;

import java.util.List;
import org.steadwork.web.Form;

/** What the lead sets for the diary: hours, leave, rooms. */
record ClinicDiaryView(List<Hours> hours, List<Leave> leaves, List<ClinicRoom> rooms, Form room, List<Appointment> inLeave) {

    /** The week of one clinician; {@code own} is false where the usual hours of the clinic stand in. */
    record Hours(long clinicianId, String clinician, boolean own, List<Day> days) {
    }

    record Day(String name, String hours) {
    }
}
