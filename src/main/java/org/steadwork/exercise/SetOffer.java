package org.steadwork.exercise;

import java.util.List;
import org.steadwork.exercise.dayplan.DoseWords;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.web.Form;

/** A ready set about to be given, each exercise with what stands against it in the case and with a dose that can be changed. */
record SetOffer(ReadySet set, List<Row> rows) {

    /** One exercise of the set. {@code given} is true when it is given already. */
    record Row(Exercise exercise, CaseSafety.Verdict verdict, boolean given) {

        /** What stands before the names of its fields in the form of the set. */
        public String prefix() {
            return exercise.key() + ".";
        }

        public String usualDose() {
            return DoseWords.usual(exercise);
        }

        public boolean offered() {
            return !given && !verdict.barred();
        }

        /** Whether its dose stands open on the page: when something is wrong in it. */
        public boolean wrong(Form form) {
            return form.problems().stream().anyMatch(problem -> problem.field().startsWith(prefix()));
        }
    }

    public boolean anyOffered() {
        return rows.stream().anyMatch(Row::offered);
    }
}
