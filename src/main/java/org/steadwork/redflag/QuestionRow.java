package org.steadwork.redflag;

import java.util.List;

/**
 * One question as the page shows it.
 *
 * @param field name of the form field
 * @param hint what stands under the words, or null
 * @param value the answer in lower case
 */
public record QuestionRow(String field, String words, String hint, String value, boolean yes, String note, boolean declined,
                          List<TickRow> ticks) {

    /** One tick of a composite question. */
    public record TickRow(String field, String words, boolean ticked) {
    }

    public String noteField() {
        return "note." + field;
    }

    public String declinedField() {
        return "declined." + field;
    }

    /** True when the note stands open on the page. */
    public boolean noted() {
        return note != null || declined;
    }

    public boolean said(String answer) {
        return value.equals(answer);
    }
}
