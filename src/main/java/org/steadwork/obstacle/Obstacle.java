package org.steadwork.obstacle;

/**
 * One psychosocial or work flag.
 *
 * @param listen what to listen or ask for
 * @param plan what it changes in the plan
 * @param tag how sure the entry is: S seen in the source, M from memory, CP common practice
 */
public record Obstacle(String key, Kind kind, String name, String listen, String plan, String source, String tag) {

    /** Where an obstacle lies. */
    public enum Kind {
        PERSON("The person", "yellow: thoughts, feelings, behaviour"),
        WORK("The work", "blue: how the person sees work and health"),
        SETTING("The setting", "black: rules, pay, health care, relatives"),
        SPECIALIST("For a specialist", "orange: possible mental illness; it takes its own route");

        private final String label;
        private final String meaning;

        Kind(String label, String meaning) {
            this.label = label;
            this.meaning = meaning;
        }

        public String label() {
            return label;
        }

        public String meaning() {
            return meaning;
        }
    }
}
