package org.steadwork.workplace;

import java.math.BigDecimal;

/**
 * A size that an assessment measured and that the register does not know, or knows otherwise.
 *
 * @param ticket names piece and size in the form
 * @param stored what the register says with how and when, or that it is not known
 * @param change signed, or null when the register did not know it
 */
record RegisterDifference(Furniture piece, String size, BigDecimal amount, String ticket, String label, String stored, String measured, String change) {
}
