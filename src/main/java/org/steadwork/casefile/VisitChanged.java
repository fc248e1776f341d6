package org.steadwork.casefile;

/** Told, within the transaction, when the day or the attendance of a visit was changed in the record, so that what hangs on it keeps true. */
public record VisitChanged(Visit visit) {
}
