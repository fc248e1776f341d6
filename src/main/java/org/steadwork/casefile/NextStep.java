package org.steadwork.casefile;

/**
 * What Today says of one case first, as the case's own pages show it.
 *
 * @param label how soon or what kind, in a word or two
 * @param reason why, in words
 * @param action the one action that clears it
 * @param href where it is done
 */
public record NextStep(String label, String reason, String action, String href) {
}
