package org.steadwork.outcome.scoring;

/**
 * A part of an instrument: the items from first to last, how much each point counts in a summed total, and how many of
 * its items may be missing.
 */
public record Part(String name, int first, int last, double weight, int mayMiss) {
    public Part {
        if (first < 1 || last < first) {
            throw new IllegalArgumentException("The part " + name + " has items " + first + " to " + last);
        }
    }
}
