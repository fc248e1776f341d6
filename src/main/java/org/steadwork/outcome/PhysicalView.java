package org.steadwork.outcome;

import java.time.LocalDate;
import java.util.List;
import org.steadwork.body.Side;
import org.steadwork.outcome.scoring.About;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/** What the page of grip strength and motion shows. */
record PhysicalView(LocalDate on, Form form, List<Hand> hands, List<MotionRow> motions, About grip, About motion, List<Option> devices) {

    /**
     * One hand.
     *
     * @param fields of the trials, in their order
     * @param result mean, share of the norm and change, a line each
     * @param words the judgement on the change; blank for none
     */
    record Hand(String label, List<String> fields, String why, List<String> result, String words, String working, String earlier) {
    }

    /** One motion of one side; {@code key} is the start of its fields. */
    record MotionRow(String label, String position, String key, int most, String earlier, List<String> result, String references) {

        public String degrees() {
            return "d_" + key;
        }

        public String pain() {
            return "p_" + key;
        }

        public String why() {
            return "w_" + key;
        }

        public String device() {
            return "t_" + key;
        }
    }

    /** The motions that were measured before, or have something in their fields; a typed error stays in sight with them. */
    public List<MotionRow> begun() {
        return motions.stream().filter(this::begun).toList();
    }

    public List<MotionRow> others() {
        return motions.stream().filter(row -> !begun(row)).toList();
    }

    private boolean begun(MotionRow row) {
        return !row.earlier().isEmpty() || List.of(row.degrees(), row.pain(), row.why(), row.device()).stream()
                .anyMatch(field -> form.has(field) || form.error(field) != null || form.stored(field) != null);
    }

    public List<String> trialNumbers() {
        return List.of("1", "2", "3");
    }

    static String trial(Side hand, int i) {
        return "g_" + hand.key() + "_" + (i + 1);
    }

    static String why(Side hand) {
        return "g_" + hand.key() + "_why";
    }

    static String key(String motion, Side side) {
        return motion + "_" + side.key();
    }
}
