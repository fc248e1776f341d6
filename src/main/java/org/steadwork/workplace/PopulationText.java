package org.steadwork.workplace;

import org.steadwork.workplace.fit.Population;

/**
 * A population of the content with what is said about it.
 *
 * @param note whom it stands for and where it misleads
 */
public record PopulationText(String id, String label, String note, String status, String source, Population population) {
}
