package org.steadwork.letter.disclosure;

import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which category of information may go to which kind of reader: first a gate (a consent in force on the day), then one
 * cell for the category and the reader. Immutable and complete: every category has a cell for every kind of reader.
 *
 * <p>No statement about the law of any place; local law, the regulator and the clinic's own policy come first.
 */
public final class Matrix {

    private final Map<InformationCategory, Map<Recipient, Cell>> cells;
    private final Map<InformationCategory, String> labels;

    /**
     * Builds the matrix.
     *
     * @throws IllegalArgumentException when a cell or a label is missing
     */
    public Matrix(Map<InformationCategory, Map<Recipient, Cell>> cells, Map<InformationCategory, String> labels) {
        this.cells = new EnumMap<>(InformationCategory.class);
        this.labels = new EnumMap<>(InformationCategory.class);
        for (InformationCategory category : InformationCategory.values()) {
            String label = labels.get(category);
            if (label == null || label.isBlank()) {
                throw new IllegalArgumentException("The category " + category + " has no label");
            }
            Map<Recipient, Cell> row = cells.getOrDefault(category, Map.of());
            for (Recipient recipient : Recipient.values()) {
                if (row.get(recipient) == null) {
                    throw new IllegalArgumentException("The matrix has no cell for " + category + " to " + recipient);
                }
            }
            this.cells.put(category, new EnumMap<>(row));
            this.labels.put(category, label);
        }
    }

    public Cell cell(InformationCategory category, Recipient recipient) {
        return cells.get(category).get(recipient);
    }

    /** Returns the words for a category as the clinician and the worker read them. */
    public String label(InformationCategory category) {
        return labels.get(category);
    }

    /** Decides about one reader when no ground for an override is claimed. */
    public Decision decide(InformationCategory category, Reader reader) {
        return decide(category, reader, Optional.empty());
    }

    /**
     * Decides whether a category may go to one reader.
     *
     * @param claimed a ground for acting without consent that a clinician claims; it opens the path to a recorded override
     *                where the gate is shut, and never where the matrix says never
     */
    public Decision decide(InformationCategory category, Reader reader, Optional<Ground> claimed) {
        String what = label(category);
        String whom = reader.kind().label();
        Cell cell = cell(category, reader.kind());
        if (cell.rule() == Rule.NEVER) {
            return Decision.block(what + ": never goes to " + whom + " from the clinic");
        }
        if (reader.kind().needsConsent() && reader.gate() != Gate.IN_FORCE) {
            String shut = "Consent to write to " + whom + " is " + reader.gate().label();
            return claimed
                    .map(ground -> new Decision(Decision.Verdict.OVERRIDE,
                            shut + "; may go only by a recorded override, on the ground of " + ground.label(), cell.limit(), false))
                    .orElseGet(() -> Decision.block(shut));
        }
        if (cell.rule() == Rule.EXPLICIT && !reader.ticked().contains(category)) {
            return Decision.block(what + ": goes to " + whom + " only if the worker ticks it, and it is not ticked");
        }
        boolean byTick = cell.rule() == Rule.EXPLICIT;
        return new Decision(Decision.Verdict.ALLOW,
                what + ": " + (byTick ? "ticked by the worker" : "goes with the consent"), cell.limit(), byTick);
    }

    /**
     * Decides for several parties who read or hear the same thing: whatever is closed to one is closed to all, so a meeting
     * with the employer in the room is a disclosure to the employer.
     *
     * @throws IllegalArgumentException when there is no reader
     */
    public Decision decide(InformationCategory category, Collection<Reader> together, Optional<Ground> claimed) {
        if (together.isEmpty()) {
            throw new IllegalArgumentException("Say who reads it");
        }
        Decision closest = null;
        for (Reader reader : together) {
            Decision one = decide(category, reader, claimed);
            if (closest == null || one.verdict().compareTo(closest.verdict()) > 0) {
                closest = one;
            }
        }
        return closest;
    }

    /** Returns the categories that may be offered to the worker as ticks for this reader: all but those that never go. */
    public Set<InformationCategory> offered(Recipient recipient) {
        Set<InformationCategory> offered = new LinkedHashSet<>();
        for (InformationCategory category : InformationCategory.values()) {
            if (cell(category, recipient).rule() != Rule.NEVER) {
                offered.add(category);
            }
        }
        return offered;
    }
}
