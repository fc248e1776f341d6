package org.steadwork.bench;

/**
 * One answer offered by a choice.
 *
 * @param value what is sent
 * @param label what is shown
 * @param description what it looks like in plain words; may be empty
 * @param drawing a small SVG of ours, or empty
 */
public record Choice(String value, String label, String description, String drawing) {

    public Choice(String value, String label) {
        this(value, label, "", "");
    }

    public Choice(String value, String label, String description) {
        this(value, label, description, "");
    }
}
