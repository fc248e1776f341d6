package org.steadwork.casefile;

/** Told, within the transaction, when a case was opened with its first visit. */
public record CaseOpened(CaseFile caseFile, Visit first) {
}
