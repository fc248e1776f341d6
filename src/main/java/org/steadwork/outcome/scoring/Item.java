package org.steadwork.outcome.scoring;

/**
 * One item of an instrument: its number on the form, a short topic of ours (never the owner's wording, and blank where even a topic
 * would need a licence) and the whole numbers it may be answered with.
 */
public record Item(int number, String topic, int min, int max) {
    public Item {
        if (number < 1) {
            throw new IllegalArgumentException("Items are numbered from 1, but this one is " + number);
        }
        topic = topic == null ? "" : topic.strip();
        if (min >= max) {
            throw new IllegalArgumentException("Item " + number + " ranges from " + min + " to " + max);
        }
    }

    /** Returns "Item 8 (driving)", or only the number where there is no topic. */
    String named() {
        return "Item " + number + (topic.isEmpty() ? "" : " (" + topic + ")");
    }

    boolean allows(int answer) {
        return answer >= min && answer <= max;
    }
}
