package org.steadwork.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.exercise.dayplan.Precaution;
import org.steadwork.exercise.dayplan.SuspensionRule;
import org.steadwork.kernel.Answer;

/** What stands against exercises in one case: suspensions in force and answers about conditions. */
record CaseSafety(ExerciseCatalogue catalogue, List<ExerciseHolds.Hold> holds, Map<String, Answer> answers) {

    /** How far a caution goes. */
    enum Level {
        HELD("Suspended"), BARRED("Do not give"), LIMITED("Only as noted"), CONSIDER("Consider");

        private final String label;

        Level(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    /**
     * One caution.
     *
     * @param key  names it when the clinician ticks that it was considered
     * @param text in plain words, for the clinician
     * @param note how to adapt, for the patient too; may be empty
     */
    record Caution(Level level, String key, String text, String note) {

        /** Id of its tick in a form. */
        public String fieldName() {
            return "considered-" + key;
        }
    }

    /** All cautions about one exercise, the gravest first. */
    record Verdict(List<Caution> cautions) {

        /** True when it must not be given. */
        public boolean barred() {
            return cautions.stream().anyMatch(c -> c.level() == Level.HELD || c.level() == Level.BARRED);
        }

        /** True when a red flag holds it back. */
        public boolean held() {
            return cautions.stream().anyMatch(c -> c.level() == Level.HELD);
        }

        public boolean clear() {
            return cautions.isEmpty();
        }

        /** Why it must not be given; empty when it may. */
        public List<Caution> bars() {
            return cautions.stream().filter(c -> c.level() == Level.HELD || c.level() == Level.BARRED).toList();
        }

        /** What the clinician must tick as considered. */
        public List<Caution> toConsider() {
            return cautions.stream().filter(c -> c.level() == Level.LIMITED || c.level() == Level.CONSIDER).toList();
        }

        /** How a suspension limits it, in words for the patient. */
        public List<String> limits() {
            return cautions.stream().filter(c -> c.level() == Level.LIMITED).map(Caution::note).distinct().toList();
        }
    }

    Answer answer(String condition) {
        return answers.getOrDefault(condition, Answer.NOT_ASKED);
    }

    Verdict of(Exercise exercise) {
        List<Caution> cautions = new ArrayList<>();
        for (ExerciseHolds.Hold hold : holds) {
            SuspensionRule.Effect effect = catalogue.suspension(hold.token()).effect(exercise, hold.regions());
            switch (effect.level()) {
                case BLOCKED -> cautions.add(new Caution(Level.HELD, "hold-" + hold.token(), hold.reason(), ""));
                case LIMITED -> cautions.add(new Caution(Level.LIMITED, "limit-" + hold.token(), effect.note() + ". " + hold.reason(), effect.note()));
                case NONE -> { }
            }
        }
        for (Precaution precaution : exercise.precautions()) {
            Answer answer = answer(precaution.condition());
            Condition condition = catalogue.condition(precaution.condition());
            String text = condition.label() + ": " + answer.label() + (precaution.note().isEmpty() ? "" : " (" + precaution.note() + ")");
            switch (precaution.effect(answer)) {
                case BARRED -> cautions.add(new Caution(Level.BARRED, condition.key(), text, precaution.note()));
                case CONSIDER -> cautions.add(new Caution(Level.CONSIDER, condition.key(), text, precaution.note()));
                case NONE -> { }
            }
        }
        cautions.sort((a, b) -> a.level().compareTo(b.level()));
        return new Verdict(List.copyOf(cautions));
    }
}
