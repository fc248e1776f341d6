package org.steadwork.casemap.ranking;

/**
 * A complaint and a finding that may go together; nothing is said about cause.
 *
 * @param score deviation × exposed hours × strength of association; null when the hours were not recorded.
 *              It orders candidates of one case and means nothing by itself.
 */
public record Candidate(Complaint complaint, WorkFinding finding, Double score) {
}
