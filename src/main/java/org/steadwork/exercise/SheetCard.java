package org.steadwork.exercise;

import java.time.LocalDate;

/**
 * What a new sheet says of the patient's own page: a link that is printed once, for it is stored nowhere.
 *
 * @param code  its QR code as SVG
 * @param until last day on which it opens
 */
public record SheetCard(String address, String code, LocalDate until) {
}
