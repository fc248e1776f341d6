package org.steadwork.diary;

import java.time.DateTimeException;
import java.time.LocalDate;
import org.steadwork.web.Dates;

/** Reads what stands in an address; nothing in it is an error, since anybody can type one. */
final class Typed {

    private Typed() {
    }

    /** Reads the day of an address; what is none leads to today. */
    static LocalDate day(String typed, LocalDate today) {
        try {
            return typed == null || typed.isBlank() ? today : Dates.parse(typed);
        } catch (DateTimeException e) {
            return today;
        }
    }

    /** Reads a number of an address; what is none is nothing. */
    static Long number(String typed) {
        return typed != null && typed.matches("\\d{1,15}") ? Long.valueOf(typed) : null;
    }
}
