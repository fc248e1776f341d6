package org.steadwork.exercise;

import java.time.LocalDate;
import java.util.List;

/**
 * The programme as the patient's own page shows it: what to do and when to stop, nothing else of the record.
 *
 * @param paused names of what a red flag holds back for now
 * @param ring   reasons to stop and phone the clinic
 * @param emergency reasons to stop and get emergency help
 */
public record OwnProgramme(List<Item> items, List<String> paused, List<String> ring, List<String> emergency) {

    /**
     * One exercise.
     *
     * @param since       day from which it is given
     * @param painCeiling highest pain during it, [0, 10]
     * @param limits      how a suspension limits it, in words for the patient
     * @param figure      address of its drawing
     */
    public record Item(long id, LocalDate since, String name, String dose, String effort, int painCeiling, List<String> limits, String note, List<String> steps,
            String figure, List<Slot> slots, int plannedAWeek) {

        /** Names a session of this exercise in a form. */
        public String key(Slot slot) {
            return id + "-" + slot.number();
        }

        /** Field of the pain before a session. */
        public String before(Slot slot) {
            return "before_" + key(slot);
        }

        /** Field of the pain after a session. */
        public String after(Slot slot) {
            return "after_" + key(slot);
        }
    }

    /** A session of the day: its number from 1, and when it is. */
    public record Slot(int number, String when) {
    }

    public int sessionsADay() {
        return items.stream().mapToInt(item -> item.slots().size()).sum();
    }
}
