package org.steadwork.bench;

/** One item of a list of whole numbers, such as an item of a questionnaire: its topic and its least and greatest answer. */
public record Item(String label, int least, int most) {
}
